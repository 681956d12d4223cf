//! Every remedy that is taken changes the run the way it said.

use proptest::prelude::*;
use softcrumb::engine::formula::{Formula, Line, PartKind};
use softcrumb::engine::heat::{DoughStep, LiquidAnswer};
use softcrumb::engine::ingredients::{Food, Listed, Role};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::Mass;
use softcrumb::engine::rise::RiseSettings;
use softcrumb::results::batch::scale;
use softcrumb::results::heat::{
    DoughQuestion, InOven, MixingResult, apply_remedy, apply_step, ice_of, offered_remedies,
    set_liquid_temperature,
};
use softcrumb::results::run::{Run, RunInput, StageKind};
use softcrumb::sheet::{HeatSettings, Kitchen, Sheet, examples};

use crate::dough::{cases, likely};
use crate::heat_cases::celsius;

fn run_in(formula: &Formula, kitchen: &Kitchen, heat: &HeatSettings) -> Run {
    let (_, sheet) = examples().remove(0);
    Run::of(&RunInput {
        formula,
        kitchen,
        heat,
        rises: &RiseSettings::default(),
        pieces: 9,
        learnt: &Learnt::default(),
        in_oven: InOven::of(&sheet, scale(&sheet).ok().as_ref(), InOven::PROOFED),
        measured_dough: None,
        planned: None,
    })
}

fn kitchen_of(room: f64, tap: f64) -> Kitchen {
    Kitchen {
        room: celsius(room),
        flour: Some(celsius(room)),
        tap: celsius(tap),
        ..Kitchen::default()
    }
}

/// What the page asks with the liquid as it is, and with the liquid at its best.
fn questions(mixing: &MixingResult, heat: &HeatSettings, kitchen: &Kitchen) -> Vec<DoughQuestion> {
    let as_it_is = DoughQuestion::as_it_is(&mixing.load, heat.dough, kitchen);
    let answer = mixing.liquid.as_ref().ok();
    let at_best =
        answer.and_then(|liquid| DoughQuestion::at_best(&mixing.load, liquid, heat.dough, kitchen));
    std::iter::once(as_it_is).chain(at_best).collect()
}

/// A remedy is stated to a tenth of a degree, set to whole minutes of standing, half minutes of
/// mixing and tenths of a degree; a dough that has stood already is reckoned as evenly warm when it
/// stands on. Common practice: no thermometer in a dough tells more than half a degree.
const STATED_WITHIN: f64 = 0.5;

proptest! {
    #![proptest_config(cases(2_000))]

    #[test]
    fn every_remedy_brings_the_run_where_it_said_it_would(
        formula in likely(), room in 12.0..34.0f64, tap in 5.0..26.0f64,
    ) {
        let (kitchen, heat) = (kitchen_of(room, tap), HeatSettings::default());
        let before = run_in(&formula, &kitchen, &heat);
        // Ice that does not all melt has no answer.
        let Ok(mixing) = &before.mixing else { return Ok(()); };
        for (number, question) in questions(mixing, &heat, &kitchen).iter().enumerate() {
            for remedy in question.remedies().unwrap_or_default() {
                let (mut taken, mut set) = (formula.clone(), heat.clone());
                if number == 1 {
                    let Ok(LiquidAnswer::OutOfReach(out)) = &mixing.liquid else { panic!() };
                    set_liquid_temperature(&mut taken, out.best).unwrap();
                }
                apply_remedy(&mut taken, &mut set, &mixing.load, &remedy).unwrap();
                let after = run_in(&taken, &kitchen, &set);
                let off = (after.dough - remedy.reaches).kelvin().abs();
                prop_assert!(off < STATED_WITHIN, "{remedy:?} came to {:?} number {number} from {:?}", after.dough, before.dough);
                // What the dough hands on follows: it rises from there.
                let bulk = after.stages.iter().find(|stage| stage.kind == StageKind::Bulk);
                prop_assert_eq!(bulk.unwrap().starts, after.dough);
                // Nothing is added to the dough or taken out of it.
                let grams = |formula: &Formula| formula.dough().grams();
                prop_assert!((grams(&taken) - grams(&formula)).abs() < 1e-6 * grams(&formula));
            }
        }
    }
}

/// Takes the ice alone: it leaves the formula's water, and the dough is the colder for it.
fn goes_in_by_itself(sheet: &Sheet, kitchen: &Kitchen, before: &Run, step: DoughStep) {
    let mixing = before.mixing.as_ref().unwrap();
    let heat = &sheet.heat;
    let DoughStep::Ice { ice } = step else {
        panic!("{step:?}")
    };
    let (mut taken, mut set) = (sheet.formula.clone(), heat.clone());
    apply_step(&mut taken, &mut set, &mixing.load, step).unwrap();
    let lines = taken.lines().map(|(_, line)| line);
    let iced: f64 = lines
        .filter(|line| line.food.is_ice())
        .map(|line| line.mass.grams())
        .sum();
    assert!((iced - ice.grams()).abs() < 0.01, "{iced} {ice:?}");
    assert!((taken.dough().grams() - sheet.formula.dough().grams()).abs() < 0.01);
    let after = run_in(&taken, kitchen, &set);
    assert!(after.dough < before.dough);
}

/// Common practice: ice is weighed out of the water. In a hot kitchen the ice among several things
/// has a button of its own, which takes it out of the formula's water, batch or not.
#[test]
fn ice_among_several_things_goes_into_the_formula_by_itself() {
    let mut pressed = 0;
    for (_, mut sheet) in examples() {
        let last = sheet.formula.first_part(PartKind::Final).unwrap();
        let water = Food::Listed(Listed::numbered(200).unwrap());
        let lines = &mut sheet.formula.parts[last].lines;
        lines.retain(|line| line.food.role() != Role::Water);
        lines.push(Line::new(water, Mass::ZERO));
        for (room, grams) in [
            (29.0, 10.0),
            (31.0, 20.0),
            (33.0, 30.0),
            (35.0, 40.0),
            (35.0, 60.0),
        ] {
            let lines = &mut sheet.formula.parts[last].lines;
            lines.last_mut().unwrap().mass = Mass::from_grams(grams).unwrap();
            let (kitchen, heat) = (kitchen_of(room, 26.0), &sheet.heat);
            let before = run_in(&sheet.formula, &kitchen, heat);
            let mixing = before.mixing.as_ref().unwrap();
            // Ice comes with the coldest liquid, and perhaps with more.
            for question in questions(mixing, heat, &kitchen).into_iter().skip(1) {
                let offered = offered_remedies(&question.remedies().unwrap());
                for step in offered.iter().filter_map(ice_of) {
                    goes_in_by_itself(&sheet, &kitchen, &before, step);
                    pressed += 1;
                }
            }
        }
    }
    assert!(pressed > 0);
}
