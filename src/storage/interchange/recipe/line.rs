//! An ingredient line: how much of what, as far as it says.

use super::amount::{Asked, asked, weight};
use super::food_name::food;
use super::measure::{MeasureUnit, Unit};
use super::names::RecipeNames;
use super::token::tokens;
use super::{household, japanese, spanish};
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;
use crate::sheet::Language;

/// Where the weight of a measure was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeasureSource {
    /// USDA ARS, Release 28 (2016), table of weights.
    Usda,
    /// Kagawa Nutrition University Press, table of weights by standard measuring cups and spoons.
    Kagawa,
    /// Common practice of the country.
    Practice,
}

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
        /// Where that was read.
        source: MeasureSource,
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

/// Reads one ingredient line in its language; what that does not know is looked for in the others.
/// `document` is the language of most lines.
pub(super) fn read(line: &str, document: Language, names: &RecipeNames) -> Result<Found, Unread> {
    let order: &[Language] = match document {
        _ if japanese::is_written(line) => &[Language::Japanese],
        Language::Spanish => &[Language::Spanish, Language::English],
        Language::English | Language::Japanese => &[Language::English, Language::Spanish],
    };
    let mut answers = order.iter().map(|one| read_in(line, *one, names));
    let first = answers.next().unwrap_or(Err(Unread::NoFood));
    let is_known = |found: &Result<Found, Unread>| found.as_ref().is_ok_and(|found| !found.own);
    if is_known(&first) {
        return first;
    }
    answers.find(is_known).unwrap_or(first)
}

fn read_in(line: &str, language: Language, names: &RecipeNames) -> Result<Found, Unread> {
    let behind = behind_amount(line);
    let line = match language {
        Language::English => line.to_owned(),
        Language::Spanish => spanish::rewritten(line),
        Language::Japanese => japanese::rewritten(line),
    };
    let (amount, words) = asked(&tokens(&line), language);
    let amount = amount.ok_or(Unread::NoAmount)?;
    let range = amount.range;
    let name = words.join(if language == Language::Japanese {
        ""
    } else {
        " "
    });
    let (name, behind) = match language {
        Language::Spanish => (spanish::name(&name), spanish::name(&behind)),
        Language::English | Language::Japanese => (name.as_str(), behind.as_str()),
    };
    if !name.chars().any(char::is_alphabetic) {
        return Err(Unread::NoFood);
    }
    let (food, own) = food(name, behind, language, names).ok_or(Unread::NoFood)?;
    let (mass, amount) = weighed(amount, &food, name, language)?;
    let found = Found {
        food,
        own,
        mass,
        amount,
        range,
    };
    (mass > Mass::ZERO).then_some(found).ok_or(Unread::OffScale)
}

/// How much an amount of a food weighs, and how that was come by.
fn weighed(
    asked: Asked,
    food: &Food,
    name: &str,
    language: Language,
) -> Result<(Mass, Amount), Unread> {
    let Unit::Measure(unit, times) = asked.unit else {
        let mass = weight(asked).ok_or(Unread::OffScale)?;
        return Ok((mass, Amount::Weighed));
    };
    let (each, source) = each(food, name, unit, language).ok_or_else(|| Unread::NoWeight {
        unit,
        food: name.to_owned(),
    })?;
    let count = asked.count * times;
    let mass = Mass::from_grams(each.grams() * count).map_err(|_| Unread::OffScale)?;
    let about = Amount::Approximate {
        count,
        unit,
        each,
        source,
    };
    Ok((mass, about))
}

/// What one of a measure weighs where a language is spoken, and where that was read.
fn each(
    food: &Food,
    name: &str,
    unit: MeasureUnit,
    language: Language,
) -> Option<(Mass, MeasureSource)> {
    let Food::Listed(listed) = food else {
        return None;
    };
    let number = listed.row().number;
    let usda = |mass| (mass, MeasureSource::Usda);
    let is_packet = unit == MeasureUnit::Packet;
    match language {
        Language::English => household::weight(number, unit).map(usda),
        Language::Spanish if is_packet && number == spanish::CUBE_OF => {
            let cube = Mass::from_grams(spanish::CUBE).ok()?;
            Some((cube, MeasureSource::Practice))
        }
        Language::Spanish => household::metric(number, unit, spanish::CUP).map(usda),
        // Packets of Japan have many sizes.
        Language::Japanese if is_packet => None,
        Language::Japanese => {
            let kagawa = japanese::weight(number, name, unit);
            let kagawa = kagawa.map(|mass| (mass, MeasureSource::Kagawa));
            kagawa.or_else(|| household::metric(number, unit, japanese::CUP).map(usda))
        }
    }
}

/// The text after "120 g ", for names written letter by letter.
fn behind_amount(line: &str) -> String {
    let mut words = line.splitn(3, ' ');
    let (_, _, rest) = (words.next(), words.next(), words.next());
    rest.unwrap_or_default().to_owned()
}
