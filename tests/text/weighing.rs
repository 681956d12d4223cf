//! The weighing list in words.

use super::format_options::british;
use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::formula::LineAt;
use softcrumb::engine::quantity::Division;
use softcrumb::sheet::examples;
use softcrumb::text::{caution, weighing};

/// Worked by hand: 0.6 g of yeast on whole grams reads 1 g, +0.4 g, 66.7 % off; its percentage of
/// 480 g of flour goes from 0.125 to 0.208.
#[test]
fn a_line_says_what_is_shown_what_is_exact_and_what_it_does() {
    let (_, sheet) = examples().into_iter().next().unwrap();
    let whole = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    let rounded = round(&sheet.formula, whole);
    let at = LineAt { part: 1, line: 2 };
    let line = rounded.lines.iter().find(|line| line.at == at).unwrap();
    let weighed = weighing::line(line, british());
    assert_eq!(weighed.shows, "1\u{A0}g");
    assert!(weighed.off);
    assert_eq!(
        weighed.wording,
        "exact 0.6\u{A0}g · +0.4\u{A0}g, 66.7\u{A0}% off · 0.13\u{A0}% → 0.21\u{A0}%"
    );
    assert!(caution::rounding("Yeast", line, british()).is_some());
}
