//! Every error of links and files has its message.

use super::errors::{out_of_range, told};
use softcrumb::storage::link::LinkError;
use softcrumb::storage::record::{Expected, RecordError, RecordFault};

#[test]
fn every_error_of_a_link_has_a_message() {
    let mut all = vec![
        LinkError::Empty,
        LinkError::NotALink,
        LinkError::TooLong {
            characters: 9000,
            most: 8000,
        },
        LinkError::Damaged,
        LinkError::Newer { version: 9 },
        LinkError::UnknownIngredient { number: 999 },
        LinkError::TooMany,
    ];
    all.extend(out_of_range().into_iter().map(LinkError::OutOfRange));
    for error in &all {
        told(error);
    }
}

#[test]
fn every_error_of_a_file_has_a_message() {
    let mut all = vec![
        RecordFault::TooLarge {
            bytes: 50_000_000,
            most: 8_000_000,
        },
        RecordFault::TooLarge {
            bytes: usize::MAX,
            most: 1,
        },
        RecordFault::Empty,
        RecordFault::Damaged { line: 3, column: 7 },
        RecordFault::NotOurs,
        RecordFault::OtherKind {
            found: "kitchen".to_owned(),
        },
        RecordFault::Newer { version: 9 },
        RecordFault::NoSuchVersion,
        RecordFault::Missing,
        RecordFault::UnknownField,
        RecordFault::Twice,
        RecordFault::NotWhole { value: 1.5 },
        RecordFault::TooLong { most: 80 },
        RecordFault::TooMany { most: 100 },
        RecordFault::UnknownIngredient {
            number: 999,
            name: "Moon flour".to_owned(),
        },
        RecordFault::UnknownWord {
            word: "moon".to_owned(),
        },
        RecordFault::NoYeast,
        RecordFault::NotAPhoto,
        RecordFault::BadId,
    ];
    for wanted in [
        Expected::Number,
        Expected::Text,
        Expected::List,
        Expected::Truth,
        Expected::Fields,
    ] {
        all.push(RecordFault::WrongType { wanted });
    }
    all.extend(out_of_range().into_iter().map(RecordFault::OutOfRange));
    for fault in all {
        told(&fault);
        told(&RecordError {
            path: "formula.streams[1].lines[3].mass_g".to_owned(),
            fault,
        });
    }
}
