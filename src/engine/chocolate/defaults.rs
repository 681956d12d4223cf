//! Beginning: a filling or a syrup for a formula that has none.

use super::error::ChocolateError;
use super::handling::Consistency;
use super::syrup::Syrup;
use crate::engine::formula::{Line, Part, PartKind};
use crate::engine::ingredients::{Food, Listed};
use crate::engine::quantity::{Division, Mass, Share, Temperature};

/// Filling on the dough, as a fraction: common practice is 7 to 10 g in a piece of 85 g.
const FILLING: f64 = 0.09;
/// Chocolate of a syrup on the dough, as a fraction (common practice: a thin line over the top).
const CHOCOLATE: f64 = 0.06;
/// Dark chocolate of 45 to 59 % cocoa.
const DARK: u16 = 1000;
/// Plain water.
const WATER: u16 = 200;

/// A filling of dark chocolate for so much dough, to be changed from there.
#[must_use]
pub fn usual_filling(dough: Mass, name: String) -> Option<Part> {
    let chocolate = Line::new(food(DARK)?, whole_grams(dough, FILLING));
    Some(part(PartKind::Filling, name, vec![chocolate]))
}

/// A syrup of dark chocolate and water for so much dough, thin enough to drizzle when it is so
/// warm, in whole grams; to be changed from there.
///
/// It has never less water than the handbook's rule asks for, see
/// [`MinimumWater`](super::MinimumWater): with less it may seize.
///
/// # Errors
/// As [`Syrup::of`] and [`Syrup::liquid_for`].
pub fn usual_syrup(
    dough: Mass,
    name: String,
    temperature: Temperature,
) -> Result<Option<Part>, ChocolateError> {
    let (Some(dark), Some(water)) = (food(DARK), food(WATER)) else {
        return Ok(None);
    };
    let chocolate = Line::new(dark, whole_grams(dough, CHOCOLATE));
    let mut lines = vec![chocolate, Line::new(water, Mass::ZERO)];
    let dry = part(PartKind::Topping, name.clone(), lines.clone());
    let syrup = Syrup::of(&dry, temperature)?;
    if let Some(wished) = Consistency::Drizzles.typical()
        && let Some(poured) = lines.last_mut()
    {
        let to_drizzle = Division::ONE_GRAM.nearest(syrup.liquid_for(wished)?.liquid);
        let least = syrup.liquid_by_rule().map_or(Mass::ZERO, up_to_grams);
        poured.mass = if least > to_drizzle {
            least
        } else {
            to_drizzle
        };
    }
    Ok(Some(part(PartKind::Topping, name, lines)))
}

fn part(kind: PartKind, name: String, lines: Vec<Line>) -> Part {
    Part {
        kind,
        name,
        lines,
        steam: Mass::ZERO,
        temperature: None,
    }
}

fn food(number: u16) -> Option<Food> {
    Listed::numbered(number).ok().map(Food::Listed)
}

/// The least whole grams that are no less than a mass.
fn up_to_grams(mass: Mass) -> Mass {
    let nearest = Division::ONE_GRAM.nearest(mass);
    if nearest < mass {
        nearest + Division::ONE_GRAM.mass()
    } else {
        nearest
    }
}

/// A part of the dough in whole grams, one at the least.
fn whole_grams(dough: Mass, fraction: f64) -> Mass {
    let component = dough.component(Share::from_fraction(fraction).unwrap_or(Share::NONE));
    let whole = Division::ONE_GRAM.nearest(component);
    if whole > Mass::ZERO {
        whole
    } else {
        Division::ONE_GRAM.mass()
    }
}
