//! The working of tins: their room, the dough in them, its height, and what is carried over.

use std::num::NonZeroU16;

use softcrumb::engine::formula::Bread;
use softcrumb::engine::quantity::{Factor, Length, Mass};
use softcrumb::engine::tin::{Across, Tin, TinShape, Tins, convert, dough_height, filling, layout};

use softcrumb::results::batch::{scale, tins};
use softcrumb::sheet::examples;

use crate::rule_evaluator::adds_up;

fn mm(millimetres: u16) -> Length {
    Length::from_metres(f64::from(millimetres) / 1000.0).unwrap()
}

fn every_tin() -> Vec<Tin> {
    let across = |long, wide| Across {
        long: mm(long),
        wide: mm(wide),
    };
    let (top, bottom, deep) = (mm(173), mm(151), mm(67));
    let shapes = [
        TinShape::Rectangle {
            top: across(251, 113),
            bottom: across(238, 105),
            deep: mm(118),
        },
        TinShape::Round { top, bottom, deep },
        TinShape::Ring {
            top,
            bottom,
            tube: mm(49),
            deep,
        },
        TinShape::Muffin {
            top: mm(71),
            bottom: mm(52),
            deep: mm(38),
            cups: NonZeroU16::new(6).unwrap(),
        },
    ];
    shapes.map(|shape| Tin::open(shape).unwrap()).to_vec()
}

#[test]
fn every_figure_of_every_tin_adds_up() {
    let there = Mass::from_grams(613.0).unwrap();
    for tin in every_tin() {
        adds_up(&[tin.working().unwrap()]);
        let tins = Tins {
            tin,
            count: NonZeroU16::new(3).unwrap(),
        };
        for bread in Bread::ALL {
            let filled = filling(tins, bread, None, Some(there)).unwrap();
            adds_up(&filled.working());
        }
        for times in [1.0, 2.4, 9.0] {
            let rise = Factor::from_number(times).unwrap();
            adds_up(&dough_height(&tin, there, rise).unwrap().working());
        }
        for other in every_tin() {
            let to = Tins {
                tin: other,
                count: NonZeroU16::new(2).unwrap(),
            };
            adds_up(&convert(tins, to, there).unwrap().working());
        }
    }
}

#[test]
fn the_ball_adds_up() {
    let each = Mass::from_grams(85.0).unwrap();
    for tin in every_tin() {
        let laid = layout(&tin, NonZeroU16::MIN, None, each, Factor::ONE).unwrap();
        adds_up(&[laid.working(each)]);
    }
}

/// Geometry: two and a half times the depth, with straight sides, takes two and a half times the dough.
#[test]
fn a_batch_carried_over_adds_up_until_it_is_changed() {
    let (_, mut sheet) = examples().remove(0);
    let straight = |deep| {
        let across = Across {
            long: mm(240),
            wide: mm(110),
        };
        let (top, bottom) = (across, across);
        Tin::open(TinShape::Rectangle { top, bottom, deep }).unwrap()
    };
    sheet.batch = tins::in_tin(&sheet.batch, straight(mm(60)), None);
    let scaled = scale(&sheet).unwrap();
    let carried = tins::carried_over(&sheet, &scaled, straight(mm(150))).unwrap();
    let carried = carried.unwrap();
    adds_up(&carried.working());
    let times = carried.now.grams() / scaled.needed.grams();
    assert!((times - 2.5).abs() < 1e-9, "{times}");
    assert!(!tins::is_carried(&sheet.batch, &carried));
    let mut batch = tins::in_tin(&sheet.batch, carried.to.tin, Some(carried.now));
    assert!(tins::is_carried(&batch, &carried));
    batch.tin = None;
    assert!(!tins::is_carried(&batch, &carried));
}
