//! The working of a class and of its shopping.

use std::num::{NonZeroU16, NonZeroU32};

use softcrumb::engine::class::{Ahead, ClassSettings, class, oven};
use softcrumb::engine::quantity::{Mass, Money};
use softcrumb::engine::shopping::{Pack, needs, shopping};
use softcrumb::results::batch::class as class_of;
use softcrumb::sheet::{Kitchen, examples};

use crate::rule_evaluator::adds_up;

#[test]
fn classes_ovens_and_costs_add_up() {
    for (_, sheet) in examples() {
        let batch = &sheet.batch;
        let settings = ClassSettings {
            students: NonZeroU16::new(13).unwrap(),
            at_bench: NonZeroU16::new(2).unwrap(),
            ..ClassSettings::default()
        };
        let made = class(&sheet.formula, settings, batch.losses, batch.pieces).unwrap();
        adds_up(&made.working());
        let loads = oven(NonZeroU32::new(made.loaves).unwrap(), settings.oven).unwrap();
        adds_up(&loads.working());
        let packs: Vec<Pack> = needs(&made.total)
            .into_iter()
            .skip(1)
            .map(|need| Pack {
                food: need.food,
                holds: Mass::from_grams(350.0).ok(),
                price: Money::from_amount(1.37).ok(),
                on_hand: Mass::from_grams(20.0).unwrap(),
            })
            .collect();
        let list = shopping(needs(&made.total), &packs).unwrap();
        adds_up(&[list.working()]);
        let priced = list.items.iter().filter(|item| item.packs.is_some());
        assert!(priced.clone().count() > 3);
        for item in priced {
            adds_up(&item.working());
        }
    }
}

/// The portions that benches take from the teacher's bowl, and what stays in it.
#[test]
fn portions_from_the_teachers_bowl_add_up() {
    for (_, sheet) in examples() {
        for students in [1, 12, 13] {
            let settings = ClassSettings {
                students: NonZeroU16::new(students).unwrap(),
                at_bench: NonZeroU16::new(2).unwrap(),
                ahead: Ahead::TeacherBowl,
                ..ClassSettings::default()
            };
            let made = class_of::of(&sheet, &settings, Kitchen::default().scales);
            for portion in &made.weights.as_ref().unwrap().portions {
                adds_up(&portion.working());
            }
            // The page shows these with the rest of the class.
            adds_up(&made.working());
        }
    }
}
