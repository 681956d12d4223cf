//! Every error of the engine has its message.

use super::format_options::{american, british, german};
use super::plain_speech::is_plain;
use softcrumb::engine::batch::BatchError;
use softcrumb::engine::chocolate::ChocolateError;
use softcrumb::engine::formula::{FormulaError, LineAt};
use softcrumb::engine::heat::HeatError;
use softcrumb::engine::ingredients::{LabelError, LabelLine, UnknownIngredient};
use softcrumb::engine::quantity::{
    Division, Mass, NoSuchDivision, OutOfRange, Share, Temperature, Viscosity,
};
use softcrumb::text::ErrorText;

/// Numbers outside every range.
pub(crate) fn out_of_range() -> Vec<OutOfRange> {
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

/// The message in all format options.
pub(crate) fn told(trouble: &impl ErrorText) {
    for options in [british(), german(), american()] {
        is_plain(&trouble.sentence(options));
    }
}

#[test]
fn every_error_of_a_formula_has_a_message() {
    let mut all = vec![
        FormulaError::NoFlour,
        FormulaError::NoFlourIn { part: 0 },
        FormulaError::NoSuchPart { part: 9 },
        FormulaError::NoSuchLine {
            at: LineAt { part: 0, line: 9 },
        },
        FormulaError::NotMadeAhead { part: 0 },
        FormulaError::NoFinalDough,
        FormulaError::NothingIn { part: 0 },
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
fn an_unknown_ingredient_has_a_message() {
    told(&UnknownIngredient { number: 999 });
}

#[test]
fn every_error_of_a_batch_has_a_message() {
    let g = |grams| Mass::from_grams(grams).unwrap();
    let at = LineAt { part: 0, line: 9 };
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
fn a_division_that_no_scale_has_has_a_message() {
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
fn every_error_of_a_syrup_has_a_message() {
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
fn every_error_of_a_label_has_a_message() {
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

#[test]
fn every_error_of_heat_has_a_message() {
    let c = |celsius| Temperature::from_celsius(celsius).unwrap();
    let g = |grams| Mass::from_grams(grams).unwrap();
    let mut all = vec![
        HeatError::EmptyBowl,
        HeatError::UnknownFood,
        HeatError::IceLeft,
        HeatError::NoLiquid,
        HeatError::NoPart,
        HeatError::NoFlour,
        HeatError::NoPaste,
        HeatError::NoChocolate,
        HeatError::NothingPoured,
        HeatError::NoTarget,
        HeatError::NoKnownPiece,
        HeatError::Gained {
            before: g(180.0),
            after: g(190.0),
        },
        HeatError::NeverReached {
            target: c(30.0),
            surroundings: c(22.0),
        },
        HeatError::OvenTooCool {
            oven: c(90.0),
            core: c(93.0),
        },
        HeatError::EmptyProgramme,
    ];
    all.extend(out_of_range().into_iter().map(HeatError::OffScale));
    for error in &all {
        told(error);
    }
}
