//! Tins: how much they take, whether that suits, how high it rises, how the pieces lie.

use std::num::{NonZeroU16, NonZeroU32};

use crate::engine::batch::Scaled;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Length, Mass, SpecificVolume};
use crate::engine::tin::{
    Across, DoughHeight, Filling, Fullness, Tin, TinError, TinShape, dough_height, filling, layout,
};
use crate::engine::working::Line;
use crate::sheet::TinUse;
use crate::text::{
    Trouble,
    caution::Advice,
    chart::{TinPlan, tin_plan},
    format,
    format_options::FormatOptions,
    tr,
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
pub fn tin(used: &TinUse, bread: Bread, scaled: &Scaled, options: FormatOptions) -> TinView {
    let filled = filling(used.tins, bread, used.room, Some(scaled.needed));
    let stands = dough_height(&used.tins.tin, in_one(used, scaled), used.rise);
    let (in_tin, uneven) = pieces_in(used, scaled.pieces.count, options);
    let each = scaled.pieces.each;
    let laid = layout(&used.tins.tin, in_tin, used.rows, each, used.rise);
    let told = |error: &TinError| error.sentence(options);
    let figure = |look: &dyn Fn(&Filling) -> Option<String>| {
        let found = filled.as_ref().ok().and_then(look);
        found.unwrap_or_else(|| tr!("not known").to_owned())
    };
    TinView {
        room: match &filled {
            Ok(filled) => format::volume(filled.volume, options),
            Err(error) => told(error),
        },
        wanted: figure(&|filled| Some(format::mass(filled.all, options))),
        found: figure(&|filled| Some(format::room(filled.found?, options))),
        usual: figure(&|filled| Some(usual(filled, options))),
        dough: filled.as_ref().ok().map(|filled| filled.all),
        advice: filled.as_ref().ok().and_then(|one| advice(one, options)),
        stand: match &stands {
            Ok(stands) => height(stands, used.tins.tin.lidded, options),
            Err(error) => told(error),
        },
        plan: match laid {
            Ok(laid) => Ok(tin_plan(&laid, options)),
            Err(error) => Err(told(&error)),
        },
        uneven,
        working: filled.as_ref().map(Filling::working).unwrap_or_default(),
        stand_working: stands
            .as_ref()
            .map(DoughHeight::working)
            .unwrap_or_default(),
    }
}

/// Dough in one tin.
fn in_one(used: &TinUse, scaled: &Scaled) -> Mass {
    let count = f64::from(used.tins.count.get());
    Mass::from_grams(scaled.needed.grams() / count).unwrap_or_default()
}

/// Pieces in one tin, and what is said where they do not share out evenly.
fn pieces_in(
    used: &TinUse,
    pieces: NonZeroU32,
    options: FormatOptions,
) -> (NonZeroU16, Option<String>) {
    let tins = NonZeroU32::from(used.tins.count);
    let each = pieces.get().div_ceil(tins.get());
    let even = pieces.get().is_multiple_of(tins.get());
    let uneven = (!even).then(|| {
        tr!(
            "{first} pieces do not share out evenly among {second} tins: some hold one less.",
            first = format::count(pieces.get(), options),
            second = format::count(tins.get(), options)
        )
    });
    let each = u16::try_from(each).ok().and_then(NonZeroU16::new);
    (each.unwrap_or(NonZeroU16::MAX), uneven)
}

fn usual(filled: &Filling, options: FormatOptions) -> String {
    let number =
        |room: SpecificVolume| format::plain(room.cubic_centimetres_per_gram(), 2, options.numbers);
    let (least, most) = (filled.usual.least, filled.usual.most);
    tr!(
        "{first} to {second} for this bread",
        first = number(least),
        second = format::room(most, options)
    )
}

fn advice(filled: &Filling, options: FormatOptions) -> Option<Advice> {
    let source = filled.usual.source;
    let (means, to_do) = match filled.fullness? {
        Fullness::Right => return None,
        Fullness::TooFull { over } => (
            tr!(
                "There is too much dough for the tin: it will run over the rim, or press against the lid."
            ),
            tr!(
                "Take at least {value} out of each tin, or use a larger one.",
                value = format::mass(over, options)
            ),
        ),
        Fullness::TooEmpty { short } => (
            tr!(
                "There is too little dough for the tin: it will stay low, and dry out before it browns."
            ),
            tr!(
                "Add at least {value} to each tin, or use a smaller one.",
                value = format::mass(short, options)
            ),
        ),
    };
    Some(Advice {
        means: means.into(),
        to_do: to_do.into(),
        source: source.into(),
    })
}

fn height(stands: &DoughHeight, lidded: bool, options: FormatOptions) -> String {
    let rise = format::times(stands.rise, options);
    let level = format::times(stands.level_at, options);
    let at = match (stands.above, stands.below) {
        (Some(_), _) if lidded => tr!("it fills the tin and presses against the lid").to_owned(),
        (Some(above), _) => tr!(
            "it stands {value} above the rim",
            value = format::thickness(above, options)
        ),
        (None, Some(below)) => {
            tr!(
                "it stands {value} below the rim",
                value = format::thickness(below, options)
            )
        }
        (None, None) => tr!("it is level with the rim").to_owned(),
    };
    tr!(
        "At {rise} its first volume {at}. It reaches the rim at {level}.",
        rise = rise,
        at = at,
        level = level
    )
}

/// What a tin measures: "31 × 13 cm at the rim, 30 × 12 cm at the bottom, 9.5 cm deep".
#[must_use]
pub fn tin_measures(tin: &Tin, options: FormatOptions) -> String {
    let text = match tin.shape {
        TinShape::Rectangle { top, bottom, deep } => tr!(
            "{first} at the rim, {second} at the bottom, {third} deep",
            first = sides(top, options),
            second = sides(bottom, options),
            third = format::thickness(deep, options)
        ),
        TinShape::Round { top, bottom, deep } => round(top, bottom, deep, options),
        TinShape::Ring {
            top,
            bottom,
            tube,
            deep,
        } => {
            let tube = format::thickness(tube, options);
            tr!(
                "{value}, tube {tube}",
                value = round(top, bottom, deep, options),
                tube = tube
            )
        }
        TinShape::Muffin {
            top,
            bottom,
            deep,
            cups,
        } => {
            let cups = format::count(cups.get(), options);
            tr!(
                "{cups} cups, each {value}",
                cups = cups,
                value = round(top, bottom, deep, options)
            )
        }
        TinShape::Tray { across } => sides(across, options),
    };
    if tin.lidded {
        tr!("{text}, with a lid", text = text)
    } else {
        text
    }
}

fn sides(across: Across, options: FormatOptions) -> String {
    let long = |length| format::thickness(length, options);
    format!("{} × {}", long(across.long), long(across.wide))
}

fn round(top: Length, bottom: Length, deep: Length, options: FormatOptions) -> String {
    let long = |length| format::thickness(length, options);
    tr!(
        "{first} across the rim, {second} across the bottom, {third} deep",
        first = long(top),
        second = long(bottom),
        third = long(deep)
    )
}
