//! Tins, labels, shopping and the class in words: whole sentences and figures, in every options.

use std::num::{NonZeroU16, NonZeroU32};

use super::errors::{out_of_range, told};
use super::format_options::{american, british, german};
use super::plain_speech::is_plain;
use softcrumb::engine::batch::{BatchError, BatchTarget, Losses, Scaled, Weighing, scale};
use softcrumb::engine::class::{ClassError, ClassSettings, class, oven};
use softcrumb::engine::ingredients::Allergen;
use softcrumb::engine::nutrition::{LabelLaw, Marks, NutritionError};
use softcrumb::engine::quantity::{Division, Factor, Length, Mass, Money};
use softcrumb::engine::shopping::{ShoppingError, needs, shopping};
use softcrumb::engine::tin::{Across, Tin, TinError, TinShape};
use softcrumb::sheet::{Pantry, Sheet, TinUse, examples};
use softcrumb::text::{FormatOptions, caution, class as told_of, name};

fn made(sheet: &Sheet) -> Scaled {
    let batch = &sheet.batch;
    scale(&sheet.formula, batch.wanted, batch.losses, batch.pieces).unwrap()
}

fn has_figures(text: &str) {
    assert!(!text.is_empty());
    for word in ["NaN", "inf", "not known"] {
        assert!(!text.contains(word), "{text}");
    }
}

fn manners() -> [FormatOptions; 3] {
    [british(), german(), american()]
}

fn mass(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

#[test]
fn the_examples_tins_are_right_and_told_whole() {
    for (_, sheet) in examples() {
        let used = sheet.batch.tin.unwrap();
        for options in manners() {
            let view = told_of::tin(&used, sheet.bread, &made(&sheet), options);
            for text in [&view.room, &view.wanted, &view.found, &view.usual] {
                has_figures(text);
            }
            is_plain(&view.stand);
            assert_eq!(view.advice, None, "{}: {view:?}", sheet.name);
            assert_eq!(view.uneven, None);
            is_plain(&view.plan.unwrap().says);
            has_figures(&told_of::tin_measures(&used.tins.tin, options));
        }
    }
}

#[test]
fn the_plan_keeps_every_piece_inside_the_tin() {
    for (_, sheet) in examples() {
        let used = sheet.batch.tin.unwrap();
        let view = told_of::tin(&used, sheet.bread, &made(&sheet), british());
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
fn every_tin_is_told_however_full_it_is() {
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
            sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
            for options in manners() {
                let view = told_of::tin(&used, sheet.bread, &made(&sheet), options);
                is_plain(&view.stand);
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

#[test]
fn nutrition_has_a_figure_in_every_cell() {
    for (_, sheet) in examples() {
        for law in LabelLaw::ALL {
            for options in manners() {
                let loaves = NonZeroU32::new(2);
                let view = told_of::nutrition(&made(&sheet), loaves, law, options).unwrap();
                assert_eq!(view.rows.len(), 8);
                for row in &view.rows {
                    assert_eq!(row.figures.len(), view.columns.len(), "{}", row.name);
                    row.figures.iter().for_each(|figure| has_figures(figure));
                    assert!(!row.working.is_empty());
                }
                is_plain(view.note);
            }
        }
        has_figures(name::law(LabelLaw::Eu));
    }
}

#[test]
fn allergens_are_told_with_who_says_so() {
    let (_, sheet) = examples().remove(2);
    let marks = Marks {
        foods: Vec::new(),
        kitchen: vec![Allergen::BrazilNuts, Allergen::Lupin],
    };
    let view = told_of::allergens(&sheet.formula, &marks, LabelLaw::Eu);
    is_plain(&view.says);
    is_plain(view.note);
    assert_eq!(
        view.says,
        "Contains wheat (gluten), eggs and milk. May contain Brazil nuts and lupin."
    );
    let eggs = view
        .contains
        .iter()
        .find(|line| line.name == "Eggs")
        .unwrap();
    assert_eq!(eggs.told_by, "Egg");
    assert_eq!(view.may_contain[0].told_by, "your kitchen");
    let us = told_of::allergens(&sheet.formula, &marks, LabelLaw::Us);
    assert_eq!(us.may_contain.len(), 1);
}

#[test]
fn the_shopping_list_is_told_and_can_be_shared_as_text() {
    let (_, sheet) = examples().remove(0);
    let mut pantry = Pantry {
        currency: "kr".to_owned(),
        ..Pantry::default()
    };
    let flour = &sheet.formula.parts[0].lines[0].food;
    let item = pantry.item_mut(flour).unwrap();
    (item.holds, item.price) = (Some(mass(2000.0)), Money::from_amount(24.5).ok());
    let list = shopping(needs(&sheet.formula), &pantry.packs(&sheet.formula)).unwrap();
    for options in manners() {
        let view = told_of::shopping(&list, NonZeroU32::new(10).unwrap(), "kr", options);
        view.missing.iter().for_each(|text| is_plain(text));
        for row in &view.rows {
            has_figures(&row.needed);
            has_figures(&row.buy);
        }
        assert!(
            view.used.ends_with("kr") && !view.text.contains("Water"),
            "{view:?}"
        );
        assert_eq!(view.text.lines().count(), view.rows.len() - 1);
    }
    let view = told_of::shopping(&list, NonZeroU32::new(10).unwrap(), "kr", british());
    assert_eq!(
        view.rows[0].buy,
        "1\u{A0}pack of 2000\u{A0}g, 1534\u{A0}g left over"
    );
    // 466 g of 2000 g at 24.50.
    assert_eq!(view.rows[0].cost, "5.71\u{A0}kr");
}

#[test]
fn a_cost_without_any_price_is_not_told_as_nought() {
    let (_, sheet) = examples().remove(1);
    let list = shopping(needs(&sheet.formula), &[]).unwrap();
    let view = told_of::shopping(&list, NonZeroU32::MIN, "kr", british());
    for cost in [&view.used, &view.each, &view.paid] {
        assert_eq!(cost, "no price yet");
    }
    assert!(view.working.is_empty());
    is_plain(&view.missing.unwrap());
}

#[test]
fn a_class_is_told_bench_by_bench_and_load_by_load() {
    let (_, sheet) = examples().remove(0);
    let settings = ClassSettings {
        students: NonZeroU16::new(13).unwrap(),
        at_bench: NonZeroU16::new(2).unwrap(),
        ..ClassSettings::default()
    };
    let made = class(
        &sheet.formula,
        settings,
        Losses::default(),
        sheet.batch.pieces,
    )
    .unwrap();
    let loads = oven(NonZeroU32::new(made.loaves).unwrap(), settings.oven).unwrap();
    let scales = Weighing {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    for options in manners() {
        let view = told_of::class(&made, &loads, scales, options);
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
    let view = told_of::class(&made, &loads, scales, british());
    assert_eq!(
        view.title,
        "13\u{A0}students at 7\u{A0}benches, 14\u{A0}loaves, 6300\u{A0}g of dough"
    );
    assert_eq!(
        view.benches[0].title,
        "6\u{A0}benches with 2\u{A0}students, 2\u{A0}loaves each"
    );
    assert_eq!(
        view.loads[1],
        "Load 2: loaves 6 to 10, in at 40\u{A0}min, out at 70\u{A0}min"
    );
}

#[test]
fn everything_in_the_way_is_told() {
    let pieces = NonZeroU16::new(900).unwrap();
    let lost = mass(90.0);
    let water = mass(40.0);
    told(&TinError::NoSides);
    told(&TinError::TubeFillsTin);
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
    is_plain(&caution::safety(caution::Step::Allergens, british()).sentence());
}
