//! Joining texts into a sentence.

use crate::text::tr;

/// "a", "a and b", "a, b and c"; `None` for nothing.
pub(in crate::text) fn listed(components: &[String]) -> Option<String> {
    match components.split_last()? {
        (only, []) => Some(only.clone()),
        (last, others) => Some(tr!(
            "{value} and {last}",
            value = others.join(tr!(", ")),
            last = last
        )),
    }
}

/// A text as a sentence of its own, with the full stop of the language.
pub(in crate::text) fn stopped(text: &str) -> String {
    tr!("{text}.", text = capitalized(text))
}

/// Capitalises the first letter.
#[must_use]
pub fn capitalized(text: &str) -> String {
    let mut characters = text.chars();
    let first = characters.next().map(char::to_uppercase);
    let first: String = first.into_iter().flatten().collect();
    format!("{first}{}", characters.as_str())
}
