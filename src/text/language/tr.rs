//! `tr!`: a text of the page in the user's language, its values checked by the compiler.

/// A text in the language of the page: `tr!("Weights")` is a `&'static str`.
///
/// With values it fills the placeholders in braces and is a `String`:
/// `tr!("The paste comes to {hot}.", hot = hot)`. Every place is named and has a value, and every
/// value a place, in the order in which the places first appear; anything else does not compile.
macro_rules! tr {
    ($text:literal) => {
        $crate::text::language::text($text)
    };
    ($text:literal, $($name:ident = $value:expr),+ $(,)?) => {{
        const {
            $crate::text::language::check_places($text, &[$(stringify!($name)),+]);
        }
        $crate::text::language::filled($text, &[$(&$value),+])
    }};
}

/// Marks a text for translation; it is shown through
/// [`tr_dynamic`](super::tr_dynamic).
macro_rules! tr_noop {
    ($text:literal) => {
        $text
    };
}

pub(crate) use {tr, tr_noop};

/// Stops the compiler unless `names` are the places in braces of `text`, each once, in the order
/// in which they first appear.
#[allow(
    clippy::panic,
    clippy::indexing_slicing,
    reason = "runs in the compiler only, where a panic is a compile error"
)]
pub(crate) const fn check_places(text: &str, names: &[&str]) {
    let text = text.as_bytes();
    let mut known = 0;
    let mut at = 0;
    while at < text.len() {
        if text[at] == b'{' {
            let start = at + 1;
            while at < text.len() && text[at] != b'}' {
                at += 1;
            }
            let place = position(text, start, at, names);
            assert!(place < names.len(), "a place in braces has no value");
            assert!(place <= known, "values stand in the order of their places");
            if place == known {
                known += 1;
            }
        }
        at += 1;
    }
    assert!(known == names.len(), "a value has no place in braces");
}

/// Which of `names` is in `text` from `start` to before `end`; their count where none is.
#[allow(
    clippy::indexing_slicing,
    reason = "runs in the compiler only, where a panic is a compile error"
)]
const fn position(text: &[u8], start: usize, end: usize, names: &[&str]) -> usize {
    let mut at = 0;
    while at < names.len() {
        let name = names[at].as_bytes();
        let mut same = name.len() == end - start;
        let mut letter = 0;
        while same && letter < name.len() {
            same = name[letter] == text[start + letter];
            letter += 1;
        }
        if same {
            return at;
        }
        at += 1;
    }
    at
}
