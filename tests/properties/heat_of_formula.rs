//! A whole formula's dough and pastes as heat sees them: nothing is lost on the way.

use proptest::prelude::*;
use softcrumb::engine::formula::{Form, Formula, PartKind};
use softcrumb::engine::heat::{
    Component, Dough, HeatError, LiquidAnswer, ThermalMaterial, cook, dough_remedies,
    dough_temperature, liquid_for,
};
use softcrumb::engine::quantity::Mass;
use softcrumb::results::heat::{mixer_load, paste};
use softcrumb::sheet::{HeatSettings, Kitchen, Mixer, PasteSettings};

use crate::dough::{cases, likely, wild};
use crate::heat_cases::{celsius, minutes};

/// A kitchen of 18 °C with one heavy bowl.
fn kitchen() -> Kitchen {
    Kitchen {
        room: celsius(18.0),
        flour: Some(celsius(18.0)),
        tap: celsius(12.0),
        fridge: celsius(4.0),
        paste_bowl: None,
        mixer: Mixer {
            minutes: minutes(8.0),
            ..Mixer::default()
        },
        ..Kitchen::default()
    }
}

fn dough_of(formula: &Formula) -> Result<Dough, HeatError> {
    mixer_load(formula, &kitchen(), &HeatSettings::default()).map(|load| load.dough)
}

/// The dough's lines as made, less the steam, g.
fn made(formula: &Formula) -> f64 {
    let parts = formula.dough_parts();
    parts
        .map(|part| {
            let lines: Mass = part.lines.iter().map(|line| Form::AsMade.mass(line)).sum();
            lines.less(part.steam).grams()
        })
        .sum()
}

proptest! {
    #![proptest_config(cases(500))]

    #[test]
    fn a_likely_dough_keeps_its_mass_and_has_a_temperature(formula in likely()) {
        let dough = dough_of(&formula).unwrap();
        let mass: f64 = dough.items.iter().map(|item| item.component.mass.grams()).sum();
        prop_assert!((mass - made(&formula)).abs() < 1e-6 * mass);
        let answer = match dough_temperature(&dough) {
            Ok(answer) => answer,
            // The bowl has more ice than can melt.
            Err(HeatError::IceLeft) => return Ok(()),
            Err(other) => return Err(TestCaseError::fail(other.to_string())),
        };
        let with_ice = dough.items.iter().any(|item| item.component.stuff == ThermalMaterial::Ice);
        let least = if with_ice { 0.0 } else { 4.0 };
        prop_assert!((least..40.0).contains(&answer.temperature.celsius()));
        prop_assert!(answer.low < answer.temperature && answer.temperature < answer.high);
        if with_ice {
            return Ok(());
        }
        match liquid_for(&dough, celsius(25.0), kitchen().surroundings().liquid).unwrap() {
            LiquidAnswer::At { dough, .. } => {
                prop_assert!((dough.temperature.celsius() - 25.0).abs() < 1e-6);
            }
            // Within two tenths of a degree the dough is there, and nothing more need be done.
            LiquidAnswer::OutOfReach(answer) => {
                let at_best = dough.poured_at(answer.best);
                let remedies = dough_remedies(&at_best, celsius(25.0), &kitchen().surroundings()).unwrap();
                prop_assert!(answer.short.kelvin().abs() <= 0.2 || !remedies.is_empty());
            }
        }
    }

    #[test]
    fn pastes_keep_their_water(formula in likely()) {
        for (place, part) in formula.parts.iter().enumerate() {
            if part.kind != PartKind::Paste {
                continue;
            }
            let settings = PasteSettings::default();
            let Some(paste) = paste(&formula, place, &kitchen(), &settings).unwrap() else {
                continue;
            };
            let water: f64 = part
                .lines
                .iter()
                .map(|line| {
                    let matter = softcrumb::engine::heat::Matter::of(&line.food.composition());
                    let share = matter.unwrap().share(Component::Water).fraction();
                    Form::AsMade.mass(line).grams() * share
                })
                .sum();
            let flours: f64 = paste.flours.iter().map(|one| one.mass.grams()).sum();
            prop_assert!(flours > 0.0);
            if let Ok(cooked) = cook(&paste) {
                prop_assert!((cooked.water.grams() - water).abs() < 1e-6 * water.max(1.0));
                prop_assert!(cooked.cooked.fraction() <= 1.0 + 1e-12);
            }
            prop_assert!(paste.others.iter().all(|component| matches!(component.stuff, ThermalMaterial::Food(_))));
        }
    }

    #[test]
    fn a_wild_formula_is_answered_or_refused(formula in wild()) {
        if let Ok(dough) = dough_of(&formula) {
            let _ = dough_temperature(&dough);
            let _ = liquid_for(&dough, celsius(25.0), kitchen().surroundings().liquid);
        }
    }
}
