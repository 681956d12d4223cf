//! Weights in cups and spoons, which are approximate.

use crate::engine::batch::Rounded;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;
use crate::storage::interchange::in_measures;
use crate::text::{name, tr};

/// The lines of a batch that a table of measures knows: the ingredient, and about how many cups
/// and spoons it is.
#[must_use]
pub fn in_cups(rounded: &Rounded) -> Vec<(String, String)> {
    let lines = rounded.lines.iter();
    lines
        .filter_map(|line| {
            let food = &rounded.formula.line(line.at)?.food;
            Some((name::food(food), about(food, line.weighed)?))
        })
        .collect()
}

/// Converts a weight to cups and spoons, approximately: "1¾ cups + 1 tablespoon"; `None` without a
/// published measure.
#[must_use]
pub fn about(food: &Food, mass: Mass) -> Option<String> {
    let components = in_measures(food, mass)?.into_iter();
    let amounts = components.map(|(unit, quarters)| {
        let (one, several) = name::measure(unit);
        let noun = if quarters > 4 { several } else { one };
        tr!("{count}\u{A0}{noun}", count = count(quarters), noun = noun)
    });
    Some(amounts.collect::<Vec<_>>().join(" + "))
}

/// Writes a number of quarters with fraction signs.
fn count(quarters: u32) -> String {
    let wholes = quarters.checked_div(4).unwrap_or_default();
    let component = match quarters.checked_rem(4) {
        Some(1) => "¼",
        Some(2) => "½",
        Some(3) => "¾",
        _ => "",
    };
    if wholes == 0 {
        component.to_owned()
    } else {
        format!("{wholes}{component}")
    }
}
