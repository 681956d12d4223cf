//! The class in words; every error of tins, labels, shopping and the class has a message.

use std::num::NonZeroU16;

use super::errors::{out_of_range, told};
use super::format_options::{all, british};
use super::plain_speech::{has_figures, is_plain};
use softcrumb::engine::batch::{BatchError, Losses};
use softcrumb::engine::class::{Ahead, ClassError, ClassSettings};
use softcrumb::engine::nutrition::NutritionError;
use softcrumb::engine::quantity::{Division, Mass};
use softcrumb::engine::shopping::ShoppingError;
use softcrumb::engine::tin::TinError;
use softcrumb::results::batch::{self, class_batch, class_weighed};
use softcrumb::sheet::{Kitchen, Pantry, Scales, examples};
use softcrumb::text::share::{SheetRow, class_sheet};
use softcrumb::text::{self, caution};

fn mass(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

#[test]
fn a_class_is_listed_bench_by_bench_and_load_by_load() {
    let (_, mut sheet) = examples().remove(0);
    sheet.batch.losses = Losses::default();
    let settings = ClassSettings {
        students: NonZeroU16::new(13).unwrap(),
        at_bench: NonZeroU16::new(2).unwrap(),
        ..ClassSettings::default()
    };
    let scales = Scales {
        main: Division::ONE_GRAM.mass(),
        pocket: None,
    };
    let found = batch::class::of(&sheet, &settings, scales);
    for options in all() {
        let view = text::class::view(&found, options).unwrap();
        assert_eq!((view.benches.len(), view.loads.len()), (3, 3));
        is_plain(&view.stagger.unwrap().sentence());
        for bench in view
            .benches
            .iter()
            .flat_map(|bench| &bench.parts)
            .chain(&view.total)
        {
            bench.lines.iter().for_each(|(food, shows)| {
                has_figures(food);
                has_figures(shows);
            });
        }
        assert_eq!(view.total.len(), sheet.formula.parts.len());
    }
    let view = text::class::view(&found, british()).unwrap();
    // Fourteen loaves, six at a time, are 5, 5 and 4 (division with remainder); twelve fill two loads.
    assert!(view.evened.clone().unwrap().starts_with("6 fit in at once"));
    let full = ClassSettings {
        students: NonZeroU16::new(12).unwrap(),
        shown: 0,
        ..settings
    };
    let full = batch::class::of(&sheet, &full, scales);
    assert_eq!(text::class::view(&full, british()).unwrap().evened, None);
    assert_eq!(
        view.title,
        "13\u{A0}students at 7\u{A0}benches, 14\u{A0}loaves, 6300\u{A0}g of dough"
    );
    assert_eq!(
        view.benches[0].title,
        "Each of 6 benches with 2\u{A0}students, 2\u{A0}loaves"
    );
    assert_eq!(
        view.benches[1].title,
        "One bench with 1\u{A0}student, 1\u{A0}loaf"
    );
    assert_eq!(
        view.loads[1],
        "Load 2: loaves 6 to 10, in at 40\u{A0}min, out at 1\u{A0}h\u{A0}10\u{A0}min"
    );
}

/// A kitchen scale shows whole grams: what is printed of a part adds up to its sum, and every column to
/// the last one. By definition.
#[test]
fn the_sums_of_the_sheet_add_up_to_the_gram() {
    let grams = |cell: &str| -> f64 {
        let cell = cell.trim_start_matches("⚠ ");
        let number = cell.replace(['\u{A0}', '\u{2007}', '\u{2008}', '\u{2060}', ','], "");
        let number = number.trim_end_matches('g');
        if cell.contains("kg") {
            number.trim_end_matches('k').parse::<f64>().unwrap() * 1000.0
        } else {
            number.parse().unwrap_or(0.0)
        }
    };
    for (_, sheet) in examples() {
        for ahead in Ahead::ALL {
            let settings = ClassSettings {
                students: NonZeroU16::new(13).unwrap(),
                at_bench: NonZeroU16::new(2).unwrap(),
                ahead,
                ..ClassSettings::default()
            };
            let scales = Kitchen::default().scales;
            let found = batch::class::of(&sheet, &settings, scales);
            let view = text::class::view(&found, british()).unwrap();
            let paper = class_sheet(&sheet, &view, &Pantry::default(), None, british());
            let rows: Vec<&SheetRow> = paper.tables.iter().flatten().collect();
            let counts = [6.0, 1.0, 1.0, 1.0];
            let mut sums = vec![0.0; paper.columns.len()];
            for row in rows {
                let cells: Vec<f64> = row.cells.iter().map(|cell| grams(cell)).collect();
                let (all, own) = cells.split_last().unwrap();
                let of_benches: f64 = own.iter().zip(counts).map(|(one, count)| one * count).sum();
                // What a bench cannot weigh is told exactly in the last column only.
                assert!((of_benches - all).abs() < 4.5, "{row:?}");
                if row.is_sum {
                    for (sum, cell) in sums.iter_mut().zip(&cells) {
                        assert!((*sum - cell).abs() < 1.0, "{row:?}");
                        *sum = 0.0;
                    }
                } else {
                    sums.iter_mut()
                        .zip(&cells)
                        .for_each(|(sum, cell)| *sum += cell);
                    if row.begins.is_some() {
                        sums.clone_from(&cells);
                    }
                }
            }
            // Decimal signs stand below each other: every figure is as wide after its sign.
            for column in 0..paper.columns.len() {
                let after = |cell: &String| {
                    let number = cell.split('\u{A0}').next().unwrap();
                    let digits = number.split_once('.').map_or(0, |(_, digits)| digits.len());
                    digits + cell.matches('\u{2007}').count()
                };
                let figures = paper.tables.iter().flatten().map(|row| &row.cells[column]);
                let figures =
                    figures.filter(|cell| cell.starts_with(|one: char| one.is_ascii_digit()));
                let places: Vec<usize> = figures
                    .filter(|cell| !cell.contains("kg"))
                    .map(after)
                    .collect();
                assert!(places.windows(2).all(|two| two[0] == two[1]), "{places:?}");
            }
        }
    }
}

#[test]
fn every_error_of_tins_labels_shopping_and_class_has_a_message() {
    let pieces = NonZeroU16::new(900).unwrap();
    let lost = mass(90.0);
    let water = mass(40.0);
    told(&TinError::NoSides);
    told(&TinError::TubeFillsTin);
    told(&TinError::BottomOverRim);
    told(&TinError::NoDough);
    told(&TinError::TooManyPieces { pieces, most: 200 });
    told(&NutritionError::MoreThanWater { lost, water });
    told(&NutritionError::NothingLeft);
    told(&ShoppingError::EmptyPack {
        name: "Milk".to_owned(),
    });
    told(&ClassError::Batch(BatchError::NoDough));
    told(&ClassError::TooManyLoads {
        loads: 700,
        most: 60,
    });
    for out in out_of_range() {
        told(&TinError::OffScale(out.clone()));
        told(&NutritionError::OffScale(out.clone()));
        told(&ShoppingError::OffScale(out.clone()));
        told(&ClassError::OffScale(out));
    }
    is_plain(&caution::safety(caution::Hazard::Allergens, british()).sentence());
}

/// A tin of 3.62 l takes some 929 g (3.9 cm³/g, common practice): the row itself says that the class's
/// loaf is another.
#[test]
fn the_row_of_the_class_says_where_the_loaf_does_not_suit_the_tin() {
    let (_, sheet) = examples().remove(0);
    let mut settings = ClassSettings::default();
    let said = |settings: &ClassSettings| {
        let tin = batch::class::tin_difference(&sheet, settings);
        text::batch_answer::class(settings, tin, british()).replace('\u{A0}', " ")
    };
    let differs = said(&settings);
    assert!(
        differs.ends_with("13 of 450 g; the tin takes 929 g"),
        "{differs}"
    );
    settings.loaf = mass(929.0);
    assert!(said(&settings).ends_with("13 of 929 g"));
}

/// By definition: what is weighed is the dough of the loaves, and what the sheet says beside it. Losses
/// of the example: 5 g in each bowl and shares of the dough; its paste loses steam.
#[test]
fn the_sheet_says_why_more_is_weighed_than_the_dough_of_the_loaves() {
    let (_, sheet) = examples().remove(0);
    let scales = Kitchen::default().scales;
    let found = batch::class::of(&sheet, &ClassSettings::default(), scales);
    let view = text::class::view(&found, british()).unwrap();
    let said = view.weighed.clone().unwrap().replace('\u{A0}', " ");
    let grams: Vec<f64> = said
        .split_whitespace()
        .filter_map(|word| word.trim_end_matches(';').parse().ok())
        .collect();
    let [all, others @ ..] = grams.as_slice() else {
        panic!("{said}")
    };
    assert_eq!(others.len(), 3, "{said}");
    let dough = 13.0 * 450.0;
    let sum: f64 = others.iter().sum();
    assert!((all - sum - dough).abs() < 2.0, "{said}");
    let paper = class_sheet(&sheet, &view, &Pantry::default(), None, british());
    assert_eq!(paper.notes.first(), view.weighed.as_ref());
}

/// By definition: each figure is the sum of the rows of its own list, to the gram.
#[test]
fn the_two_totals_of_a_class_are_told_side_by_side() {
    let (_, mut sheet) = examples().remove(0);
    let scales = Kitchen::default().scales;
    let settings = ClassSettings::default();
    let settings = settings.with_loaf(settings.loaf);
    sheet.batch = class_batch::of_all(&sheet, &settings);
    let made = batch::of(&sheet, scales);
    let two = class_weighed::two_ways(&sheet, &made, &settings, scales).unwrap();
    let rows = &made.rounded.as_ref().unwrap().lines;
    let listed: f64 = rows.iter().map(|line| line.weighed.grams()).sum();
    assert!((two.one_batch.grams() - listed).abs() < 1e-6);
    let class = batch::class::of(&sheet, &settings, scales).weights.unwrap();
    let benches: f64 = class
        .total
        .lines
        .iter()
        .map(|line| line.weighed.grams())
        .sum();
    assert!((two.by_benches.grams() - benches).abs() < 1e-6);
    let said = text::class::two_ways(two, british());
    for mass in [two.one_batch, two.by_benches] {
        assert!(
            said.contains(&text::format::mass(mass, british())),
            "{said}"
        );
    }
}
