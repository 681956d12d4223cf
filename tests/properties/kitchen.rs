//! A kitchen's questions of heat hold together, whatever the formula and the settings.

use proptest::prelude::*;
use softcrumb::engine::formula::PartKind;
use softcrumb::engine::heat::{
    HeatError, LiquidAnswer, LiquidRange, Probe, cook, dough_remedies, dough_temperature,
    liquid_for,
};
use softcrumb::engine::quantity::{Mass, Minutes, Temperature};
use softcrumb::results::heat::{
    DoughQuestion, LoadSource, MixingResult, apply_remedy, cooling_plan, mixer_load,
    offered_remedies, paste, paste_coolings, pastes, set_liquid_temperature, shares, steam_of,
    stirred_in, warming, weigh_cooked,
};
use softcrumb::sheet::examples;
use softcrumb::sheet::{HeatSettings, Kitchen};

use crate::dough::{cases, likely, wild};

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees).unwrap()
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(4_000)))]

    /// Each item of the bowl names its source.
    #[test]
    fn every_item_of_the_bowl_knows_its_place_in_the_formula(formula in likely()) {
        let bowl = mixer_load(&formula, &Kitchen::default(), &HeatSettings::default()).unwrap();
        prop_assert_eq!(bowl.from.len(), bowl.dough.items.len());
        for (item, from) in bowl.dough.items.iter().zip(&bowl.from) {
            let name = match *from {
                LoadSource::Part(part) => formula.parts[part].name.clone(),
                LoadSource::Line(at) => formula.line(at).unwrap().food.name().to_owned(),
            };
            prop_assert_eq!(&item.component.of, &name);
        }
    }

    /// Whatever the formula, each question has an answer or a reason.
    #[test]
    fn a_kitchen_answers_for_any_formula(formula in wild(), degrees in -40.0..350.0f64) {
        let kitchen = Kitchen { room: celsius(degrees), ..Kitchen::default() };
        let settings = HeatSettings { standing: Minutes::from_minutes(30.0).unwrap(), ..HeatSettings::default() };
        if let Ok(bowl) = mixer_load(&formula, &kitchen, &settings)
            && let Ok(came) = dough_temperature(&bowl.dough)
        {
            let told = shares(&bowl, &came, settings.dough).unwrap();
            prop_assert!(told.iter().all(|share| share.heat.joules().is_finite()));
        }
        for part in 0..formula.parts.len() {
            if let Ok(Some(asked)) = paste(&formula, part, &kitchen, &settings.paste)
                && let Ok(cooked) = cook(&asked)
                && let Ok(plan) = cooling_plan(&formula.parts[part], cooked.temperature, &kitchen, &settings.cooling)
            {
                prop_assert!(plan.simulate().is_ok());
            }
        }
    }
}

/// What all bring above the wanted temperature is what the dough holds above it: its sign is that of
/// the dough's distance, and where the liquid is as was found the sum is nought.
#[test]
fn who_brings_and_who_takes_heat_adds_up() {
    let kitchen = Kitchen::default();
    for (_, mut sheet) in examples() {
        for wanted in [12.0, 18.0, 25.0, 31.0] {
            let wanted = celsius(wanted);
            let bowl = mixer_load(&sheet.formula, &kitchen, &sheet.heat).unwrap();
            let came = dough_temperature(&bowl.dough).unwrap();
            let sum: f64 = shares(&bowl, &came, wanted)
                .unwrap()
                .iter()
                .map(|share| share.heat.joules())
                .sum();
            let off = (came.temperature - wanted).kelvin();
            assert!(sum * off >= -1e-6, "{sum} J, {off} K");
            let answer = liquid_for(&bowl.dough, wanted, LiquidRange::default()).unwrap();
            if let LiquidAnswer::At { liquid, .. } = answer {
                set_liquid_temperature(&mut sheet.formula, liquid).unwrap();
                let poured = mixer_load(&sheet.formula, &kitchen, &sheet.heat).unwrap();
                let now = dough_temperature(&poured.dough).unwrap().temperature;
                // The liquid is set to half a degree.
                assert!((now - wanted).kelvin().abs() < 0.25, "{now:?}");
            }
        }
    }
}

