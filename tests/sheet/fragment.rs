//! The part of the address after `#`.

use softcrumb::sheet::{Place, examples};
use softcrumb::storage::{Fragment, link};

#[test]
fn every_place_and_every_link_reads_back() {
    for place in Place::ALL {
        let fragment = Fragment::Place(place);
        assert_eq!(Fragment::read(&fragment.write()), fragment);
    }
    let loaf = Fragment::SharedFormula(link::write(&examples()[0].1).unwrap());
    assert!(loaf.write().starts_with("#loaf="));
    assert_eq!(Fragment::read(&loaf.write()), loaf);
    assert_eq!(Fragment::read(loaf.write().trim_start_matches('#')), loaf);
    assert_eq!(Fragment::read(&Fragment::Empty.write()), Fragment::Empty);
}

#[test]
fn anything_else_is_unknown_or_empty() {
    for text in ["", "#"] {
        assert_eq!(Fragment::read(text), Fragment::Empty);
    }
    for text in [
        "#Formula",
        "#formula/",
        "##batch",
        "#loag=abc",
        "#\u{0}",
        "#%23batch",
        "#loaf",
    ] {
        assert_eq!(Fragment::read(text), Fragment::Unknown, "{text}");
    }
    assert_eq!(
        Fragment::read("#loaf="),
        Fragment::SharedFormula(String::new())
    );
}
