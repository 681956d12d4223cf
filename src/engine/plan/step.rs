//! Steps: one stretch of the work, how long it may last, and what it waits for.

use super::error::PlanError;
use crate::engine::heat::HeatFrom;
use crate::engine::quantity::Minutes;

/// What is done in a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum StepKind {
    /// Boiling liquid is stirred into flour.
    Scald,
    /// The paste cools on the bench or in ice water.
    CoolPaste,
    /// The paste is in the fridge.
    ChillPaste,
    /// The preferment is mixed.
    MixPreferment,
    /// The preferment stands in the room.
    StandPreferment,
    /// The preferment is in the fridge.
    ChillPreferment,
    /// Paste and preferment stand out.
    WarmUp,
    /// The dough is mixed.
    Mix,
    /// Butter is worked in.
    ButterIn,
    /// The dough rises in one piece.
    Bulk,
    /// The dough is weighed and divided.
    Divide,
    /// The pieces are rounded.
    Round,
    /// The rounded pieces rest.
    Rest,
    /// The pieces are filled and shaped.
    Shape,
    /// The pieces are set in the tin.
    Tin,
    /// The shaped pieces rise.
    Proof,
    /// Chocolate is melted and thinned.
    Melt,
    /// The syrup is drizzled on.
    Drizzle,
    /// The wash is brushed on.
    Brush,
    /// The oven heats up.
    Preheat,
    /// A phase of the bake.
    Bake,
    /// The bread cools.
    Cool,
    /// Something of the user's own.
    Own,
    /// The dough of a later load, from the bowl to the oven.
    LaterDough,
    /// The pieces of a later load rise.
    LaterProof,
    /// The oven is emptied, and heats up again.
    Refill,
    /// A later load bakes, all its phases.
    LaterBake,
}

impl StepKind {
    /// Every kind of work, in its order.
    pub const ALL: [Self; 27] = [
        Self::Scald,
        Self::CoolPaste,
        Self::ChillPaste,
        Self::MixPreferment,
        Self::StandPreferment,
        Self::ChillPreferment,
        Self::WarmUp,
        Self::Mix,
        Self::ButterIn,
        Self::Bulk,
        Self::Divide,
        Self::Round,
        Self::Rest,
        Self::Shape,
        Self::Tin,
        Self::Proof,
        Self::Melt,
        Self::Drizzle,
        Self::Brush,
        Self::Preheat,
        Self::Bake,
        Self::Cool,
        Self::Own,
        Self::LaterDough,
        Self::LaterProof,
        Self::Refill,
        Self::LaterBake,
    ];
}

/// Which step, whatever its place in the list: the work, and which of several alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct StepAt {
    /// The work.
    pub work: StepKind,
    /// The part it belongs to, the phase of the bake, the load of the oven counted from one, or
    /// the number of a step of one's own.
    pub of: u16,
}

/// How long a step may last, and how long it is wished to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DurationRange {
    least: Minutes,
    wished: Minutes,
    most: Minutes,
}

impl DurationRange {
    /// Just so long.
    #[must_use]
    pub const fn just(minutes: Minutes) -> Self {
        Self {
            least: minutes,
            wished: minutes,
            most: minutes,
        }
    }

    /// At least, as wished, at most.
    ///
    /// # Errors
    /// [`PlanError::NoSuchRange`] where they are not in rising order.
    pub fn between(least: Minutes, wished: Minutes, most: Minutes) -> Result<Self, PlanError> {
        if least <= wished && wished <= most {
            Ok(Self {
                least,
                wished,
                most,
            })
        } else {
            Err(PlanError::NoSuchRange {
                least,
                wished,
                most,
            })
        }
    }

    /// The least.
    #[must_use]
    pub const fn least(self) -> Minutes {
        self.least
    }

    /// What is wished.
    #[must_use]
    pub const fn wished(self) -> Minutes {
        self.wished
    }

    /// The most.
    #[must_use]
    pub const fn most(self) -> Minutes {
        self.most
    }

    /// Whether it may be lengthened or shortened.
    #[must_use]
    pub fn is_flexible(self) -> bool {
        self.least < self.most
    }

    /// The same limits with another wish, brought within them.
    #[must_use]
    pub fn wishing(self, wished: Minutes) -> Self {
        let above = if wished < self.least {
            self.least
        } else {
            wished
        };
        Self {
            wished: if above > self.most { self.most } else { above },
            ..self
        }
    }
}

/// One stretch of the work.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Which step it is.
    pub at: StepAt,
    /// The user's own name for it; empty where the usual one does.
    pub name: String,
    /// Where the oven's heat comes from, for a phase of a bake that has several.
    pub heat: Option<HeatFrom>,
    /// How long it may last.
    pub lasts: DurationRange,
    /// Between which it is really over, for a rise or a bake: shown, not planned with.
    pub over_between: Option<(Minutes, Minutes)>,
    /// How long hands are needed, from its beginning; the rest is waiting.
    pub hands: Minutes,
    /// The places of the steps it waits for.
    pub after: Vec<usize>,
}

impl Step {
    /// The most characters a name may have.
    pub const NAME_LENGTH: usize = 60;

    /// How long its timer runs: as long as the plan has it, where that is within its limits.
    #[must_use]
    pub fn timer(&self, planned: Minutes) -> Minutes {
        let within = self.lasts.least() <= planned && planned <= self.lasts.most();
        if within { planned } else { self.lasts.wished() }
    }

    /// A step that waits for `after`.
    #[must_use]
    pub const fn new(at: StepAt, lasts: DurationRange, hands: Minutes, after: Vec<usize>) -> Self {
        Self {
            at,
            name: String::new(),
            heat: None,
            lasts,
            over_between: None,
            hands,
            after,
        }
    }
}
