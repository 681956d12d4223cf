//! Syrups and fillings answer for every argument; water thins, and both ways agree.

use std::cell::Cell;
use std::num::NonZeroU32;

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use softcrumb::engine::chocolate::{
    ChocolatePart, FillAsked, Flow, Portioned, Syrup, SyrupModel, fill,
};
use softcrumb::engine::ingredients::Composition;
use softcrumb::engine::quantity::{Mass, Share, Temperature, Viscosity};

use crate::cases::cases;

/// How many cases each property is tried on.
const CASES: u32 = 100_000;
/// How many, where each case searches three times over.
const FEWER: u32 = 20_000;

fn runner() -> TestRunner {
    TestRunner::new(Config {
        cases: cases(CASES),
        failure_persistence: None,
        ..Config::default()
    })
}

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn share(fraction: f64) -> Share {
    Share::from_fraction(fraction).unwrap()
}

/// Anything that could stand on a label, chocolate or not: parts in any ratio up to the whole.
fn food() -> impl Strategy<Value = Composition> {
    let component = || prop_oneof![1 => Just(0.0), 4 => 0.0..1.0_f64];
    (
        component(),
        component(),
        component(),
        component(),
        component(),
        component(),
        0.2..1.0_f64,
    )
        .prop_map(|(water, fat, sugars, protein, fibre, ash, filled)| {
            let sum = (water + fat + sugars + protein + fibre + ash).max(1e-9) / filled;
            Composition {
                water: share(water / sum),
                fat: share(fat / sum),
                sugars: share(sugars / sum),
                carbohydrate: share((sugars + fibre) / sum * 0.98),
                protein: share(protein / sum),
                fibre: share(fibre / sum),
                ash: share(ash / sum),
                sodium: share(ash / sum / 3.0),
                ..Composition::default()
            }
        })
}

fn water() -> Composition {
    Composition {
        water: Share::WHOLE,
        ..Composition::default()
    }
}

fn syrup(chocolate: Composition, liquid: Composition, poured: f64, celsius: f64) -> Syrup {
    let component = ChocolatePart {
        composition: chocolate,
        mass: grams(100.0),
        cocoa: None,
    };
    let liquid = Portioned {
        composition: liquid,
        mass: grams(poured),
    };
    let at = Temperature::from_celsius(celsius).unwrap();
    Syrup::from_parts(&[component], &[liquid], at, SyrupModel::default()).unwrap()
}

fn thickness(syrup: &Syrup) -> Option<Viscosity> {
    match syrup.flow {
        Flow::Flows { thickness, .. } => Some(thickness),
        Flow::MeltedOnly | Flow::Seized => None,
    }
}

#[test]
fn more_water_never_thickens_and_thickness_leads_back() {
    let flowing = Cell::new(0);
    let drawn = (food(), 0.01..300.0_f64, 1.0..2.0_f64, -40.0..350.0_f64);
    runner()
        .run(&drawn, |(chocolate, poured, more, celsius)| {
            let one = syrup(chocolate, water(), poured, celsius);
            let two = syrup(chocolate, water(), poured * more, celsius);
            if let Some(thick) = thickness(&one) {
                flowing.set(flowing.get() + 1);
                let thin = thickness(&two).expect("more water made it seize");
                // The last binary places may differ where both are almost plain water.
                let allowed = thick.pascal_seconds() * (1.0 + 1e-12);
                assert!(thin.pascal_seconds() <= allowed, "{thick:?} then {thin:?}");
                let least = one.least_liquid.expect("it flows");
                assert!(least.grams() <= poured * (1.0 + 1e-9), "{least:?}");
            }
            Ok(())
        })
        .unwrap();
    let least = cases(CASES).div_ceil(3);
    assert!(flowing.get() > least, "only {} flowed", flowing.get());
}

#[test]
fn wished_thickness_is_reached_by_any_liquid_or_refused() {
    let reached = Cell::new(0);
    let drawn = (
        food(),
        food(),
        0.0..400.0_f64,
        0.0..100.0_f64,
        -4.0..4.0_f64,
    );
    let mut fewer = TestRunner::new(Config {
        cases: cases(FEWER),
        failure_persistence: None,
        ..Config::default()
    });
    fewer
        .run(&drawn, |(chocolate, liquid, poured, celsius, power)| {
            let syrup = syrup(chocolate, liquid, poured, celsius);
            let wished = Viscosity::from_pascal_seconds(libm::pow(10.0, power)).unwrap();
            if let Ok(found) = syrup.liquid_for(wished) {
                reached.set(reached.get() + 1);
                let off = found.thickness.pascal_seconds() / wished.pascal_seconds() - 1.0;
                assert!(off.abs() < 1e-3, "{found:?}");
            }
            let curve = syrup.curve();
            assert!(curve.to.fraction() >= 0.6);
            Ok(())
        })
        .unwrap();
    // Most of these foods are no liquid at all.
    let least = cases(FEWER).div_ceil(20);
    assert!(reached.get() > least, "only {} were reached", reached.get());
}

#[test]
fn a_filling_comes_back_from_the_other_side() {
    let drawn = (0.01..200.0_f64, 1..400_u32, 1.0..500.0_f64, 0.0..0.9_f64);
    runner()
        .run(&drawn, |(each, pieces, dough, stays)| {
            let pieces = NonZeroU32::new(pieces).unwrap();
            let one = fill(
                FillAsked::Each(grams(each)),
                pieces,
                grams(dough),
                share(stays),
            )
            .unwrap();
            let asked = FillAsked::Total(one.to_make);
            let back = fill(asked, pieces, grams(dough), share(stays)).unwrap();
            assert!((back.each.grams() - each).abs() < 1e-9 * each);
            let left = one.to_make.grams() * (1.0 - stays);
            assert!((left - one.in_pieces.grams()).abs() < 1e-9 * left);
            assert_eq!(one.cautions.is_empty(), one.of_dough.percent() <= 12.0);
            Ok(())
        })
        .unwrap();
}
