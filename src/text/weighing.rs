//! Weighing: a line of the batch as it is weighed, and the effect of the scale's rounding.

use super::format_options::FormatOptions;
use super::{format, name};
use crate::engine::batch::{Divided, Losses, Pieces, Portion, Rounded, RoundedLine, ScaleReading};
use crate::engine::formula::LineAt;
use crate::engine::quantity::Mass;
use crate::text::tr;

/// A line of the batch as it is weighed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Weighed {
    /// What the scale shows: "312 g"; what is below it.
    pub shows: String,
    /// What is exact, and what rounding does.
    pub wording: String,
    /// Whether the error passes what needs no thought.
    pub off: bool,
}

/// What to weigh of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartWeights {
    /// The part.
    pub name: String,
    /// Each ingredient with what the scale shows.
    pub lines: Vec<(String, String)>,
    /// All of it together.
    pub total: String,
}

/// What to weigh of each part that has lines.
#[must_use]
pub fn part_weights(rounded: &Rounded, options: FormatOptions) -> Vec<PartWeights> {
    let named = |at| name::food_of(&rounded.formula, at);
    part_weights_named(rounded, named, options)
}

/// The same, each line by the name that it is given.
#[must_use]
pub fn part_weights_named(
    rounded: &Rounded,
    named: impl Fn(LineAt) -> Option<String>,
    options: FormatOptions,
) -> Vec<PartWeights> {
    let numbered = rounded.formula.parts.iter().enumerate();
    let all = numbered.map(|(at, part)| {
        let own = rounded.lines.iter().filter(|line| line.at.part == at);
        let lines = own.filter_map(|own| Some((named(own.at)?, to_weigh(own, options))));
        PartWeights {
            name: name::part(part).to_owned(),
            lines: lines.collect(),
            total: part_total(rounded, at, options),
        }
    });
    all.filter(|part| !part.lines.is_empty()).collect()
}

/// What to weigh of a line on paper: what the scale shows, marked where that is far off; and the exact
/// weight where it shows nothing, for a pocket scale or a solution.
#[must_use]
pub fn to_weigh(line: &RoundedLine, options: FormatOptions) -> String {
    let shows = || format::mass_weighed(line.weighed, line.division, options);
    match line.reading {
        ScaleReading::AsWeighed if line.is_far_off() => format!("⚠ {}", shows()),
        ScaleReading::AsWeighed => shows(),
        ScaleReading::BelowScale => format::mass(line.exact, options),
    }
}

/// All of a part together, as finely as its finest scale weighs; what is too little for the scale is
/// counted exactly.
fn part_total(rounded: &Rounded, part: usize, options: FormatOptions) -> String {
    let own = || rounded.lines.iter().filter(|line| line.at.part == part);
    let finest = own().map(|line| line.division);
    let finest = finest.fold(rounded.weighing.main, |finest, one| {
        if one.mass() < finest.mass() {
            one
        } else {
            finest
        }
    });
    format::mass_weighed(shown(rounded, part), finest, options)
}

/// What is weighed of a part; exact where its scale shows nothing.
fn shown(rounded: &Rounded, part: usize) -> Mass {
    let own = rounded.lines.iter().filter(|line| line.at.part == part);
    own.map(|line| match line.reading {
        ScaleReading::AsWeighed => line.weighed,
        ScaleReading::BelowScale => line.exact,
    })
    .sum()
}

/// A line of the batch as it is weighed.
#[must_use]
pub fn line(line: &RoundedLine, options: FormatOptions) -> Weighed {
    let mut wording = vec![tr!(
        "exact {value}",
        value = format::mass(line.exact, options)
    )];
    let shows = match line.reading {
        ScaleReading::AsWeighed => format::mass_weighed(line.weighed, line.division, options),
        ScaleReading::BelowScale => tr!("below the scale").to_owned(),
    };
    if line.weighed != line.exact {
        let error = format::mass_difference(line.error, options);
        wording.push(match line.error_share {
            Some(share) if line.aids.is_some() && line.reading == ScaleReading::AsWeighed => {
                tr!(
                    "{error}, {value} off",
                    error = error,
                    value = format::share(share, options)
                )
            }
            Some(_) | None => error,
        });
    }
    wording.extend(percentage(line, options));
    if line.on_pocket_scale {
        wording.push(tr!("pocket scale").to_owned());
    }
    Weighed {
        shows,
        wording: wording.join(" · "),
        off: line.aids.is_some(),
    }
}

/// The baker's percentage, exact and as weighed where that differs to the eye.
fn percentage(line: &RoundedLine, options: FormatOptions) -> Option<String> {
    let exact = format::share(line.percent_exact?, options);
    let weighed = format::share(line.percent_weighed?, options);
    Some(if exact == weighed {
        exact
    } else {
        format::from_to(&exact, &weighed)
    })
}

/// The dough as weighed and what that changes: "901 g, −0.2 %".
#[must_use]
pub fn dough_change(rounded: &Rounded, options: FormatOptions) -> String {
    let weighed = format::mass(rounded.dough_weighed, options);
    match format::relative_change(rounded.dough_exact, rounded.dough_weighed, options) {
        Some(change) => [weighed, change].join(tr!(", ")),
        None => weighed,
    }
}

/// What weighing does to the true water: "67.2 % → 67.1 %".
#[must_use]
pub fn water_change(rounded: &Rounded, options: FormatOptions) -> Option<String> {
    let exact = format::share(rounded.true_water_exact?, options);
    let weighed = format::share(rounded.true_water_weighed?, options);
    Some(if exact == weighed {
        weighed
    } else {
        format::from_to(&exact, &weighed)
    })
}

/// What dough is divided into: "9 × 70 g".
#[must_use]
pub fn pieces(pieces: &Pieces, options: FormatOptions) -> String {
    let count = format::count(pieces.count.get(), options);
    format!("{count}\u{A0}×\u{A0}{}", format::mass(pieces.each, options))
}

/// How dough is divided, at a glance: "4 of 71 g, 5 of 70 g".
#[must_use]
pub fn divided(divided: &Divided, options: FormatOptions) -> String {
    let portion = |portion: &Portion| {
        let each = format::mass_weighed(portion.each, divided.division, options);
        tr!(
            "{value} of {each}",
            value = format::count(portion.count, options),
            each = each
        )
    };
    if divided.heavier.count == 0 {
        portion(&divided.lighter)
    } else {
        [portion(&divided.heavier), portion(&divided.lighter)].join(tr!(", "))
    }
}

/// Losses in a few words: "Dough 6 g and 0.5 %, oven 10.5 %".
#[must_use]
pub fn losses(losses: &Losses, options: FormatOptions) -> String {
    tr!(
        "Dough {first} and {second}, oven {third}",
        first = format::mass(losses.residue, options),
        second = format::share(losses.residue_share.plus(losses.dividing), options),
        third = format::share(losses.bake, options)
    )
}
