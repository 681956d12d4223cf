//! Tins: how much they take, whether that suits, how high it rises, how the pieces lie.

use std::num::{NonZeroU16, NonZeroU32};

use crate::engine::batch::Scaled;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Length, Mass, SpecificVolume};
use crate::engine::tin::{
    Across, Filling, Fullness, Stand, Tin, TinError, TinShape, filling, layout, stand,
};
use crate::engine::working::Line;
use crate::sheet::TinUse;
use crate::words::{
    Trouble,
    caution::Advice,
    manner::Manner,
    picture::{TinPlan, tin_plan},
    say, write,
};

/// Everything told about the tins of a batch.
#[derive(Clone, Debug, PartialEq)]
pub struct TinView {
    /// Room in one tin: "3.62 l"; why there is none.
    pub room: String,
    /// Dough that suits all tins: "929 g".
    pub wanted: String,
    /// That dough, to make the batch of; none for a tray.
    pub dough: Option<Mass>,
    /// The room a gram of this batch's dough has: "3.94 cm³/g".
    pub found: String,
    /// What is usual: "3.6 to 4.2 cm³/g for this bread".
    pub usual: String,
    /// Too full, too empty.
    pub advice: Option<Advice>,
    /// How high it stands.
    pub stand: String,
    /// How pieces lie, or why they do not.
    pub plan: Result<TinPlan, String>,
    /// Where pieces do not share out evenly among tins.
    pub uneven: Option<String>,
    /// How the dough for the tins came about.
    pub working: Vec<Line>,
    /// How the height came about.
    pub stand_working: Vec<Line>,
}

/// The tins of a batch.
#[must_use]
pub fn tin(used: &TinUse, bread: Bread, scaled: &Scaled, manner: Manner) -> TinView {
    let filled = filling(used.tins, bread, used.room, Some(scaled.needed));
    let stands = stand(&used.tins.tin, in_one(used, scaled), used.rise);
    let (in_tin, uneven) = pieces_in(used, scaled.pieces.count, manner);
    let each = scaled.pieces.each;
    let laid = layout(&used.tins.tin, in_tin, used.rows, each, used.rise);
    let told = |error: &TinError| error.sentence(manner);
    let figure = |look: &dyn Fn(&Filling) -> Option<String>| {
        let found = filled.as_ref().ok().and_then(look);
        found.unwrap_or_else(|| say!("not known").to_owned())
    };
    TinView {
        room: match &filled {
            Ok(filled) => write::volume(filled.volume, manner),
            Err(error) => told(error),
        },
        wanted: figure(&|filled| Some(write::mass(filled.all, manner))),
        found: figure(&|filled| Some(write::room(filled.found?, manner))),
        usual: figure(&|filled| Some(usual(filled, manner))),
        dough: filled.as_ref().ok().map(|filled| filled.all),
        advice: filled.as_ref().ok().and_then(|one| advice(one, manner)),
        stand: match &stands {
            Ok(stands) => height(stands, used.tins.tin.lidded, manner),
            Err(error) => told(error),
        },
        plan: match laid {
            Ok(laid) => Ok(tin_plan(&laid, manner)),
            Err(error) => Err(told(&error)),
        },
        uneven,
        working: filled.as_ref().map(Filling::working).unwrap_or_default(),
        stand_working: stands.as_ref().map(Stand::working).unwrap_or_default(),
    }
}

/// Dough in one tin.
fn in_one(used: &TinUse, scaled: &Scaled) -> Mass {
    let count = f64::from(used.tins.count.get());
    Mass::from_grams(scaled.needed.grams() / count).unwrap_or_default()
}

