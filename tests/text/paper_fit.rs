//! Layout of printed pages: the largest type that fits, larger paper with a warning where none does,
//! parts in columns that say their names again.

use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::formula::{Formula, Part};
use softcrumb::engine::quantity::Division;
use softcrumb::results::batch::{self, class};
use softcrumb::results::day::usual_list;
use softcrumb::sheet::{Kitchen, Pantry, Scales, Sheet, examples};
use softcrumb::storage::interchange::{SquareCode, square_code};
use softcrumb::text::FormatOptions;
use softcrumb::text::share::{
    BenchCard, CardList, ClassSheet, LEAST, PageSize, Paper, before_printing, bench_card, blocks,
    card_steps, class_sheet, code_side, fitted,
};
use softcrumb::text::weighing::PartWeights;

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
    let list = usual_list(sheet, &Kitchen::default(), batch.rounded.as_ref());
    let steps = card_steps(&list, &sheet.formula, None, options);
    let list = CardList {
        list: &list,
        steps: &steps,
    };
    let with = (&pantry, Some(&code));
    (
        bench_card(sheet, &batch, list, with, options).unwrap(),
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
        assert!(large.fit.one_page && large.fit.points > LEAST);
        assert_eq!(large.tables.len(), 1);
        let said = before_printing(Some(&card), Some(&large));
        assert!(said.is_empty(), "{said:?}");
    }
}

#[test]
fn a_longer_formula_is_set_smaller_then_on_larger_paper_with_a_warning() {
    let cards: Vec<(BenchCard, ClassSheet)> = (4..=24).map(|count| paper(&times(count))).collect();
    let small = cards
        .iter()
        .take_while(|(card, _)| card.fit.paper == Paper::A5);
    let small: Vec<f64> = small.map(|(card, _)| card.fit.points).collect();
    assert!(small.is_sorted_by(|one, other| one >= other), "{small:?}");
    let large = cards.iter().skip(small.len());
    assert!(large.clone().all(|(card, _)| card.fit.paper == Paper::A4));
    let large: Vec<f64> = large.map(|(card, _)| card.fit.points).collect();
    assert!(large.is_sorted_by(|one, other| one >= other), "{large:?}");
    let (card, large) = cards.last().unwrap();
    assert_eq!(card.fit.paper, Paper::A4);
    assert!(large.tables.len() >= 2);
    // All tables together have every row, and each begins with the name of its part.
    let rows = large
        .tables
        .iter()
        .flatten()
        .filter(|row| !row.is_sum)
        .count();
    let lines: usize = times(24)
        .formula
        .parts
        .iter()
        .map(|part| part.lines.len())
        .sum();
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

/// A printed area of 132 by 194 mm in pixels of 1/96 inch. Source: CSS Values and Units 3, 5.2.
#[test]
fn the_type_grows_until_the_page_is_full() {
    let page = |per_point: f64| {
        fitted(&[Paper::A5, Paper::A4], |_, points| PageSize {
            high: points * per_point,
            wide: 490.0,
            room: 499.0,
        })
    };
    let full = 194.0 / 25.4 * 96.0;
    // At ten points it is just full, at the next quarter it runs over.
    let fit = page(full / 10.0 - 0.01);
    assert_eq!((fit.paper, fit.points), (Paper::A5, 10.0));
    // A short page stops at the largest sensible type, a long one goes to larger paper.
    assert!((page(1.0).points - 12.0).abs() < 1e-9);
    assert_eq!(page(full / LEAST + 1.0).paper, Paper::A4);
    let over = page(1e4);
    assert!(!over.one_page && over.points <= LEAST);
    // What is too wide is as little to be printed as what is too high.
    let wide = fitted(&[Paper::A5], |_, points| PageSize {
        high: 100.0,
        wide: points * 50.0,
        room: 499.0,
    });
    assert!((wide.points - 9.75).abs() < 1e-9);
}

fn part(name: &str, lines: usize) -> PartWeights {
    let lines = (0..lines).map(|line| (format!("{name} {line}"), "1 g".to_owned()));
    PartWeights {
        name: name.to_owned(),
        lines: lines.collect(),
        total: String::new(),
    }
}

#[test]
fn columns_are_even_and_a_part_that_is_split_says_its_name_again() {
    let columns = blocks(&[part("Paste", 3), part("Dough", 15)], 2).remove(0);
    let rows =
        |column: &[PartWeights]| -> usize { column.iter().map(|part| part.lines.len() + 1).sum() };
    assert!(rows(&columns[0]).abs_diff(rows(&columns[1])) <= 2);
    assert_eq!(columns[1][0].name, "Dough, continued");
    // Where it costs little, no part is split.
    let columns = blocks(&[part("Paste", 4), part("Night", 3), part("Dough", 8)], 2).remove(0);
    let names = columns.iter().flatten().map(|part| part.name.clone());
    assert_eq!(names.collect::<Vec<_>>(), ["Paste", "Night", "Dough"]);
}

#[test]
fn no_line_is_lost_in_columns_or_on_the_next_page() {
    for columns in 1..=3 {
        for lines in 0..120 {
            let parts = [part("One", 2), part("Long", lines), part("Three", 5)];
            let blocks = blocks(&parts, columns);
            let all = blocks.iter().flatten().flatten();
            let written: Vec<_> = all.clone().flat_map(|part| part.lines.clone()).collect();
            let whole: Vec<_> = parts.iter().flat_map(|part| part.lines.clone()).collect();
            assert_eq!(written, whole);
            for part in all.filter(|part| part.name.starts_with("Long")) {
                let first = part.lines.first().is_none_or(|(food, _)| food == "Long 0");
                assert_eq!(part.name == "Long, continued", !first);
            }
        }
    }
}
