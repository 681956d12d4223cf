//! Records that are damaged, hostile, or of a later release: each answered, with the way to it.

use softcrumb::engine::quantity::Mass;
use softcrumb::sheet::Settings;
use softcrumb::sheet::Sheet;
use softcrumb::sheet::Shelf;
use softcrumb::sheet::{Kitchen, examples};
use softcrumb::storage::record::{
    Expected, FILE_LIMIT, FormulaFile, RECORD_LIMIT, Record, RecordError, RecordFault,
};

fn main_record() -> String {
    Record::write(&examples().remove(0).1)
}

/// The main example with the first `from` replaced.
fn with(from: &str, to: &str) -> RecordError {
    let text = main_record();
    assert!(text.contains(from), "{from} is not in {text}");
    Sheet::read(&text.replacen(from, to, 1)).unwrap_err()
}

fn is_at(error: &RecordError, path: &str) {
    assert_eq!(error.path, path, "{error}");
}

#[test]
fn a_number_out_of_range_is_named_with_the_way_to_it() {
    for number in ["-1", "1e7", "1000000.1", "-0.0001", "1e308"] {
        let error = with("\"mass_g\":8.6", &format!("\"mass_g\":{number}"));
        is_at(&error, "formula.streams[2].lines[6].mass_g");
        let RecordFault::OutOfRange(range) = error.fault else {
            panic!("{error}");
        };
        assert_eq!(range.range, Mass::RANGE);
    }
}

#[test]
fn what_is_no_number_is_none() {
    for (value, wanted) in [
        ("\"8.6\"", 0),
        ("\"NaN\"", 0),
        ("[]", 0),
        ("true", 0),
        ("{}", 0),
    ] {
        let error = with("\"mass_g\":8.6", &format!("\"mass_g\":{value}"));
        is_at(&error, "formula.streams[2].lines[6].mass_g");
        assert_eq!(
            error.fault,
            RecordFault::WrongType {
                wanted: Expected::Number
            },
            "{wanted}"
        );
    }
    for value in [
        "1e999", "-1e999", "NaN", "Infinity", "0x10", "1,5", "+1", ".5", "01", "",
    ] {
        let error = with("\"mass_g\":8.6", &format!("\"mass_g\":{value}"));
        assert!(
            matches!(error.fault, RecordFault::Damaged { line: 1, .. }),
            "{value}: {error}"
        );
    }
    // A number too small to be held is nought, and nought can be weighed.
    let text = main_record().replacen("\"mass_g\":8.6", "\"mass_g\":1e-999", 1);
    assert_eq!(
        Sheet::read(&text).unwrap().formula.parts[2].lines[6].mass,
        Mass::ZERO
    );
}

#[test]
fn a_field_twice_missing_or_unknown_is_named() {
    let error = with("\"mass_g\":8.6", "\"mass_g\":8.6,\"mass_g\":9");
    is_at(&error, "formula.streams[2].lines[6].mass_g");
    assert_eq!(error.fault, RecordFault::Twice);
    let error = with("\"version\":1", "\"version\":1,\"version\":1");
    assert_eq!(
        (error.path.as_str(), error.fault),
        ("version", RecordFault::Twice)
    );
    let error = with("\"mass_g\":8.6", "\"mass_oz\":8.6");
    is_at(&error, "formula.streams[2].lines[6].mass_oz");
    assert_eq!(error.fault, RecordFault::UnknownField);
    let error = with(",\"pieces\":10", "");
    is_at(&error, "batch.pieces");
    assert_eq!(error.fault, RecordFault::Missing);
}

#[test]
fn counts_must_be_whole_and_at_least_one() {
    for (value, whole) in [("0", true), ("-1", true), ("65536", true), ("9.5", false)] {
        let error = with("\"pieces\":10", &format!("\"pieces\":{value}"));
        is_at(&error, "batch.pieces");
        let out_of_range = matches!(error.fault, RecordFault::OutOfRange(_));
        assert_eq!(out_of_range, whole, "{error}");
    }
}

#[test]
fn an_ingredient_of_a_later_release_is_named_as_the_record_names_it() {
    let error = with("\"ingredient\":41", "\"ingredient\":9999");
    is_at(&error, "formula.streams[0].lines[1].ingredient");
    let RecordFault::UnknownIngredient { number: 9999, name } = error.fault else {
        panic!("{error}");
    };
    assert_eq!(name, "Medium rye flour");
}

#[test]
fn the_number_decides_and_the_name_is_for_people() {
    let text = main_record().replacen("Medium rye flour", "Rubbish", 1);
    assert_eq!(Sheet::read(&text), Ok(examples().remove(0).1));
}

#[test]
fn versions_nought_and_two_are_answered_as_what_they_are() {
    assert_eq!(
        with("\"version\":1", "\"version\":2").fault,
        RecordFault::Newer { version: 2 }
    );
    let newest = with("\"version\":1", "\"version\":4294967295");
    assert_eq!(newest.fault, RecordFault::Newer { version: u32::MAX });
    assert_eq!(
        with("\"version\":1", "\"version\":0").fault,
        RecordFault::NoSuchVersion
    );
    for wrong in [
        "\"version\":1.5",
        "\"version\":\"1\"",
        "\"version\":-1",
        "\"version\":1e99",
    ] {
        is_at(&with("\"version\":1", wrong), "version");
    }
    // A newer version is reported before anything else in the record is read.
    let text = r#"{"softcrumb":"formula","version":7,"dough":{"new":true}}"#;
    assert_eq!(
        Sheet::read(text).unwrap_err().fault,
        RecordFault::Newer { version: 7 }
    );
}