/// Pieces in one tin, and what is said where they do not share out evenly.
fn pieces_in(used: &TinUse, pieces: NonZeroU32, manner: Manner) -> (NonZeroU16, Option<String>) {
    let tins = NonZeroU32::from(used.tins.count);
    let each = pieces.get().div_ceil(tins.get());
    let even = pieces.get().is_multiple_of(tins.get());
    let uneven = (!even).then(|| {
        say!(
            "{} pieces do not share out evenly among {} tins: some hold one less.",
            write::count(pieces.get(), manner),
            write::count(tins.get(), manner)
        )
    });
    let each = u16::try_from(each).ok().and_then(NonZeroU16::new);
    (each.unwrap_or(NonZeroU16::MAX), uneven)
}

fn usual(filled: &Filling, manner: Manner) -> String {
    let number =
        |room: SpecificVolume| write::plain(room.cubic_centimetres_per_gram(), 2, manner.numbers);
    let (least, most) = (filled.usual.least, filled.usual.most);
    say!(
        "{} to {} for this bread",
        number(least),
        write::room(most, manner)
    )
}

fn advice(filled: &Filling, manner: Manner) -> Option<Advice> {
    let source = filled.usual.source;
    let (means, to_do) = match filled.fullness? {
        Fullness::Right => return None,
        Fullness::TooFull { over } => (
            say!(
                "There is too much dough for the tin: it will run over the rim, or press against the lid."
            ),
            say!(
                "Take at least {} out of each tin, or use a larger one.",
                write::mass(over, manner)
            ),
        ),
        Fullness::TooEmpty { short } => (
            say!(
                "There is too little dough for the tin: it will stay low, and dry out before it browns."
            ),
            say!(
                "Add at least {} to each tin, or use a smaller one.",
                write::mass(short, manner)
            ),
        ),
    };
    Some(Advice {
        means: means.into(),
        to_do: to_do.into(),
        source: source.into(),
    })
}

fn height(stands: &Stand, lidded: bool, manner: Manner) -> String {
    let rise = write::times(stands.rise, manner);
    let level = write::times(stands.level_at, manner);
    let at = match (stands.above, stands.below) {
        (Some(_), _) if lidded => say!("it fills the tin and presses against the lid").to_owned(),
        (Some(above), _) => say!(
            "it stands {} above the rim",
            write::thickness(above, manner)
        ),
        (None, Some(below)) => {
            say!(
                "it stands {} below the rim",
                write::thickness(below, manner)
            )
        }
        (None, None) => say!("it is level with the rim").to_owned(),
    };
    say!(
        "At {rise} its first volume {at}. It reaches the rim at {level}.",
        rise,
        at,
        level
    )
}

/// What a tin measures: "31 × 13 cm at the rim, 30 × 12 cm at the bottom, 9.5 cm deep".
#[must_use]
pub fn tin_measures(tin: &Tin, manner: Manner) -> String {
    let text = match tin.shape {
        TinShape::Rectangle { top, bottom, deep } => say!(
            "{} at the rim, {} at the bottom, {} deep",
            sides(top, manner),
            sides(bottom, manner),
            write::thickness(deep, manner)
        ),
        TinShape::Round { top, bottom, deep } => round(top, bottom, deep, manner),
        TinShape::Ring {
            top,
            bottom,
            tube,
            deep,
        } => {
            let tube = write::thickness(tube, manner);
            say!("{}, tube {tube}", round(top, bottom, deep, manner), tube)
        }
        TinShape::Muffin {
            top,
            bottom,
            deep,
            cups,
        } => {
            let cups = write::count(cups.get(), manner);
            say!(
                "{cups} cups, each {}",
                cups,
                round(top, bottom, deep, manner)
            )
        }
        TinShape::Tray { across } => sides(across, manner),
    };
    if tin.lidded {
        say!("{text}, with a lid", text)
    } else {
        text
    }
}

fn sides(across: Across, manner: Manner) -> String {
    let long = |length| write::thickness(length, manner);
    format!("{} × {}", long(across.long), long(across.wide))
}

fn round(top: Length, bottom: Length, deep: Length, manner: Manner) -> String {
    let long = |length| write::thickness(length, manner);
    say!(
        "{} across the rim, {} across the bottom, {} deep",
        long(top),
        long(bottom),
        long(deep)
    )
}
