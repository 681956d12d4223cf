//! Every trouble has its words.

use super::manners::{american, british, german};
use super::plain_speech::is_plain;
use proptest::prelude::*;
use softcrumb::engine::batch::BatchError;
use softcrumb::engine::chocolate::ChocolateError;
use softcrumb::engine::formula::{FormulaError, LineAt};
use softcrumb::engine::larder::{LabelError, LabelLine, UnknownIngredient};
use softcrumb::engine::quantity::{
    Division, Factor, Mass, NoSuchDivision, OutOfRange, Share, Temperature, Viscosity,
};
use softcrumb::sheet::link::LinkError;
use softcrumb::sheet::record::{RecordError, RecordFault, Wanted};
use softcrumb::words::Trouble;
use softcrumb::words::read::{self, Limit, Measure, ReadError};

const MEASURES: [Measure; 8] = [
    Measure::Mass,
    Measure::Share,
    Measure::Temperature,
    Measure::Times,
    Measure::Count,
    Measure::Thickness,
    Measure::Volume,
    Measure::Time,
];

fn out_of_range() -> Vec<OutOfRange> {
    [
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::MAX,
        -1.0,
        1e7,
    ]
    .map(|value| OutOfRange {
        value,
        range: 0.0..=1_000_000.0,
    })
    .to_vec()
}

fn told(trouble: &impl Trouble) {
    for manner in [british(), german(), american()] {
        is_plain(&trouble.sentence(manner));
    }
}

#[test]
fn everything_that_cannot_be_read_is_told() {
    let limits = [
        Limit::Mass(Mass::from_grams(1e6).unwrap()),
        Limit::Share(Share::from_percent(1e4).unwrap()),
        Limit::Temperature(Temperature::from_celsius(-40.0).unwrap()),
        Limit::Times(Factor::from_number(1e6).unwrap()),
        Limit::Times(Factor::from_number(1e-6).unwrap()),
        Limit::Count(65_535),
        Limit::Thickness(Viscosity::from_pascal_seconds(1e-5).unwrap()),
        Limit::Thickness(Viscosity::from_pascal_seconds(1e9).unwrap()),
    ];
    let mut all = vec![
        ReadError::Empty,
        ReadError::NotANumber,
        ReadError::TwoNumbers,
        ReadError::TwoPoints,
        ReadError::Unclear {
            grouped: 1234.0,
            decimal: 1.234,
        },
        ReadError::TooManyDigits { most: 18 },
        ReadError::Minus,
        ReadError::OverNought,
        ReadError::NotWhole,
        ReadError::NoSuchDivision,
    ];
    for wanted in MEASURES {
        all.push(ReadError::UnknownUnit { wanted });
        all.extend(MEASURES.map(|got| ReadError::OtherUnit { wanted, got }));
    }
    for limit in limits {
        all.push(ReadError::TooLarge { most: limit });
        all.push(ReadError::TooSmall { least: limit });
    }
    for error in &all {
        told(error);
    }
}

#[test]
fn what_was_typed_is_answered_in_these_words() {
    for (typed, answer) in [
        ("", "Nothing is typed here. Type a number."),
        (
            "20 °C",
            "That is a temperature, and a weight is wanted here. Type the number alone, or with \
             g, kg, oz or lb.",
        ),
        (
            "2 cups",
            "A volume does not say what it weighs. Put it on the scale; type the number alone, \
             or with g, kg, oz or lb.",
        ),
        (
            "-3",
            "This cannot be less than nothing. Take the minus away.",
        ),
        (
            "1,234",
            "This may mean 1234 or 1.234. Type it as one of these.",
        ),
        (
            "1e99",
            "That is more than can be worked with here. The most is 1000\u{A0}kg.",
        ),
        (
            "NaN",
            "No number can be made out here. Type digits, such as 120 or 0.5.",
        ),
    ] {
        let error = read::mass(typed, british()).unwrap_err();
        assert_eq!(error.sentence(british()), answer, "{typed:?}");
    }
}

#[test]
fn everything_that_can_be_asked_of_a_formula_in_vain_is_told() {
    let mut all = vec![
        FormulaError::NoFlour,
        FormulaError::NoFlourIn { stream: 0 },
        FormulaError::NoSuchStream { stream: 9 },
        FormulaError::NoSuchLine {
            at: LineAt { stream: 0, line: 9 },
        },
        FormulaError::NotMadeAhead { stream: 0 },
        FormulaError::NoFinalDough,
        FormulaError::NothingIn { stream: 0 },
        FormulaError::NothingGivesWay,
        FormulaError::BelowZero {
            food: "Water".to_owned(),
            short: Mass::from_grams(12.0).unwrap(),
        },
        FormulaError::CannotMove {
            food: "Salt".to_owned(),
        },
        FormulaError::TooManyLines,
    ];
    all.extend(out_of_range().into_iter().map(FormulaError::OffScale));
    for error in &all {
        told(error);
    }
}

