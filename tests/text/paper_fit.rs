//! Layout of printed pages: the largest type that fits, larger paper with a warning where none does.

use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::formula::{Formula, Part};
use softcrumb::engine::quantity::Division;
use softcrumb::results::batch::{self, class};
use softcrumb::sheet::{Pantry, Scales, Sheet, examples};
use softcrumb::storage::interchange::{SquareCode, square_code};
use softcrumb::text::FormatOptions;
use softcrumb::text::share::{
    BenchCard, ClassSheet, Paper, TypeSize, before_printing, bench_card, class_sheet, code_side,
};

fn code() -> SquareCode {
    square_code(&"x".repeat(480)).unwrap()
}

fn paper(sheet: &Sheet) -> (BenchCard, ClassSheet) {
    let options = FormatOptions::default();
    let scales = Scales {
        main: Division::ONE_GRAM.mass(),
        pocket: None,
    };
    let class = class::of(sheet, &ClassSettings::default(), scales);
    let told = softcrumb::text::class::view(&class, options).unwrap();
    let (batch, pantry, code) = (batch::of(sheet, scales), Pantry::default(), code());
    (
        bench_card(sheet, &batch, &pantry, Some(&code), options).unwrap(),
        class_sheet(sheet, &told, &pantry, Some(&code), options),
    )
}

/// The first example with its parts repeated.
fn times(parts: usize) -> Sheet {
    let (_, mut sheet) = examples().remove(0);
    let all: Vec<Part> = sheet.formula.parts.clone();
    sheet.formula = Formula {
        parts: all.into_iter().cycle().take(parts).collect(),
    };
    sheet
}

#[test]
fn the_examples_fit_the_small_card_without_a_warning() {
    for (_, sheet) in examples() {
        let (card, large) = paper(&sheet);
        assert_eq!((card.fit.paper, card.fit.one_page), (Paper::A5, true));
        assert!(large.fit.one_page && large.fit.type_size != TypeSize::Closest);
        assert_eq!(large.tables.len(), 1);
        let said = before_printing(Some(&card), Some(&large));
        assert!(said.is_empty(), "{said:?}");
    }
}

#[test]
fn a_longer_formula_is_set_smaller_then_on_larger_paper_with_a_warning() {
    let order = |card: &BenchCard| {
        let paper = u8::from(card.fit.paper == Paper::A4);
        let type_size = match card.fit.type_size {
            TypeSize::Roomy => 0,
            TypeSize::Close => 1,
            TypeSize::Closest => 2,
        };
        3 * paper + type_size
    };
    let cards: Vec<(BenchCard, ClassSheet)> = (4..=24).map(|count| paper(&times(count))).collect();
    assert!(cards.is_sorted_by_key(|(card, _)| order(card)));
    let (card, large) = cards.last().unwrap();
    assert_eq!(card.fit.paper, Paper::A4);
    assert_eq!(large.tables.len(), 2);
    // Both tables together have every row, and each begins with the name of its part.
    let rows: usize = large.tables.iter().map(Vec::len).sum();
    let lines: usize = card.parts.iter().map(|part| part.lines.len()).sum();
    assert_eq!(rows, lines);
    assert!(large.tables.iter().all(|rows| rows[0].begins.is_some()));
    let said = before_printing(Some(card), Some(large));
    assert!(said[0].contains("A4 or Letter") || said[0].contains("more than one page"));
}

/// A page that cannot be printed whole, or has no code, has a warning.
#[test]
fn a_page_that_does_not_fit_has_a_warning() {
    let (mut card, mut large) = paper(&times(5));
    card.code = None;
    card.fit.one_page = false;
    large.fit.one_page = false;
    let said = before_printing(Some(&card), Some(&large));
    assert_eq!(said.len(), 3);
    assert!(said[2].contains("too long for a square code"));
    assert_eq!(before_printing(None, Some(&large)).len(), 1);
}

/// 480 characters: version 17 at the second level, 85 squares; with four on each side 93 × 0.42 mm.
/// Source: ISO/IEC 18004, table 7 (version 17, level M: 504 bytes).
#[test]
fn a_code_on_paper_has_the_size_of_its_modules() {
    let code = code();
    assert_eq!(code.side, 85);
    assert!((code_side(&code) - 39.06).abs() < 1e-9);
    let (card, _) = paper(&examples().remove(0).1);
    assert!(
        card.code
            .unwrap()
            .starts_with("<svg width=\"39.1mm\" height=\"39.1mm\" ")
    );
}
