//! Generated formulas, settings and losses for the checks of batches.

use std::num::NonZeroU16;

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use softcrumb::engine::batch::{BatchTarget, Losses};
use softcrumb::engine::formula::{Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Factor, Mass, Share};

use crate::cases::cases;

/// How many cases each property is tried on; most have an answer.
pub(crate) const CASES: u32 = 150_000;

/// Flour, rye, water, milk, butter, sugar, salt, dried yeast, dark chocolate.
pub(crate) const FOODS: [u16; 9] = [1, 41, 200, 300, 500, 700, 800, 902, 1000];

pub(crate) fn runner() -> TestRunner {
    TestRunner::new(Config {
        cases: cases(CASES),
        failure_persistence: None,
        ..Config::default()
    })
}

pub(crate) fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

pub(crate) fn fraction(fraction: f64) -> Share {
    Share::from_fraction(fraction).unwrap()
}

pub(crate) fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
}

/// From a pinch to a sack, as likely in each tenfold step; now and then nothing.
pub(crate) fn mass() -> impl Strategy<Value = f64> {
    prop_oneof![
        1 => Just(0.0),
        12 => (-2.0..4.5_f64).prop_map(|power| libm::pow(10.0, power)),
    ]
}

pub(crate) fn formula() -> impl Strategy<Value = Formula> {
    let line = (0..FOODS.len(), mass()).prop_map(|(food, mass)| {
        Line::new(
            Food::Listed(Listed::numbered(FOODS[food]).unwrap()),
            grams(mass),
        )
    });
    let lines = prop::collection::vec(line, 0..6);
    let part = (0..PartKind::ALL.len(), lines, 0.0..0.2_f64).prop_map(|(kind, lines, lost)| {
        let mut part = Part {
            kind: PartKind::ALL[kind],
            name: String::new(),
            lines,
            steam: Mass::ZERO,
            temperature: None,
        };
        if part.kind == PartKind::Paste {
            part.steam = part.mass().component(fraction(lost));
        }
        part
    });
    let flour = (50.0..5000.0_f64).prop_map(grams);
    (prop::collection::vec(part, 0..4), flour).prop_map(|(mut parts, flour)| {
        let food = Food::Listed(Listed::numbered(FOODS[0]).unwrap());
        parts.push(Part {
            kind: PartKind::Final,
            name: String::new(),
            lines: vec![Line::new(food, flour)],
            steam: Mass::ZERO,
            temperature: None,
        });
        Formula { parts }
    })
}

pub(crate) fn losses() -> impl Strategy<Value = Losses> {
    let share = || prop_oneof![30 => Just(0.0), 70 => 0.0..0.1_f64, 1 => 0.0..1.2_f64];
    (0.0..30.0_f64, share(), share(), share(), share()).prop_map(|(residue, a, b, c, d)| Losses {
        residue: grams(residue),
        residue_share: fraction(a),
        dividing: fraction(b),
        bake: fraction(c),
        topping: fraction(d),
    })
}

pub(crate) fn wanted() -> impl Strategy<Value = BatchTarget> {
    let number = || 1..200_u16;
    prop_oneof![
        (0.01..50.0_f64).prop_map(|times| BatchTarget::Times(Factor::from_number(times).unwrap())),
        mass().prop_map(|mass| BatchTarget::Dough(grams(mass))),
        (number(), mass()).prop_map(|(pieces, each)| BatchTarget::Pieces {
            count: count(pieces),
            each: grams(each / 10.0),
        }),
        mass().prop_map(|mass| BatchTarget::FlourOnHand(grams(mass))),
        (0..2_usize, 0..3_usize, mass()).prop_map(|(part, line, mass)| BatchTarget::OnHand {
            at: LineAt { part, line },
            mass: grams(mass),
        }),
        (number(), 1..5_u16, mass()).prop_map(|(students, loaves, loaf)| BatchTarget::Class {
            students: count(students),
            loaves: count(loaves),
            loaf: grams(loaf / 10.0),
        }),
    ]
}

/// Alike to a billionth of the larger, or of a gram.
#[track_caller]
pub(crate) fn alike(one: f64, other: f64, what: &str) {
    let allowed = 1e-9 * one.abs().max(other.abs()).max(1.0);
    assert!((one - other).abs() <= allowed, "{what}: {one} and {other}");
}
