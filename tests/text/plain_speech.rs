//! Rules for every sentence of the page.

/// Words that no sentence may contain.
const BANNED: [&str; 8] = [
    "invalid", "error", "nan", "inf ", "infinit", "illegal", "fail", "wrong",
];

/// Whole sentences, in plain and kind words, with nothing left unfilled.
pub(crate) fn is_plain(sentence: &str) {
    assert!(sentence.ends_with('.'), "no full stop: {sentence:?}");
    assert!(
        sentence.trim() == sentence && sentence.len() > 10,
        "{sentence:?}"
    );
    let small = sentence.to_lowercase();
    for word in BANNED {
        assert!(!small.contains(word), "{word:?} in {sentence:?}");
    }
    for mark in ["  ", "{", "}", "..", " .", "\n"] {
        assert!(!sentence.contains(mark), "{mark:?} in {sentence:?}");
    }
    let first = sentence.chars().next().unwrap();
    assert!(!first.is_lowercase(), "small letter first: {sentence:?}");
}

/// A figure that is there and is a number.
pub(crate) fn has_figures(text: &str) {
    assert!(!text.is_empty());
    for word in ["NaN", "inf", "not known"] {
        assert!(!text.contains(word), "{text}");
    }
}
