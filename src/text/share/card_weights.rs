//! The weights of a card: those that the bench shows, step by step, told part by part.

use crate::engine::batch::Rounded;
use crate::engine::formula::LineAt;
use crate::results::day::ListedStep;
use crate::text::{
    day::all_of_part,
    format,
    format_options::FormatOptions,
    name, tr,
    weighing::{PartWeights, part_weights_named},
};

/// What to weigh of each part, as the bench shows it: a line that is to be warm says so, and what goes
/// in whole stands with what it goes into.
#[must_use]
pub fn card_weights(
    rounded: &Rounded,
    list: &[ListedStep],
    options: FormatOptions,
) -> Vec<PartWeights> {
    let named = |at: LineAt| line_name(at, rounded, list, options);
    let mut parts = part_weights_named(rounded, named, options);
    for step in list.iter().filter(|step| !step.weighing.parts.is_empty()) {
        let into = step.weighing.lines.first().map(|line| line.at.part);
        let name = into.and_then(|part| rounded.formula.parts.get(part));
        let Some(name) = name.map(name::part) else {
            continue;
        };
        let whole = step.weighing.parts.iter();
        let whole = whole.map(|part| {
            let name = all_of_part(part, &rounded.formula);
            (name, format::mass(part.mass, options))
        });
        if let Some(own) = parts.iter_mut().find(|part| part.name == name) {
            own.lines.splice(0..0, whole);
        }
    }
    parts
}

/// The name of a line as at the bench: "Milk, at 38 °C" where it is to be warm.
fn line_name(
    at: LineAt,
    rounded: &Rounded,
    list: &[ListedStep],
    options: FormatOptions,
) -> Option<String> {
    let food = name::food_of(&rounded.formula, at)?;
    let warm = list.iter().find_map(|step| step.weighing.line(at)?.warm);
    Some(match warm {
        Some(warm) => tr!(
            "{food}, at {warm}",
            food = food,
            warm = format::temperature(warm, options)
        ),
        None => food,
    })
}