/// Each step that is offered as enough, once taken, brings the dough where it says, to what a
/// thermometer and a clock can show.
#[test]
fn a_step_that_is_taken_reaches_what_it_promised() {
    let kitchen = Kitchen {
        room: celsius(14.0),
        flour: Some(celsius(13.0)),
        tap: celsius(8.0),
        ..Kitchen::default()
    };
    let mut taken = 0;
    for (_, sheet) in examples() {
        let bowl = mixer_load(&sheet.formula, &kitchen, &sheet.heat).unwrap();
        let around = kitchen.surroundings();
        let wanted = sheet.heat.dough;
        let Ok(LiquidAnswer::OutOfReach(out)) = liquid_for(&bowl.dough, wanted, around.liquid)
        else {
            continue;
        };
        let at_best = bowl.dough.poured_at(out.best);
        for remedy in &dough_remedies(&at_best, wanted, &around).unwrap() {
            let (mut formula, mut settings) = (sheet.formula.clone(), sheet.heat.clone());
            set_liquid_temperature(&mut formula, out.best).unwrap();
            apply_remedy(&mut formula, &mut settings, &bowl, remedy).unwrap();
            let after = mixer_load(&formula, &kitchen, &settings).unwrap();
            let now = dough_temperature(&after.dough).unwrap().temperature;
            assert!(
                (now - remedy.reaches).kelvin().abs() < 0.15,
                "{remedy:?} {now:?}"
            );
            taken += 1;
        }
    }
    assert!(taken >= 4, "{taken}");
}

/// The remedies that the page offers, applied one after another on a cold morning, bring the dough
/// to its target; mixing never goes beyond one and a half times the usual.
#[test]
fn the_offered_steps_one_after_another_bring_a_cold_morning_to_its_target() {
    let kitchen = Kitchen {
        room: celsius(14.0),
        flour: Some(celsius(13.0)),
        tap: celsius(8.0),
        ..Kitchen::default()
    };
    let (_, sheet) = examples().remove(0);
    let (mut formula, mut settings) = (sheet.formula, sheet.heat);
    let mut steps = Vec::new();
    for _ in 0..6 {
        let load = mixer_load(&formula, &kitchen, &settings).unwrap();
        let liquid =
            liquid_for(&load.dough, settings.dough, kitchen.surroundings().liquid).unwrap();
        let LiquidAnswer::OutOfReach(out) = &liquid else {
            break;
        };
        let question = DoughQuestion::at_best(&load, &liquid, settings.dough, &kitchen).unwrap();
        let offered = offered_remedies(&question.remedies().unwrap());
        let Some(first) = offered.first() else { break };
        steps.push(first.step);
        set_liquid_temperature(&mut formula, out.best).unwrap();
        apply_remedy(&mut formula, &mut settings, &load, first).unwrap();
    }
    let mixing = MixingResult::of(&formula, &kitchen, &settings).unwrap();
    let off = (mixing.dough.temperature - settings.dough).kelvin();
    assert!(off.abs() <= 0.6, "{off} after {steps:?}");
    assert!(steps.len() <= 4, "{steps:?}");
    assert!(mixing.load.dough.minutes.minutes() <= 1.5 * mixing.load.dough.usual.minutes());
}

