//! Translations: found, and filled in their own order of places.

use softcrumb::sheet::Language;
use softcrumb::text::language::{
    Catalogue, CatalogueError, filled, set_catalogue, text, tr_dynamic,
};

/// A catalogue of a few lines, in use while `act` runs.
fn with_catalogue<T>(lines: &str, act: impl FnOnce() -> T) -> T {
    set_catalogue(Some(Catalogue::read(lines.to_owned()).unwrap()));
    let done = act();
    set_catalogue(None);
    done
}

#[test]
fn english_needs_no_catalogue() {
    assert_eq!(text("Weights"), "Weights");
    assert_eq!(tr_dynamic("Weights"), "Weights");
    assert_eq!(
        filled("{hot} of {first}, {second} again {hot}", &[&"a", &1, &2]),
        "a of 1, 2 again a"
    );
    assert_eq!(filled("{value}\u{A0}g", &[&12]), "12\u{A0}g");
}

#[test]
fn a_text_is_given_in_the_language_of_the_catalogue() {
    let lines = "Flour\tHarina\nWater\tAgua\n";
    with_catalogue(lines, || {
        assert_eq!(text("Flour"), "Harina");
        assert_eq!(tr_dynamic("Water"), "Agua");
        assert_eq!(
            text("Salt"),
            "Salt",
            "a text without translation stays English"
        );
    });
    assert_eq!(text("Flour"), "Flour");
}

#[test]
fn a_translation_may_put_its_places_in_another_order() {
    let lines = "{hot} is {by} above {warm}\t{warm}より{by}高い{hot}\n{a} and {b}\t{a} y {b}\n{a} of {b}\t{b}: {a}\n";
    with_catalogue(lines, || {
        assert_eq!(
            filled("{hot} is {by} above {warm}", &[&"a", &"b", &"c"]),
            "cよりb高いa"
        );
        assert_eq!(filled("{a} and {b}", &[&"a", &"b"]), "a y b");
        assert_eq!(filled("{a} of {b}", &[&"a", &"b"]), "b: a");
    });
}

#[test]
fn values_are_never_read_as_places() {
    assert_eq!(
        filled("{name}: {value}", &[&"{value}", &"{name}"]),
        "{value}: {name}"
    );
}

#[test]
fn a_place_without_a_value_stays_empty() {
    assert_eq!(filled("{a} and {b}", &[&"a"]), "a and ");
    assert_eq!(filled("{a} and {b", &[&"a"]), "a and b");
    assert_eq!(filled("a } b", &[&"x"]), "a } b");
}

#[test]
fn a_file_that_is_no_catalogue_is_refused() {
    assert_eq!(
        Catalogue::read("Flour\tHarina\nWater\n".to_owned()).unwrap_err(),
        CatalogueError::NoPair { line: 2 }
    );
}

/// Source: IETF BCP 47 (RFC 5646): a tag's first part is the language; case does not matter.
#[test]
fn the_first_language_the_browser_asks_for_is_taken() {
    for (tags, language) in [
        (&["es-MX", "en"][..], Language::Spanish),
        (&["fr", "JA-jp"], Language::Japanese),
        (&["en-GB", "es"], Language::English),
        (&["esu", "jam"], Language::English),
        (&[], Language::English),
    ] {
        assert_eq!(
            Language::first_of(tags.iter().copied()),
            language,
            "{tags:?}"
        );
    }
}