#[test]
fn every_link_that_cannot_be_opened_is_told() {
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
fn every_file_that_cannot_be_opened_is_told() {
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
        RecordFault::BadId,
    ];
    for wanted in [
        Wanted::Number,
        Wanted::Text,
        Wanted::List,
        Wanted::Truth,
        Wanted::Fields,
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

#[test]
fn an_unknown_ingredient_is_told() {
    told(&UnknownIngredient { number: 999 });
}

#[test]
fn every_batch_that_cannot_be_made_is_told() {
    let g = |grams| Mass::from_grams(grams).unwrap();
    let at = LineAt { stream: 0, line: 9 };
    let losses = |mixed| BatchError::LossesTakeAll {
        mixed,
        residue: g(20.0),
        share: Share::from_percent(100.0).unwrap(),
    };
    let mut all = vec![
        BatchError::NoFlour,
        BatchError::NoDough,
        BatchError::NotInFormula { at },
        BatchError::NoneInFormula { at },
        losses(None),
        losses(Some(g(900.0))),
        BatchError::TooLittleToDivide {
            dough: g(3.0),
            pieces: 9.try_into().unwrap(),
            division: Division::ONE_GRAM,
        },
    ];
    all.extend(out_of_range().into_iter().map(BatchError::OffScale));
    for error in &all {
        told(error);
    }
}

#[test]
fn a_step_that_no_scale_has_is_told() {
    let error = NoSuchDivision {
        mass: Mass::from_grams(0.3).unwrap(),
    };
    told(&error);
    assert_eq!(
        error.sentence(german()),
        "No scale steps by that. Type 0,01; 0,02; 0,05; 0,1; 0,2; 0,5; 1; 2; 5 or 10\u{A0}g."
    );
}

#[test]
fn every_syrup_that_cannot_be_had_is_told() {
    let thick = |pascal_seconds| Viscosity::from_pascal_seconds(pascal_seconds).unwrap();
    let mass = Mass::from_grams(60.0).unwrap();
    let mut all = vec![
        ChocolateError::NoChocolate,
        ChocolateError::NoDough,
        ChocolateError::NothingLeft {
            stays: Share::WHOLE,
        },
        ChocolateError::NoWater,
        ChocolateError::TooThin {
            wished: thick(0.001),
            thinnest: Some((thick(0.002), mass)),
        },
        ChocolateError::TooThin {
            wished: thick(0.001),
            thinnest: None,
        },
        ChocolateError::TooThick {
            wished: thick(1e6),
            thickest: thick(1e4),
        },
    ];
    all.extend(out_of_range().into_iter().map(ChocolateError::OffScale));
    for error in &all {
        told(error);
    }
}

#[test]
fn every_label_that_cannot_be_true_is_told() {
    let p = |percent| Share::from_percent(percent).unwrap();
    let mut all = vec![
        LabelError::NameEmpty,
        LabelError::NameTooLong { length: 99 },
        LabelError::NameUnprintable {
            character: '\u{202E}',
        },
        LabelError::SaturatesAboveFat {
            saturates: p(20.0),
            fat: p(10.0),
        },
        LabelError::SugarsAboveCarbohydrate {
            sugars: p(60.0),
            carbohydrate: p(50.0),
        },
        LabelError::CocoaAndSugarsAboveWhole {
            cocoa: p(70.0),
            sugars: p(40.0),
        },
        LabelError::SumAboveWhole { sum: p(120.0) },
    ];
    all.extend(LabelLine::ALL.map(|line| LabelError::LineAboveWhole {
        line,
        share: p(120.0),
    }));
    for error in &all {
        told(error);
    }
}

proptest! {
    #![proptest_config(super::manners::cases(2_000))]

    #[test]
    fn whatever_is_typed_the_answer_is_plain(typed in "\\PC{0,24}") {
        if let Err(error) = read::mass(&typed, british()) {
            is_plain(&error.sentence(british()));
        }
        if let Err(error) = read::temperature(&typed, american()) {
            is_plain(&error.sentence(american()));
        }
    }
}