/// A paste that stands longer on the bench than half an hour never cools sooner. Before that it may:
/// a bench passes more heat than the still air of a fridge.
#[test]
fn longer_on_the_bench_is_never_colder_sooner() {
    let kitchen = Kitchen::default();
    for (_, sheet) in examples() {
        for (at, own) in sheet.formula.parts.iter().enumerate() {
            if own.kind != PartKind::Paste {
                continue;
            }
            let asked = paste(&sheet.formula, at, &kitchen, &sheet.heat.paste)
                .unwrap()
                .unwrap();
            let start = cook(&asked).unwrap().temperature;
            let mut before = 0.0;
            for bench in [30.0, 60.0, 180.0] {
                let mut settings = sheet.heat.cooling;
                settings.set_bench(Minutes::from_minutes(bench).unwrap());
                let plan = cooling_plan(own, start, &kitchen, &settings).unwrap();
                let cold = plan.likely().unwrap().curve;
                let cold = cold.reaches(celsius(5.0), Probe::Centre, Minutes::ZERO);
                let cold = cold.unwrap().minutes();
                assert!(cold >= before, "{bench} min: {cold} after {before}");
                before = cold;
            }
        }
    }
}

/// The default way of each example passes the strictest rules, at the slow end, within two hours
/// out of the fridge.
#[test]
fn the_default_cooling_of_each_example_passes_the_strictest_rules() {
    let kitchen = Kitchen::default();
    for (_, sheet) in examples() {
        let followed = paste_coolings(&sheet.formula, &kitchen, &sheet.heat, &[]);
        for paste in pastes(&sheet.formula, &kitchen, &sheet.heat, &followed) {
            let own = &sheet.formula.parts[paste.part];
            let start = paste.cooked.unwrap().temperature;
            let plan = cooling_plan(own, start, &kitchen, &sheet.heat.cooling).unwrap();
            let cooled = plan.simulate().unwrap();
            assert!(cooled.slow.passes, "{}: {:?}", own.name, plan.way);
            assert!(plan.out().unwrap().minutes() <= 120.0);
            // No steam is predicted where a weighing is stored.
            assert_eq!(paste.predicted.is_none(), own.steam > Mass::ZERO);
            let mut predicted = paste.predicted.into_iter();
            assert!(
                predicted.all(|predicted| predicted.least <= predicted.likely
                    && predicted.likely <= predicted.most)
            );
        }
    }
}

/// A paste of a batch, weighed: the same share went off as steam in the formula as it is written,
/// and a paste that gained is refused.
#[test]
fn steam_is_stored_as_the_share_that_the_scale_missed() {
    let at = celsius(80.0);
    for (_, sheet) in examples() {
        for own in &sheet.formula.parts {
            let mut twice = own.clone();
            for line in &mut twice.lines {
                line.mass = Mass::from_grams(line.mass.grams() * 2.0).unwrap();
            }
            let before = stirred_in(&twice).grams();
            let after = Mass::from_grams(before * 0.95).unwrap();
            let mut written = own.clone();
            weigh_cooked(&mut written, &twice, after).unwrap();
            let lost = steam_of(&written, at).unwrap();
            assert!((lost.share.fraction() - 0.05).abs() < 1e-9, "{lost:?}");
            assert!(
                (lost.lost.grams() - before * 0.025).abs() < 1e-6,
                "{lost:?}"
            );
            let heavier = Mass::from_grams(before + 1.0).unwrap();
            let refused = weigh_cooked(&mut written, &twice, heavier);
            assert!(
                matches!(refused, Err(HeatError::Gained { .. })),
                "{refused:?}"
            );
        }
    }
}

/// The colder the room, the longer each cold part stands; none is told to warm beyond the room.
#[test]
fn cold_parts_stand_longer_in_a_colder_room() {
    for (_, sheet) in examples() {
        let mut before: Vec<f64> = Vec::new();
        for room in [28.0, 21.0, 16.0] {
            let kitchen = Kitchen {
                room: celsius(room),
                ..Kitchen::default()
            };
            let all = warming(&sheet.formula, &kitchen).unwrap();
            let firsts: Vec<f64> = all.iter().map(|one| one.times[0].1.minutes()).collect();
            for (now, then) in firsts.iter().zip(&before) {
                assert!(
                    now > then,
                    "{room} °C: {now} min, {then} min in a warmer room"
                );
            }
            assert!(
                all.iter()
                    .flat_map(|one| &one.times)
                    .all(|(warm, _)| *warm < kitchen.room)
            );
            before = firsts;
        }
    }
}
