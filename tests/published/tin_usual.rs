//! What is usual in a tin: cups as cups, and how far a dough is from it.

use std::num::NonZeroU16;

use softcrumb::engine::formula::Bread;
use softcrumb::engine::quantity::{Length, Mass};
use softcrumb::engine::tin::{Across, Tin, TinShape, Tins, filling};

use crate::printed::agrees_within;

fn mm(millimetres: f64) -> Length {
    Length::from_metres(millimetres / 1000.0).unwrap()
}

fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
}

fn one(tin: Tin) -> Tins {
    Tins {
        tin,
        count: count(1),
    }
}

fn straight(long: f64, wide: f64, deep: f64) -> Tin {
    let across = Across {
        long: mm(long),
        wide: mm(wide),
    };
    Tin::open(TinShape::Rectangle {
        top: across,
        bottom: across,
        deep: mm(deep),
    })
    .unwrap()
}

/// Cups take dough for a third to a half of their room, 2.2 to 3.6 cm³/g, whatever the bread. Common
/// practice.
#[test]
fn cups_are_judged_as_cups_for_every_bread() {
    let cups = Tin::open(TinShape::Muffin {
        top: mm(70.0),
        bottom: mm(50.0),
        deep: mm(40.0),
        cups: count(12),
    })
    .unwrap();
    for bread in [Bread::SoftTin, Bread::RichEgg, Bread::Rye, Bread::PlainTin] {
        let filled = filling(one(cups), bread, None, None).unwrap();
        let usual = filled.usual;
        agrees_within(usual.least.cubic_centimetres_per_gram(), "2.2", 1e-9);
        agrees_within(usual.most.cubic_centimetres_per_gram(), "3.6", 1e-9);
    }
}

/// Source: Tsuji culinary school (2016): 1650 cm³ at 3.9 take 423 g; 500 g are 77 g too much, which is
/// what the button takes.
#[test]
fn what_to_take_out_is_what_is_beyond_the_usual_dough() {
    let tin = one(straight(165.0, 100.0, 100.0));
    let there = Some(Mass::from_grams(500.0).unwrap());
    let filled = filling(tin, Bread::SoftTin, None, there).unwrap();
    agrees_within(filled.beyond_usual().grams(), "77", 0.5);
}
