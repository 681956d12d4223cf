//! `PartTexts`: the card of a part as it is written, in one value that the page follows.

use super::{FormatOptions, format, line, name, tr};
use crate::engine::formula::{Basis, LineAt, PartKind};
use crate::engine::quantity::Mass;
use crate::results::formula::{self, PartResults, SettableShare};
use crate::sheet::Sheet;

/// The card of a part written out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PartTexts {
    /// As the user calls it.
    pub name: String,
    /// What becomes of it; `None` where the sheet has no such part.
    pub kind: Option<PartKind>,
    /// Its weight.
    pub mass: String,
    /// Its settings where it is made ahead: "15 % of flour · 156 % water"; empty for other parts.
    pub settings: String,
    /// Its share of all flour, for a box, where that can be set.
    pub flour_share: Option<BoxText>,
    /// Its liquid on its own flour, for a box, where that can be set.
    pub liquid_to_flour: Option<BoxText>,
    /// Whether the formula may have one line more.
    pub has_room: bool,
    /// The numbers of its lines.
    pub lines: Vec<LineTexts>,
}

/// A number for its box.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct BoxText {
    /// The number; empty where there is none.
    pub text: String,
    /// Whether a trial has changed it.
    pub is_changed: bool,
}

/// The numbers of a line, each for its box.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LineTexts {
    /// Its weight.
    pub mass: String,
    /// Its baker's percentage.
    pub percentage: String,
    /// Whether a trial has changed the weight.
    pub is_changed: bool,
}

/// The words of a line, which seldom change with its numbers.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct LineWords {
    /// Its ingredient.
    pub food: String,
    /// What is noted below that.
    pub note: String,
}

impl PartTexts {
    /// Writes the card of a part. `saved` is the sheet without the trial that is on.
    #[must_use]
    pub fn of(
        sheet: &Sheet,
        saved: Option<&Sheet>,
        at: usize,
        basis: Basis,
        options: FormatOptions,
    ) -> Self {
        let (Some(results), Some(part)) =
            (formula::part(sheet, saved, at), sheet.formula.parts.get(at))
        else {
            return Self::default();
        };
        let settable = |share: SettableShare| {
            results.is_made_ahead.then(|| BoxText {
                text: share
                    .share
                    .map(|share| format::box_share(share, options))
                    .unwrap_or_default(),
                is_changed: share.is_changed,
            })
        };
        let lines = (0..part.lines.len()).filter_map(|line| {
            let at = LineAt { part: at, line };
            let results = formula::line(sheet, saved, at, basis)?;
            // A line without a weight yet has empty boxes.
            let has_weight = results.mass > Mass::ZERO;
            let mass = has_weight.then(|| format::box_mass(results.mass, options));
            let percentage = results.percentage.filter(|_| has_weight);
            Some(LineTexts {
                mass: mass.unwrap_or_default(),
                percentage: percentage
                    .map(|share| format::box_percentage(share, options))
                    .unwrap_or_default(),
                is_changed: results.is_changed,
            })
        });
        Self {
            name: name::part(part).to_owned(),
            kind: Some(results.kind),
            mass: format::mass(results.mass, options),
            settings: settings(&results, options),
            flour_share: settable(results.flour_share),
            liquid_to_flour: settable(results.liquid_to_flour),
            has_room: results.has_room,
            lines: lines.collect(),
        }
    }
}

/// The shares of a part that is made ahead: "15 % of flour · 156 % water".
fn settings(results: &PartResults, options: FormatOptions) -> String {
    let flour = results.flour_share.share.filter(|_| results.is_made_ahead);
    let says = flour.map(|flour| {
        let liquid = results.liquid_to_flour.share;
        match liquid {
            Some(liquid) => tr!(
                "{flour} of flour · {liquid} liquid",
                flour = format::share(flour, options),
                liquid = format::share(liquid, options)
            ),
            None => tr!("{flour} of flour", flour = format::share(flour, options)),
        }
    });
    says.unwrap_or_default()
}

impl LineWords {
    /// The words of each line of a part.
    #[must_use]
    pub fn of_part(sheet: &Sheet, part: usize, options: FormatOptions) -> Vec<Self> {
        let lines = sheet.formula.parts.get(part).map(|part| &part.lines);
        lines
            .into_iter()
            .flatten()
            .map(|own| Self {
                food: name::food_short(&own.food).into_owned(),
                note: line::wording(own, options),
            })
            .collect()
    }
}
