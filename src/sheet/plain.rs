//! Names and notes as typed, without invisible characters.

/// Makes a name of one line: removes control characters and direction marks, cuts to `most`
/// characters.
///
/// Letters of every script are kept, right-to-left ones included; markup is text like any other.
/// What is removed can make a name read as something else (Unicode Standard Annex #9).
#[must_use]
pub fn name(text: &str, most: usize) -> String {
    let spaced = text
        .chars()
        .map(|c| if c.is_whitespace() { ' ' } else { c });
    let visible: String = spaced.filter(|c| !hidden(*c)).collect();
    visible
        .trim()
        .chars()
        .take(most)
        .collect::<String>()
        .trim_end()
        .to_owned()
}

/// Makes a note: like [`name()`], with line breaks and outer spaces kept.
#[must_use]
pub fn note(text: &str, most: usize) -> String {
    let one_kind = text.replace("\r\n", "\n").replace('\r', "\n");
    let visible = one_kind
        .chars()
        .filter(|c| matches!(c, '\n' | '\t') || !hidden(*c));
    visible.take(most).collect()
}

/// Control characters, direction marks and overrides, invisible separators, the byte-order mark.
fn hidden(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{61c}' | '\u{200b}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{fff9}'..='\u{fffb}')
}
