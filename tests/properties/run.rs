//! One run: each stage begins with what the one before it ends with, and every place shows the same
//! numbers.

use proptest::prelude::*;
use softcrumb::engine::formula::Formula;
use softcrumb::engine::heat::LiquidAnswer;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::Temperature;
use softcrumb::engine::rise::RiseSettings;
use softcrumb::results::batch::scale;
use softcrumb::results::heat::{
    HeatInput, HeatResults, InOven, apply_step, set_liquid_temperature,
};
use softcrumb::results::run::{DoughBasis, Run, RunInput, StageKind, strands};
use softcrumb::sheet::{HeatSettings, Kitchen, examples};

use crate::dough::{cases, likely};
use crate::heat_cases::{celsius, minutes};

/// The content of the oven with the first example.
fn in_oven() -> InOven {
    let (_, sheet) = examples().remove(0);
    InOven::of(&sheet, scale(&sheet).ok().as_ref(), InOven::PROOFED)
}

fn run_in(
    formula: &Formula,
    kitchen: &Kitchen,
    heat: &HeatSettings,
    measured: Option<Temperature>,
) -> Run {
    Run::of(&RunInput {
        formula,
        kitchen,
        heat,
        rises: &RiseSettings::default(),
        pieces: 9,
        learnt: &Learnt::default(),
        in_oven: in_oven(),
        measured_dough: measured,
        planned: None,
    })
}

fn kitchen_of(room: f64, fridge: f64, tap: f64) -> Kitchen {
    Kitchen {
        room: celsius(room),
        flour: Some(celsius(room - 1.0)),
        fridge: celsius(fridge),
        tap: celsius(tap),
        ..Kitchen::default()
    }
}

fn heat_of(standing: f64, mixing: f64) -> HeatSettings {
    HeatSettings {
        standing: minutes(standing),
        mixing: Some(minutes(mixing)),
        ..HeatSettings::default()
    }
}

proptest! {
    #![proptest_config(cases(10_000))]

    #[test]
    fn each_stage_begins_as_the_one_before_it_ends(
        formula in likely(), room in 12.0..34.0f64, fridge in 1.0..8.0f64, tap in 5.0..25.0f64,
        standing in 0.0..90.0f64, mixing in 3.0..20.0f64, measured in prop::option::of(14.0..32.0f64),
    ) {
        let (kitchen, heat) = (kitchen_of(room, fridge, tap), heat_of(standing, mixing));
        let run = run_in(&formula, &kitchen, &heat, measured.map(celsius));
        for strand in strands(&run.stages) {
            for pair in strand.windows(2) {
                prop_assert_eq!(pair[0].ends, pair[1].starts, "{:?}", pair);
            }
            for stage in &strand {
                prop_assert!(stage.lasts[0] <= stage.lasts[1] && stage.lasts[1] <= stage.lasts[2]);
            }
        }
        let own = run.stages.iter().filter(|stage| stage.part.is_none());
        let last = own.map(|stage| stage.kind).next_back();
        prop_assert!(matches!(last, Some(StageKind::Bake | StageKind::Cool)));
        // What the dough leaves its proof with is what goes into the oven that Heat shows.
        let bake = run.baking.as_ref().unwrap();
        if let Ok(time) = &bake.time {
            prop_assert_eq!(time.to_bake.dough, run.rises.temperatures.proofed);
        }
        let cooling = run.stages.iter().find(|stage| stage.kind == StageKind::Cool);
        prop_assert_eq!(
            cooling.map(|stage| stage.lasts),
            bake.cooling.as_ref().ok().map(|cooling| [cooling.from, cooling.likely, cooling.to])
        );
        // A paste or preferment goes into the mixer as its own strand ends.
        if let Ok(mixing) = &run.mixing {
            for stage in run.stages.iter().filter(|stage| stage.kind == StageKind::WarmUp) {
                let source = softcrumb::results::heat::LoadSource::Part(stage.part.unwrap());
                let item = mixing.load.item(source).unwrap();
                prop_assert_eq!(item.component.temperature, stage.ends);
            }
        }
    }

    #[test]
    fn the_dough_that_heat_shows_is_the_one_that_rises(
        formula in likely(), room in 12.0..34.0f64, standing in 0.0..60.0f64,
    ) {
        let (kitchen, heat) = (kitchen_of(room, 4.0, 12.0), heat_of(standing, 9.0));
        let run = run_in(&formula, &kitchen, &heat, None);
        let shown = HeatResults::of(&HeatInput {
            formula: &formula,
            settings: &heat,
            kitchen: &kitchen,
            picked: None,
            run: &run,
        });
        for stage in run.stages.iter().filter(|stage| stage.kind == StageKind::Scald) {
            let paste = shown.paste(stage.part.unwrap()).unwrap();
            prop_assert_eq!(stage.ends, paste.temperature);
        }
        prop_assert_eq!(&shown.baking, &run.baking);
        match shown.mixing {
            Ok(mixing) => {
                prop_assert_eq!(run.dough_basis, DoughBasis::Predicted);
                prop_assert_eq!(mixing.dough.temperature, run.rises.temperatures.mixed);
            }
            // Ice that does not all melt has no answer.
            Err(_) => prop_assert_eq!(run.dough_basis, DoughBasis::Wished),
        }
    }

    /// Advice that is taken changes the run the way it said.
    #[test]
    fn a_remedy_that_is_taken_brings_the_dough_where_it_said(
        formula in likely(), room in 14.0..30.0f64,
    ) {
        let (kitchen, mut heat) = (kitchen_of(room, 4.0, 12.0), heat_of(0.0, 9.0));
        let before = run_in(&formula, &kitchen, &heat, None);
        // Ice that does not all melt has no answer.
        let Ok(mixing) = before.mixing else { return Ok(()); };
        let Ok(LiquidAnswer::At { liquid, .. }) = mixing.liquid else { return Ok(()); };
        let mut warmed = formula.clone();
        set_liquid_temperature(&mut warmed, liquid).unwrap();
        let after = run_in(&warmed, &kitchen, &heat, None);
        // The liquid is set to half a degree.
        prop_assert!((after.dough.celsius() - heat.dough.celsius()).abs() < 0.25, "{:?}", after.dough);
        let step = softcrumb::engine::heat::DoughStep::StandOut { minutes: minutes(20.0) };
        let load = after.mixing.unwrap().load;
        apply_step(&mut warmed, &mut heat, &load, step).unwrap();
        let stood = run_in(&warmed, &kitchen, &heat, None);
        prop_assert!(stood.dough >= after.dough);
    }
}

/// Common practice: on a cold morning the dough comes off cold, and its rise takes longer for it.
#[test]
fn a_cold_kitchen_takes_longer_by_its_own_dough() {
    let (_, sheet) = examples().remove(0);
    let due = |room: f64| {
        let kitchen = kitchen_of(room, 4.0, 12.0);
        let run = run_in(&sheet.formula, &kitchen, &sheet.heat, None);
        (run.dough.celsius(), run.rises.bulk.unwrap().due.minutes())
    };
    let (cold, warm) = (due(17.0), due(28.0));
    assert!(cold.0 < warm.0 && cold.1 > warm.1, "{cold:?} {warm:?}");
}
