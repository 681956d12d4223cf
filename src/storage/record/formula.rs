//! The formula in a record: parts, lines, ingredients.

use serde::{Deserialize, Deserializer, Serialize};

use crate::engine::formula::{Formula, Line, Part, PartKind};
use crate::engine::ingredients::{Food, Listed, OwnFood};
use crate::engine::quantity::{Mass, Temperature};
use crate::sheet::Sheet;
use crate::storage::enum_names::PARTS;

use super::error::{RecordError, RecordFault};
use super::number::Small;
use super::read::{converted, described};
use super::refused::refuse;
use super::text::{List, Name, words};

words! { PartKind: PARTS; }

described! {
    Formula: FormulaRecord;
    Part: PartRecord;
}

converted! { Line: LineRecord; }

#[derive(Deserialize, Serialize)]
#[serde(remote = "Formula", deny_unknown_fields)]
struct FormulaRecord {
    #[serde(rename = "streams", deserialize_with = "read_parts")]
    parts: Vec<Part>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Part", deny_unknown_fields)]
struct PartRecord {
    kind: PartKind,
    #[serde(with = "Name::<{ Sheet::PART_NAME_LENGTH }>")]
    name: String,
    #[serde(rename = "steam_g", default, skip_serializing_if = "is_nothing")]
    steam: Mass,
    #[serde(rename = "at_c", skip_serializing_if = "Option::is_none")]
    temperature: Option<Temperature>,
    #[serde(with = "List::<{ Formula::MOST_LINES }>")]
    lines: Vec<Line>,
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct LineRecord {
    #[serde(skip_serializing_if = "Option::is_none")]
    ingredient: Option<Number>,
    /// For people: the number decides.
    #[serde(skip_serializing_if = "Option::is_none")]
    name: Option<Called>,
    #[serde(skip_serializing_if = "Option::is_none")]
    own: Option<OwnFood>,
    mass_g: Mass,
    #[serde(skip_serializing_if = "Option::is_none")]
    counts_as_flour: Option<bool>,
    #[serde(skip_serializing_if = "Option::is_none")]
    poured_g: Option<Mass>,
    #[serde(skip_serializing_if = "Option::is_none")]
    at_c: Option<Temperature>,
}

/// The number of an ingredient of the table.
#[derive(Clone, Copy, Deserialize, PartialEq, Eq, Serialize)]
#[serde(transparent)]
pub(super) struct Number(#[serde(with = "Small")] pub(super) u16);

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Called(#[serde(with = "Name::<{ Sheet::NAME_LENGTH }>")] String);

pub(super) fn is_nothing(mass: &Mass) -> bool {
    *mass <= Mass::ZERO
}

/// No more lines in all than a formula may have.
fn read_parts<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Part>, D::Error> {
    let parts: Vec<Part> = List::<{ Formula::MOST_PARTS }>::deserialize(from)?;
    let lines: usize = parts.iter().map(|part| part.lines.len()).sum();
    if lines > Formula::MOST_LINES {
        let most = Formula::MOST_LINES;
        return Err(refuse(RecordFault::TooMany { most }));
    }
    Ok(parts)
}

impl From<&Line> for LineRecord {
    fn from(line: &Line) -> Self {
        let (ingredient, name, own) = match &line.food {
            Food::Listed(listed) => {
                let row = listed.row();
                (
                    Some(Number(row.number)),
                    Some(Called(row.name.to_owned())),
                    None,
                )
            }
            Food::Own(food) => (None, None, Some(food.clone())),
        };
        Self {
            ingredient,
            name,
            own,
            mass_g: line.mass,
            counts_as_flour: line.counts_as_flour,
            poured_g: line.poured,
            at_c: line.temperature,
        }
    }
}

impl TryFrom<LineRecord> for Line {
    type Error = RecordError;

    fn try_from(record: LineRecord) -> Result<Self, RecordError> {
        let name = record.name.map(|called| called.0).unwrap_or_default();
        let food = match (record.ingredient, record.own) {
            (Some(Number(number)), None) => {
                let unknown = |_| RecordFault::UnknownIngredient { number, name };
                let listed = Listed::numbered(number).map_err(unknown);
                Food::Listed(listed.map_err(|fault| fault.at("ingredient"))?)
            }
            (None, Some(own)) => Food::Own(own),
            (None, None) => return Err(RecordFault::Missing.at("ingredient")),
            (Some(_), Some(_)) => return Err(RecordFault::Twice.at("own")),
        };
        Ok(Self {
            food,
            mass: record.mass_g,
            counts_as_flour: record.counts_as_flour,
            poured: record.poured_g,
            temperature: record.at_c,
        })
    }
}
