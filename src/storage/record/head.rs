//! The head of a record: it must be JSON within its limits, and say what it is and which version.

use crate::storage::Json;

use super::error::{Expected, RecordError, RecordFault};
use super::number::whole;

/// The keys that stand first in every record.
pub(super) const KIND: &str = "softcrumb";
pub(super) const VERSION: &str = "version";

/// What a record says of itself.
pub(super) struct Head<'t> {
    /// The JSON, without a byte-order mark.
    pub(super) json: &'t str,
    /// What kind of record it is.
    pub(super) kind: String,
    /// The version it was written as.
    pub(super) version: u32,
    /// One of these keys that is there twice.
    pub(super) doubled: Option<&'static str>,
}

/// Reads the head of a text of at most `most` bytes.
pub(super) fn head(text: &str, most: usize) -> Result<Head<'_>, RecordError> {
    let bytes = text.len();
    if bytes > most {
        return Err(RecordFault::TooLarge { bytes, most }.into());
    }
    let json = text.trim_start_matches('\u{feff}');
    if json.trim().is_empty() {
        return Err(RecordFault::Empty.into());
    }
    let damaged = |(line, column)| RecordFault::Damaged { line, column };
    let tree = Json::parse(json).map_err(damaged)?;
    let Json::Fields(fields) = &tree else {
        return Err(RecordFault::NotOurs.into());
    };
    let all = |wanted| {
        let found = fields.iter().filter(move |(key, _)| key == wanted);
        found.map(|(_, value)| value)
    };
    let Some(Json::Text(kind)) = all(KIND).next() else {
        return Err(RecordFault::NotOurs.into());
    };
    let version = match all(VERSION).next() {
        Some(Json::Number(number)) => whole(*number, 0, u32::MAX),
        Some(_) => Err(RecordFault::WrongType {
            wanted: Expected::Number,
        }
        .into()),
        None => Err(RecordFault::Missing.into()),
    };
    Ok(Head {
        json,
        kind: kind.chars().take(40).collect(),
        version: version.map_err(|error| error.inside(VERSION))?,
        doubled: [KIND, VERSION]
            .into_iter()
            .find(|key| all(key).nth(1).is_some()),
    })
}
