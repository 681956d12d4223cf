//! Tins in words: how much they take, whether that suits, how high it rises, how the pieces lie.

use crate::engine::quantity::{Length, Mass, SpecificVolume};
use crate::engine::tin::{Across, DoughHeight, Filling, Fullness, Layout, Tin, TinError, TinShape};
use crate::engine::working::WorkingLine;
use crate::results::batch::tins::TinResults;
use crate::text::{
    ErrorText,
    caution::Advice,
    chart::{TinPlan, tin_plan},
    format,
    format_options::FormatOptions,
    tr,
};

/// The tins of a batch in words.
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
    /// How high the risen dough reaches.
    pub height: String,
    /// How pieces lie, or why they cannot be laid out.
    pub plan: Result<TinPlan, String>,
    /// Across a ball as it is put in: "62 mm"; none where pieces cannot be laid out.
    pub ball: Option<String>,
    /// The note where pieces do not divide evenly among tins.
    pub uneven: Option<String>,
    /// The steps that lead to the dough for the tins.
    pub working: Vec<WorkingLine>,
    /// The steps that lead to the height.
    pub height_working: Vec<WorkingLine>,
    /// The step that leads to the ball.
    pub ball_working: Vec<WorkingLine>,
}

/// The tins of a batch in words.
#[must_use]
pub fn view(tins: &TinResults, options: FormatOptions) -> TinView {
    let filled = tins.filling.as_ref();
    let explain = |error: &TinError| error.sentence(options);
    let figure = |look: &dyn Fn(&Filling) -> Option<String>| {
        let found = filled.ok().and_then(look);
        found.unwrap_or_else(|| tr!("not known").to_owned())
    };
    let lidded = tins.used.tins.tin.lidded;
    let laid = tins.layout.as_ref().ok();
    let ball = |laid: &Layout| format::millimetres(laid.ball, options);
    TinView {
        room: match filled {
            Ok(filled) => format::volume(filled.volume, options),
            Err(error) => explain(error),
        },
        wanted: figure(&|filled| Some(format::mass(filled.all, options))),
        found: figure(&|filled| Some(format::room(filled.found?, options))),
        usual: figure(&|filled| Some(usual(filled, options))),
        dough: filled.ok().map(|filled| filled.all),
        advice: filled.ok().and_then(|one| advice(one, options)),
        height: match &tins.height {
            Ok(found) => height(found, lidded, options),
            Err(error) => explain(error),
        },
        plan: match &tins.layout {
            Ok(layout) => Ok(tin_plan(layout, options)),
            Err(error) => Err(explain(error)),
        },
        ball: laid.map(ball),
        uneven: uneven(tins, options),
        working: filled.map(Filling::working).unwrap_or_default(),
        height_working: tins
            .height
            .as_ref()
            .map(DoughHeight::working)
            .unwrap_or_default(),
        ball_working: laid.iter().map(|laid| laid.working(tins.each)).collect(),
    }
}

/// What is shown is weighed for another tin.
#[must_use]
pub fn not_yet(takes: Mass, options: FormatOptions) -> String {
    tr!(
        "These weights are not yet for your tin: it takes {dough} of dough.",
        dough = format::mass(takes, options)
    )
}

/// The note where pieces do not divide evenly among tins.
fn uneven(tins: &TinResults, options: FormatOptions) -> Option<String> {
    let pieces = tins.uneven?;
    Some(tr!(
        "{first} pieces do not share out evenly among {second} tins: some hold one less.",
        first = format::count(pieces.get(), options),
        second = format::count(tins.used.tins.count.get(), options)
    ))
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
        Fullness::TooFull { .. } => (
            tr!(
                "There is too much dough for the tin: it will run over the rim, or press against the lid."
            ),
            tr!(
                "Take {value} out of each tin, or use a larger one.",
                value = format::mass(filled.beyond_usual(), options)
            ),
        ),
        Fullness::TooEmpty { .. } => (
            tr!(
                "There is too little dough for the tin: it will stay low, and dry out before it browns."
            ),
            tr!(
                "Add {value} to each tin, or use a smaller one.",
                value = format::mass(filled.beyond_usual(), options)
            ),
        ),
    };
    Some(Advice {
        means: means.into(),
        to_do: to_do.into(),
        source: source.into(),
    })
}

fn height(found: &DoughHeight, lidded: bool, options: FormatOptions) -> String {
    let at = match (found.above, found.below) {
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
        "As it goes into the oven {at}: {laid} the dough you lay in the tin, {rise} dough without \
         gas. It reaches the rim at {level} what you lay in.",
        at = at,
        laid = format::times(found.as_laid, options),
        rise = format::times(found.rise, options),
        level = format::times(found.level_as_laid, options)
    )
}

/// What a tin measures: "31 × 13 cm at the rim, 30 × 12 cm at the bottom, 9.5 cm deep".
#[must_use]
pub fn measures(tin: &Tin, options: FormatOptions) -> String {
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
        } => tr!(
            "{value}, tube {tube}",
            value = round(top, bottom, deep, options),
            tube = format::thickness(tube, options)
        ),
        TinShape::Muffin {
            top,
            bottom,
            deep,
            cups,
        } => tr!(
            "{cups} cups, each {value}",
            cups = format::count(cups.get(), options),
            value = round(top, bottom, deep, options)
        ),
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
