//! The same batch asked for in another way, or made the formula, is the same batch.

use std::num::NonZeroU16;

use softcrumb::engine::batch::{BatchFigure, BatchTarget, Scaled, TargetKind, scale};
use softcrumb::engine::quantity::{Factor, Mass};
use softcrumb::results::batch::as_formula;
use softcrumb::sheet::{Sheet, examples};

use crate::batches::alike;

/// Every example, asked for in a few ways; sheet and batch.
fn asked() -> Vec<(Sheet, Scaled)> {
    let settings = [
        BatchTarget::Times(Factor::from_number(1.75).unwrap()),
        BatchTarget::Dough(Mass::from_grams(1234.5).unwrap()),
        BatchTarget::Pieces {
            count: NonZeroU16::new(7).unwrap(),
            each: Mass::from_grams(88.0).unwrap(),
        },
    ];
    let mut asked = Vec::new();
    for (_, mut sheet) in examples() {
        for wanted in settings {
            sheet.batch.wanted = wanted;
            let scaled = batch(&sheet);
            asked.push((sheet.clone(), scaled));
        }
    }
    assert_eq!(asked.len(), 12);
    asked
}

fn batch(sheet: &Sheet) -> Scaled {
    let batch = &sheet.batch;
    scale(&sheet.formula, batch.wanted, batch.losses, batch.pieces).unwrap()
}

fn same_weights(one: &Scaled, other: &Scaled) {
    let lines = |scaled: &Scaled| -> Vec<f64> {
        let parts = scaled.formula.parts.iter();
        let lines = parts.flat_map(|part| &part.lines);
        lines.map(|line| line.mass.grams()).collect()
    };
    let (one, other) = (lines(one), lines(other));
    assert_eq!(one.len(), other.len());
    for (one, other) in one.into_iter().zip(other) {
        alike(one, other, "line");
    }
}

#[test]
fn another_way_of_asking_changes_no_weight() {
    for (mut sheet, scaled) in asked() {
        for way in TargetKind::ALL {
            let wanted = scaled.target_of_kind(way);
            assert_eq!(wanted.kind(), way);
            sheet.batch.wanted = wanted;
            same_weights(&scaled, &batch(&sheet));
        }
    }
}

#[test]
fn a_batch_made_the_formula_gives_the_same_batch_at_once() {
    for (sheet, scaled) in asked() {
        let made = as_formula(&sheet).unwrap();
        let again = batch(&made);
        alike(again.factor.number(), 1.0, "factor");
        same_weights(&scaled, &again);
    }
}

#[test]
fn the_working_of_a_figure_ends_with_it() {
    for (_, scaled) in asked() {
        for figure in BatchFigure::ALL {
            let lines = scaled.working_of(figure);
            let last = lines.last().unwrap();
            let answers = [
                scaled.factor.number(),
                scaled.mixed.grams(),
                scaled.pieces.each.grams(),
                scaled.baked.grams(),
                scaled.baked_each.grams(),
            ];
            assert!(
                answers
                    .iter()
                    .any(|answer| (answer - last.result.value).abs() <= 1e-9 * answer),
                "{figure:?}: {last:?}"
            );
        }
    }
}