#[test]
fn what_is_not_ours_or_something_else_of_ours_is_distinguished() {
    for text in [
        "{}",
        "[]",
        "1",
        "null",
        "\"softcrumb\"",
        r#"{"softcrumb":1}"#,
    ] {
        assert_eq!(
            Sheet::read(text).unwrap_err().fault,
            RecordFault::NotOurs,
            "{text}"
        );
    }
    let error = Sheet::read(&Kitchen::default().write()).unwrap_err();
    assert_eq!(
        error.fault,
        RecordFault::OtherKind {
            found: "kitchen".to_owned()
        }
    );
    assert!(Kitchen::read(&main_record()).is_err());
    assert!(Settings::read(&main_record()).is_err());
    assert!(Shelf::read(&main_record()).is_err());
}

#[test]
fn nothing_at_all_is_said_to_be_nothing() {
    for text in ["", " ", "\n\t ", "\u{feff}"] {
        assert_eq!(Sheet::read(text).unwrap_err().fault, RecordFault::Empty);
    }
}

#[test]
fn too_much_text_is_refused_unread() {
    let text = "x".repeat(RECORD_LIMIT + 1);
    let too_large = RecordFault::TooLarge {
        bytes: text.len(),
        most: RECORD_LIMIT,
    };
    assert_eq!(Sheet::read(&text).unwrap_err().fault, too_large);
    let text = "x".repeat(FILE_LIMIT + 1);
    assert!(matches!(
        FormulaFile::read(&text).unwrap_err().fault,
        RecordFault::TooLarge { .. }
    ));
}

#[test]
fn deep_nesting_and_endless_lists_are_refused() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
        let text = format!("{}1{}", open.repeat(100_000), close.repeat(100_000));
        assert!(matches!(
            Sheet::read(&text).unwrap_err().fault,
            RecordFault::Damaged { .. }
        ));
    }
    let many = format!("[{}0]", "0,".repeat(2_000_000));
    assert!(matches!(
        FormulaFile::read(&many).unwrap_err().fault,
        RecordFault::Damaged { .. }
    ));
}

#[test]
fn every_cut_of_a_record_is_refused() {
    let text = main_record();
    for (end, _) in text.char_indices() {
        assert!(
            Sheet::read(&text[..end]).is_err(),
            "opened: {}",
            &text[..end]
        );
    }
}

#[test]
fn more_parts_lines_or_letters_than_there_may_be_are_refused() {
    let mut sheet = examples().remove(0).1;
    let part = sheet.formula.parts[0].clone();
    sheet.formula.parts = vec![part.clone(); 13];
    let error = Sheet::read(&sheet.write()).unwrap_err();
    assert_eq!(error.fault, RecordFault::TooMany { most: 12 });
    is_at(&error, "formula.streams");

    let line = part.lines[0].clone();
    sheet.formula.parts = vec![part; 2];
    sheet.formula.parts[1].lines = vec![line; 199];
    let error = Sheet::read(&sheet.write()).unwrap_err();
    assert_eq!(error.fault, RecordFault::TooMany { most: 200 });

    let long = "é".repeat(81);
    let error = with("Lantern Lane chocolate loaf", &long);
    is_at(&error, "name");
    assert_eq!(error.fault, RecordFault::TooLong { most: 80 });
}

#[test]
fn a_name_loses_what_nobody_can_see_and_keeps_the_rest() {
    let text = main_record().replacen(
        "Lantern Lane chocolate loaf",
        "\u{202e}خبز \\u0000<b>x</b>\\u202d",
        1,
    );
    assert_eq!(Sheet::read(&text).unwrap().name, "خبز <b>x</b>");
}

#[test]
fn a_label_that_cannot_be_true_is_refused_with_the_way_to_it() {
    let own = r#"{"own":{"name":"bar","role":"chocolate","label":{"fat_share":0.9,"protein_share":0.9},"allergens":[]},"mass_g":85}"#;
    let error = with(
        r#"{"ingredient":1001,"name":"Dark chocolate","mass_g":85}"#,
        own,
    );
    is_at(&error, "formula.streams[3].lines[0].own");
    assert!(matches!(error.fault, RecordFault::Label(_)), "{error}");
}

#[test]
fn a_division_that_no_scale_has_is_refused() {
    let text = Kitchen::default()
        .write()
        .replace("\"main_g\":1", "\"main_g\":3");
    let error = Kitchen::read(&text).unwrap_err();
    is_at(&error, "scales.main_g");
    assert!(matches!(error.fault, RecordFault::Division(_)), "{error}");
}

/// What is written as fields is read from fields only, though its values stood in the right order.
#[test]
fn a_list_in_place_of_fields_is_refused() {
    let fields = RecordFault::WrongType {
        wanted: Expected::Fields,
    };
    let text = main_record();
    let from = text.find("\"losses\":{").unwrap();
    let to = from + text[from..].find('}').unwrap() + 1;
    let listed = format!("{}\"losses\":[0,0,0,0,0]{}", &text[..from], &text[to..]);
    let error = Sheet::read(&listed).unwrap_err();
    is_at(&error, "batch.losses");
    assert_eq!(error.fault, fields);
    let error = with(
        "{\"ingredient\":1001,\"name\":\"Dark chocolate\",\"mass_g\":85}",
        "[1001,\"Dark chocolate\",85]",
    );
    is_at(&error, "formula.streams[3].lines[0]");
    assert_eq!(error.fault, fields);
}
