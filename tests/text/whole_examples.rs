//! All that is said about the examples a newcomer finds, in all format options.

use super::format_options::{american, british, german};
use super::of_source::{filled, texts_of};
use super::plain_speech::is_plain;
use softcrumb::engine::batch::{ScaleSettings, round, scale};
use softcrumb::engine::chocolate::Syrup;
use softcrumb::engine::formula::{Form, WaterLedger, cautions};
use softcrumb::engine::quantity::Division;
use softcrumb::engine::working::WorkingLine;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::text::{Advice, FormatOptions, caution, chart, name, notice, working};

fn is_whole(advice: &Advice) {
    is_plain(&advice.sentence());
    assert!(!advice.source.is_empty());
}

/// Steps of a sum: every letter has become a number, and every number is one.
fn steps(lines: &[WorkingLine], options: FormatOptions) {
    assert!(!lines.is_empty());
    for line in lines {
        let worked = working::worked(line, options);
        let shown = format!("{} {} {}", worked.rule, worked.put_in, worked.result);
        assert!(
            !shown.contains("NaN") && !shown.contains("not known"),
            "{shown}"
        );
        let between = |one: char| !one.is_alphanumeric();
        for given in &line.with {
            let left = worked
                .put_in
                .split(between)
                .any(|word| word == given.letter);
            assert!(!left, "{} is left in {}", given.letter, worked.put_in);
        }
        assert!(!worked.source.is_empty());
    }
}

/// What is said about the dough.
fn dough(sheet: &Sheet, options: FormatOptions) {
    for found in cautions(&sheet.formula, sheet.bread).unwrap() {
        is_whole(&caution::formula(&found, &sheet.formula, options));
    }
    let ledger = WaterLedger::of(&sheet.formula, Form::AsMade).unwrap();
    is_plain(&chart::water_ledger(&ledger, options));
    steps(&ledger.working(), options);
    let allergens: Vec<_> = sheet
        .formula
        .parts
        .iter()
        .flat_map(|part| &part.lines)
        .flat_map(|line| line.food.allergens())
        .collect();
    is_plain(&name::allergen_list(allergens));
}

/// What is said about the batch, on a scale that shows whole grams only.
/// How many lines such a scale shows badly, and how many syrups there are.
fn batch(sheet: &Sheet, options: FormatOptions) -> (u32, u32) {
    let (mut rounded_badly, mut syrups) = (0, 0);
    let scaled = scale(
        &sheet.formula,
        sheet.batch.wanted,
        sheet.batch.losses,
        sheet.batch.pieces,
    )
    .unwrap();
    steps(&scaled.working(), options);
    for found in &scaled.cautions {
        is_whole(&caution::batch(found, options));
    }
    let weighing = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    for line in &round(&scaled.formula, weighing).lines {
        let food = sheet.formula.line(line.at).unwrap().food.name();
        if let Some(advice) = caution::rounding(food, line, options) {
            is_whole(&advice);
            rounded_badly += 1;
        }
    }
    for part in &scaled.formula.parts {
        if let Ok(syrup) = Syrup::of(part, sheet.batch.syrup_at) {
            syrups += 1;
            is_plain(&chart::flow_curve(&syrup, &syrup.curve(), options));
            steps(&syrup.working(), options);
            steps(&syrup.keeping.working(), options);
            is_whole(&caution::keeping(&syrup.keeping, options));
            for found in &syrup.cautions {
                is_whole(&caution::syrup(found, options));
            }
        }
    }
    (rounded_badly, syrups)
}

#[test]
fn all_that_is_said_about_the_examples_is_plain() {
    let all = examples();
    assert!(all.len() >= 4);
    let (mut rounded_badly, mut syrups) = (0, 0);
    for (_, sheet) in &all {
        for options in [british(), german(), american()] {
            dough(sheet, options);
            let seen = batch(sheet, options);
            rounded_badly += seen.0;
            syrups += seen.1;
        }
    }
    assert!(rounded_badly > 0 && syrups > 0, "{rounded_badly} {syrups}");
}

/// Every text of the file of notices: a new one is held too.
#[test]
fn notices_are_plain() {
    let texts = texts_of(include_str!("../../src/text/notice.rs"));
    for (notice, text) in &texts {
        // The text shown while a part of the page loads is no sentence.
        if notice != "loading" {
            is_plain(&filled(text));
        }
    }
    let said: Vec<&str> = texts.iter().map(|(_, text)| text.as_str()).collect();
    assert!(said.contains(&notice::storage_full()) && said.contains(&notice::file_refused()));
    is_plain(&notice::file_too_large(5e7, 8e6, german()));
    assert_eq!(notice::save_a_file(199, british()), None);
    is_plain(&notice::save_a_file(200, british()).unwrap());
}
