//! Formatting steps of working.

use super::format_options::{british, german};
use softcrumb::engine::working::{WorkingLine, given};
use softcrumb::text::working::worked;

fn moisture() -> WorkingLine {
    WorkingLine {
        rule: "100 × A / D".into(),
        with: vec![
            given("A", "all water", 402.256, "g"),
            given("D", "dough", 960.5, "g"),
        ],
        result: given("M", "moisture of the dough", 41.879_854, "%"),
        source: "by definition".into(),
    }
}

#[test]
fn a_line_shows_rule_numbers_result_and_source() {
    let worked = worked(&moisture(), british());
    assert_eq!(worked.rule, "M = 100 × A / D");
    assert_eq!(worked.put_in, "100 × 402.26 / 960.5");
    assert_eq!(worked.result, "41.88\u{A0}%");
    assert_eq!(worked.result_of, "moisture of the dough");
    assert_eq!(worked.source, "by definition");
    let letters: Vec<String> = worked
        .letters
        .iter()
        .map(|one| format!("{} {} {}", one.letter, one.of, one.figure))
        .collect();
    assert_eq!(
        letters,
        ["A all water 402.26\u{A0}g", "D dough 960.5\u{A0}g"]
    );
}

#[test]
fn numbers_follow_the_format_options() {
    assert_eq!(worked(&moisture(), german()).put_in, "100 × 402,26 / 960,5");
}

#[test]
fn symbols_inside_other_words_and_names_of_functions_stay() {
    let line = WorkingLine {
        rule: "max(m1 * w1 - m, 0.5) ^ exp".into(),
        with: vec![
            given("m", "", 2.0, ""),
            given("m1", "", -3.0, ""),
            given("w1", "", 0.88, ""),
        ],
        result: given("x", "", 0.5, ""),
        source: "common practice".into(),
    };
    assert_eq!(
        worked(&line, british()).put_in,
        "max((−3) × 0.88 − 2, 0.5) ^ exp"
    );
    assert_eq!(
        worked(&line, german()).put_in,
        "max((−3) × 0,88 − 2, 0,5) ^ exp"
    );
}

#[test]
fn no_step_shows_anything_but_figures() {
    for value in [f64::NAN, f64::INFINITY, f64::MAX, f64::MIN_POSITIVE] {
        let line = WorkingLine {
            rule: "x".into(),
            with: vec![given("x", "", value, "g")],
            result: given("y", "", value, "Pa·s"),
            source: "by definition".into(),
        };
        let worked = worked(&line, british());
        for text in [worked.put_in, worked.result] {
            assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
        }
    }
}
