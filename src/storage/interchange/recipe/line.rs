//! An ingredient line: how much of what, as far as it says.

use super::amount::{asked, weight};
use super::food_name::food;
use super::household;
use super::measure::{MeasureUnit, Unit};
use super::token::tokens;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;

/// How an amount was come by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// The recipe gives a weight.
    Weighed,
    /// So many of a measure, at a published weight for each: approximate.
    Approximate {
        /// How many.
        count: f64,
        /// Of what.
        unit: MeasureUnit,
        /// What one of them weighs.
        each: Mass,
    },
}

/// An ingredient that was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The food.
    pub food: Food,
    /// Whether the table has no such food: it became one of the user's own, without figures.
    pub own: bool,
    /// How much.
    pub mass: Mass,
    /// How that was come by.
    pub amount: Amount,
    /// Whether a range was given, of which the middle is used.
    pub range: bool,
}

/// Why a line could not be understood.
#[derive(Clone, Debug, PartialEq)]
pub enum Unread {
    /// It gives no amount.
    NoAmount,
    /// It names no food.
    NoFood,
    /// Nothing tells what such a measure of it weighs.
    NoWeight {
        /// The measure.
        unit: MeasureUnit,
        /// What the line calls the food.
        food: String,
    },
    /// It is heavier than anything in a kitchen, or weighs nothing.
    OffScale,
    /// There are more lines than a formula may have.
    TooMany,
}

/// Reads one ingredient line.
pub(super) fn read(line: &str) -> Result<Found, Unread> {
    let (amount, words) = asked(&tokens(line));
    let amount = amount.ok_or(Unread::NoAmount)?;
    let name = words.join(" ");
    if !name.chars().any(char::is_alphabetic) {
        return Err(Unread::NoFood);
    }
    let (food, own) = food(&name, &behind_amount(line)).ok_or(Unread::NoFood)?;
    let range = amount.range;
    let found = |mass: Mass, amount| {
        let fits = mass > Mass::ZERO;
        fits.then_some(Found {
            food: food.clone(),
            own,
            mass,
            amount,
            range,
        })
        .ok_or(Unread::OffScale)
    };
    match amount.unit {
        Unit::Weight(_) => found(weight(amount).ok_or(Unread::OffScale)?, Amount::Weighed),
        Unit::Measure(unit, times) => {
            let number = match &food {
                Food::Listed(listed) => Some(listed.row().number),
                Food::Own(_) => None,
            };
            let each = number.and_then(|number| household::weight(number, unit));
            let each = each.ok_or(Unread::NoWeight { unit, food: name })?;
            let count = amount.count * times;
            let mass = Mass::from_grams(each.grams() * count).map_err(|_| Unread::OffScale)?;
            found(mass, Amount::Approximate { count, unit, each })
        }
    }
}

/// The text after "120 g ", for names written letter by letter.
fn behind_amount(line: &str) -> String {
    let mut words = line.splitn(3, ' ');
    let (_, _, rest) = (words.next(), words.next(), words.next());
    rest.unwrap_or_default().to_owned()
}
