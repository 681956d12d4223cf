//! Putting a sentence together.

use crate::words::say;

/// "a", "a and b", "a, b and c"; `None` for nothing.
pub(in crate::words) fn listed(parts: &[String]) -> Option<String> {
    match parts.split_last()? {
        (only, []) => Some(only.clone()),
        (last, others) => Some(say!("{} and {last}", others.join(say!(", ")), last)),
    }
}

/// With a capital first.
#[must_use]
pub fn begun(text: &str) -> String {
    let mut characters = text.chars();
    let first = characters.next().map(char::to_uppercase);
    let first: String = first.into_iter().flatten().collect();
    format!("{first}{}", characters.as_str())
}
