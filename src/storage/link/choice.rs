//! Choices in a link: each by its place in the table that spells it.

use super::LinkError;

/// The place of `value` in its table; a test holds that every choice stands there.
pub(super) fn place<T: PartialEq>(value: T, table: &[(T, &str)]) -> u8 {
    let at = table.iter().position(|(known, _)| *known == value);
    at.and_then(|at| u8::try_from(at).ok()).unwrap_or(u8::MAX)
}

/// What stands there.
pub(super) fn standing<T: Copy>(at: u8, table: &[(T, &str)]) -> Result<T, LinkError> {
    let found = table.get(usize::from(at));
    found.map(|(value, _)| *value).ok_or(LinkError::Damaged)
}
