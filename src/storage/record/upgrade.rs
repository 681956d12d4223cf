//! Upgrade: records of earlier versions converted to this one, a function for each step.

use std::borrow::Cow;

use super::error::{RecordError, RecordFault};
use super::head::{Head, VERSION};
use super::read::{self, InBraces};

/// One step: the JSON of one version, written anew as the next. It reads and writes through record
/// structs of those versions, so that nothing unknown or doubled passes.
pub type Upgrade = fn(&str) -> Result<String, RecordError>;

/// Whether this release, which writes `newest`, knows the version.
pub(super) fn known(head: &Head, newest: u32) -> Result<(), RecordError> {
    let fault = match head.version {
        0 => RecordFault::NoSuchVersion,
        version if version > newest => RecordFault::Newer { version },
        _ => return Ok(()),
    };
    Err(RecordError::from(fault).inside(VERSION))
}

/// Whether it is a record of this kind, and says so once.
pub(super) fn is_a(head: &Head, kind: &str) -> Result<(), RecordError> {
    if head.kind != kind {
        let found = head.kind.clone();
        return Err(RecordFault::OtherKind { found }.into());
    }
    match head.doubled {
        Some(key) => Err(RecordError::from(RecordFault::Twice).inside(key)),
        None => Ok(()),
    }
}

/// Reads the body of a record whose version is known, one step after the other.
pub(super) fn read<T: for<'t> InBraces<'t>>(
    head: &Head,
    steps: &[Upgrade],
) -> Result<T, RecordError> {
    read::body(&climb(head.json, head.version, steps)?)
}

fn climb<'t>(json: &'t str, version: u32, steps: &[Upgrade]) -> Result<Cow<'t, str>, RecordError> {
    let done = usize::try_from(version.saturating_sub(1)).unwrap_or(usize::MAX);
    let mut json = Cow::Borrowed(json);
    for step in steps.get(done..).unwrap_or_default() {
        json = Cow::Owned(step(&json)?);
    }
    Ok(json)
}

/// The version a text says it was written as, by its beginning; nought where it says none.
pub(super) fn version_of(text: &str) -> u32 {
    const BEGINNING: usize = 200;
    let beginning: String = text
        .chars()
        .take(BEGINNING)
        .filter(|character| !character.is_whitespace())
        .collect();
    let digits = beginning
        .split_once("\"version\":")
        .and_then(|(_, behind)| behind.split(|one: char| !one.is_ascii_digit()).next());
    // What is too long for a number is no version of ours.
    digits.and_then(|digits| digits.parse().ok()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn twice(json: &str) -> Result<String, RecordError> {
        Ok(json.repeat(2))
    }

    fn with_an_end(json: &str) -> Result<String, RecordError> {
        Ok(format!("{json}."))
    }

    fn refused(_: &str) -> Result<String, RecordError> {
        Err(RecordFault::UnknownField.into())
    }

    #[test]
    fn every_step_after_its_own_version_is_taken_in_order() {
        let steps: &[Upgrade] = &[twice, with_an_end];
        assert_eq!(climb("a", 1, steps).as_deref(), Ok("aa."));
        assert_eq!(climb("a", 2, steps).as_deref(), Ok("a."));
        assert_eq!(climb("a", 3, steps).as_deref(), Ok("a"));
        assert!(climb("a", 1, &[twice, refused]).is_err());
    }
}
