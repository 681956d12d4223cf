//! Tins in words: whole sentences and figures, however full the tins are.

use std::num::NonZeroU16;

use super::format_options::{all, british};
use super::plain_speech::{has_figures, is_plain};
use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::quantity::{Factor, Length};
use softcrumb::engine::tin::{Across, Capacity, Tin, TinError, TinMeasure, TinShape};
use softcrumb::results::batch::{self, scale};
use softcrumb::sheet::{Sheet, TinUse, examples};
use softcrumb::text::tins::TinView;
use softcrumb::text::{self, FormatOptions, name};

fn tin_view(sheet: &Sheet, options: FormatOptions) -> TinView {
    let tins = batch::tins::of(sheet, &scale(sheet).unwrap()).unwrap();
    text::tins::view(&tins, options)
}

#[test]
fn the_tins_of_the_examples_suit_them_and_have_every_figure() {
    for (_, sheet) in examples() {
        let used = sheet.batch.tin.unwrap();
        for options in all() {
            let view = tin_view(&sheet, options);
            for text in [&view.room, &view.wanted, &view.found, &view.usual] {
                has_figures(text);
            }
            is_plain(&view.height);
            assert_eq!(view.advice, None, "{}: {view:?}", sheet.name);
            assert_eq!(view.uneven, None);
            is_plain(&view.plan.unwrap().says);
            has_figures(&text::tins::measures(&used.tins.tin, options));
        }
    }
}

#[test]
fn the_plan_keeps_every_piece_inside_the_tin() {
    for (_, sheet) in examples() {
        let view = tin_view(&sheet, british());
        let plan = view.plan.unwrap();
        assert_eq!(plan.put_in.len(), usize::from(sheet.batch.pieces.get()));
        for one in plan.put_in.iter().chain(&plan.risen) {
            assert!(one.radius > 1.0);
            assert!(one.x - one.radius >= -1e-6 && one.x + one.radius <= plan.wide + 1e-6);
            assert!(one.y - one.radius >= -1e-6 && one.y + one.radius <= plan.high + 1e-6);
        }
    }
}

/// Every shape, too little and too much in it, with a lid and without.
#[test]
fn every_tin_has_its_sentences_however_full_it_is() {
    let length = |millimetres: u32| Length::from_metres(f64::from(millimetres) / 1000.0).unwrap();
    let across = Across {
        long: length(300),
        wide: length(110),
    };
    let (top, bottom, deep) = (length(220), length(200), length(80));
    let shapes = [
        TinShape::Rectangle {
            top: across,
            bottom: across,
            deep,
        },
        TinShape::Round { top, bottom, deep },
        TinShape::Ring {
            top,
            bottom,
            tube: length(60),
            deep,
        },
        TinShape::Muffin {
            top: length(70),
            bottom: length(50),
            deep: length(40),
            cups: NonZeroU16::new(12).unwrap(),
        },
        TinShape::Tray { across },
    ];
    let (_, mut sheet) = examples().remove(0);
    let mut advised = 0;
    for shape in shapes {
        let tin = Tin::open(shape).unwrap();
        has_figures(name::tin_kind(tin.kind()));
        for (measure, length) in tin.measures() {
            has_figures(name::tin_measure(measure));
            assert_eq!(tin.with_measure(measure, length), Ok(tin));
        }
        for (lidded, times) in [(false, 0.2), (true, 1.0), (false, 6.0), (true, 9.0)] {
            let mut used = TinUse::of(Tin::open(shape).unwrap().with_lid(lidded));
            used.tins.count = NonZeroU16::new(3).unwrap();
            sheet.batch.tin = Some(used);
            sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
            for options in all() {
                let view = tin_view(&sheet, options);
                is_plain(&view.height);
                if let Some(advice) = &view.advice {
                    is_plain(&advice.sentence());
                    advised += 1;
                }
                view.uneven.iter().for_each(|text| is_plain(text));
                match &view.plan {
                    Ok(plan) => is_plain(&plan.says),
                    Err(says) => is_plain(says),
                }
            }
        }
    }
    assert!(advised > 20, "{advised}");
}

/// 9.5 cm deep, 25 × 11 cm all the way down: by definition, 25 · 11 · 9.5 = 2612.5 cm³.
#[test]
fn a_bottom_that_is_not_typed_follows_the_rim_and_none_is_larger_than_it() {
    let metres = |m: f64| Length::from_metres(m).unwrap();
    // The tin of the first example: 31 × 13 cm at the rim, 30 × 12 at the bottom.
    let (_, sheet) = examples().remove(0);
    let flared = sheet.batch.tin.unwrap().tins.tin;
    let typed = flared
        .with_measure(TinMeasure::RimLong, metres(0.25))
        .unwrap();
    let typed = typed
        .with_measure(TinMeasure::RimWide, metres(0.11))
        .unwrap();
    assert!(typed.is_as_rim(TinMeasure::BottomLong) && typed.is_as_rim(TinMeasure::BottomWide));
    let volume = Capacity::of(&typed).unwrap().volume().unwrap();
    assert!((volume.cubic_centimetres() - 2612.5).abs() < 0.1);
    // As the rim it goes with it; flared it stays.
    let longer = typed
        .with_measure(TinMeasure::RimLong, metres(0.28))
        .unwrap();
    assert_eq!(longer.measure(TinMeasure::BottomLong), Some(metres(0.28)));
    let longer = flared
        .with_measure(TinMeasure::RimLong, metres(0.32))
        .unwrap();
    assert_eq!(longer.measure(TinMeasure::BottomLong), Some(metres(0.30)));
    let larger = typed.with_measure(TinMeasure::BottomWide, metres(0.12));
    assert_eq!(larger, Err(TinError::BottomOverRim));
    let emptied = flared
        .with_typed(TinMeasure::BottomLong, None)
        .unwrap()
        .unwrap();
    assert!(emptied.is_as_rim(TinMeasure::BottomLong));
    assert_eq!(flared.with_typed(TinMeasure::RimLong, None), None);
    assert_eq!(flared.with_typed(TinMeasure::Deep, None), None);
}

/// Geometry: one piece has nothing to lie between. A ball of 371 g at 0.85 cm³/g is 84 mm across
/// (∛(6·315/π) = 84.4 mm), wider than a tin of 70 mm.
#[test]
fn one_piece_is_told_of_as_one() {
    let (_, mut sheet) = examples().remove(1);
    let mm = |millimetres: f64| Length::from_metres(millimetres / 1000.0).unwrap();
    let side = Across {
        long: mm(250.0),
        wide: mm(70.0),
    };
    let shape = TinShape::Rectangle {
        top: side,
        bottom: side,
        deep: mm(110.0),
    };
    sheet.batch.pieces = NonZeroU16::MIN;
    sheet.batch.tin = Some(TinUse::of(Tin::open(shape).unwrap()));
    let mass = softcrumb::engine::quantity::Mass::from_grams(371.0).unwrap();
    sheet.batch.wanted = BatchTarget::Dough(mass);
    let said = tin_view(&sheet, british()).plan.unwrap().says;
    let said = said.replace('\u{a0}', " ");
    assert!(
        said.starts_with("One piece; as a ball it is 84 mm across, 14 mm wider"),
        "{said}"
    );
    for plural in ["pieces", "They", "they", "each other"] {
        assert!(!said.contains(plural), "{said}");
    }
}
