//! Names as people type them.

use softcrumb::sheet::plain::{name, note};

#[test]
fn letters_of_every_script_and_markup_stay() {
    for text in [
        "خبز بالشوكولاتة",
        "לחם",
        "パン",
        "<b>bread</b> & \"jam\"",
        "क्‍ष",
        "👩‍🍳",
    ] {
        assert_eq!(name(text, 80), text);
    }
}

/// Source: Unicode Standard Annex #9, table of explicit directional formatting characters.
#[test]
fn direction_marks_and_control_characters_are_taken_out() {
    let marks = "\u{202a}\u{202b}\u{202c}\u{202d}\u{202e}\u{2066}\u{2067}\u{2068}\u{2069}\u{200e}\u{200f}\u{61c}";
    assert_eq!(name(&format!("lo{marks}af\u{0}\u{7f}\u{85}"), 80), "loaf");
    assert_eq!(name("a\tb\nc", 80), "a b c");
    assert_eq!(note("a\r\nb\rc\u{202e}", 80), "a\nb\nc");
}

#[test]
fn a_name_is_cut_at_whole_characters() {
    assert_eq!(name("ééé", 2), "éé");
    assert_eq!(name("  a b  ", 3), "a b");
    assert_eq!(name(&"🍞".repeat(200), 80).chars().count(), 80);
}
