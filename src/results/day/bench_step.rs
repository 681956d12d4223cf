//! The figures that the sentence of a step at the bench has in it.

use std::num::{NonZeroU16, NonZeroU32};

use super::which_rise::WhichRise;
use crate::engine::batch::{Divided, Pieces};
use crate::engine::formula::LineAt;
use crate::engine::heat::{CoolingWay, CoreTarget, ReviewedPhase};
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Instant, Length, Mass, Minutes, Share, Temperature};

/// A step at the bench with the figures of its sentence.
#[derive(Clone, Debug, PartialEq)]
pub enum BenchStep {
    /// Boiling liquid is poured on flour.
    Scald {
        /// The liquid.
        liquid: Mass,
        /// The lines of it.
        liquids: Vec<LineAt>,
        /// How many flours it is poured on.
        flours: usize,
    },
    /// A paste cools outside the fridge.
    CoolPaste {
        /// How; `None` where its cooling cannot be followed.
        way: Option<(CoolingWay, Length)>,
    },
    /// A preferment is mixed.
    MixPreferment {
        /// How long it then stands in the room.
        stands: Minutes,
    },
    /// A paste or preferment goes into the fridge.
    IntoFridge {
        /// The part.
        part: usize,
        /// When it comes out.
        until: Instant,
    },
    /// A preferment stands in the room.
    Stand {
        /// The room.
        room: Temperature,
        /// When it goes into the fridge.
        until: Instant,
    },
    /// Paste and preferment stand in the room.
    WarmUp {
        /// How long.
        minutes: Minutes,
    },
    /// The dough is mixed.
    Mix {
        /// Whether butter goes in afterwards.
        butter_later: bool,
        /// The temperature of the bowl, warmed beforehand.
        bowl: Option<Temperature>,
        /// How long.
        minutes: Minutes,
        /// The temperature of the dough off the mixer.
        dough: Temperature,
        /// The wished one, where that is another.
        wished: Option<Temperature>,
    },
    /// Butter is worked in.
    ButterIn {
        /// The temperature of the dough off the mixer.
        dough: Temperature,
    },
    /// The dough or its pieces rise.
    Rise {
        /// Which rise.
        which: WhichRise,
        /// The temperature of the place.
        at: Temperature,
        /// When it is over at the soonest, and at the latest.
        between: [Instant; 2],
    },
    /// The dough is divided.
    Divide {
        /// The pieces.
        pieces: Pieces,
        /// As the scale shows them, of the dough that lies on the bench.
        divided: Option<Divided>,
    },
    /// The pieces are rounded.
    Round {
        /// The pieces.
        pieces: NonZeroU32,
    },
    /// The pieces rest.
    Rest {
        /// How long.
        minutes: Minutes,
    },
    /// The pieces are filled and shaped.
    Shape {
        /// The pieces.
        pieces: NonZeroU32,
        /// What goes inside each, with the line where it is one.
        filling: Option<(Mass, Option<LineAt>)>,
        /// What of the weighed filling stays in bag and bowl.
        stays: Share,
    },
    /// The pieces are set in their tins.
    Tin {
        /// The pieces.
        pieces: NonZeroU32,
        /// The tins.
        tins: Option<NonZeroU16>,
        /// The rows and the pieces of a full row.
        rows: Option<(NonZeroU16, NonZeroU16)>,
    },
    /// Chocolate is melted.
    Melt {
        /// All that goes on top.
        all: Mass,
    },
    /// It is drizzled on.
    Drizzle {
        /// All that is made to go on top.
        all: Mass,
        /// What of it stays in the bowl.
        stays: Share,
    },
    /// The oven heats up.
    Preheat {
        /// The first phase of the bake.
        phase: Option<ReviewedPhase>,
        /// How long.
        minutes: Minutes,
    },
    /// A phase of the bake.
    Bake {
        /// The phase.
        phase: Option<ReviewedPhase>,
        /// How long.
        minutes: Minutes,
        /// How hot the middle should be, in the last phase.
        core: Option<CoreTarget>,
    },
    /// The bread comes out and cools.
    Cool {
        /// How hot the middle should be.
        core: Option<CoreTarget>,
        /// When it can be cut.
        cut: Instant,
    },
    /// A step without figures of its own.
    Plain(StepKind),
}
