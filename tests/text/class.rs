//! The class in words; every error of tins, labels, shopping and the class has a message.

use std::num::NonZeroU16;

use super::errors::{out_of_range, told};
use super::format_options::{all, british};
use super::plain_speech::{has_figures, is_plain};
use softcrumb::engine::batch::{BatchError, Losses};
use softcrumb::engine::class::{ClassError, ClassSettings};
use softcrumb::engine::nutrition::NutritionError;
use softcrumb::engine::quantity::{Division, Mass};
use softcrumb::engine::shopping::ShoppingError;
use softcrumb::engine::tin::TinError;
use softcrumb::results::batch;
use softcrumb::sheet::{Scales, examples};
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
        "Load 2: loaves 6 to 10, in at 40\u{A0}min, out at 1\u{A0}h\u{A0}10\u{A0}min"
    );
}

#[test]
fn every_error_of_tins_labels_shopping_and_class_has_a_message() {
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
    is_plain(&caution::safety(caution::Hazard::Allergens, british()).sentence());
}
