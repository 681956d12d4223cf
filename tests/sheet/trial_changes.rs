//! A dough that is tried, or weighed otherwise, against the dough its known rises are of.

use proptest::prelude::*;
use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::formula::{Form, LineAt};
use softcrumb::engine::ingredients::Role;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::StepKind;
use softcrumb::engine::quantity::{Division, Mass, Temperature};
use softcrumb::engine::rise::{RiseError, yeast_activity};
use softcrumb::results::day::{self, DayInput, DayResults};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Sheet, examples};

use crate::days::{minutes, ms, step};

fn at(celsius: f64) -> Temperature {
    Temperature::from_celsius(celsius).unwrap()
}

/// In a room as warm as the dough, so that the closed form holds.
fn plan_of(sheet: &Sheet, settings: &DaySettings, bench: Option<&Bench>) -> DayResults {
    let kitchen = Kitchen {
        room: at(25.0),
        ..Kitchen::default()
    };
    let weighing = ScaleSettings {
        main: Division::from_mass(Mass::from_grams(0.01).unwrap()).unwrap(),
        pocket: None,
    };
    day::of(&DayInput {
        sheet,
        kitchen: &kitchen,
        settings,
        learnt: &Learnt::default(),
        rounded: Some(&round(&sheet.formula, weighing)),
        zone: &Zone::default(),
        now: ms(1_774_634_400_000.0),
        bench,
    })
    .unwrap()
}

fn settings_of(sheet: &Sheet) -> DaySettings {
    let mut settings = DaySettings::default();
    settings.rises.dough = yeast_activity(&sheet.formula, Form::AsMade).ok();
    settings
}

/// The formula with all its lines of a role so many times as heavy.
fn with(sheet: &Sheet, role: Role, times: f64) -> Sheet {
    let mut sheet = sheet.clone();
    let lines = sheet.formula.parts.iter_mut();
    for line in lines.flat_map(|part| &mut part.lines) {
        if line.food.role() == role {
            line.mass = Mass::from_grams(line.mass.grams() * times).unwrap();
        }
    }
    sheet
}

fn bulk(planned: &DayResults) -> f64 {
    planned.run.rises.bulk.as_ref().unwrap().due.minutes()
}

/// Common practice: a dough of 1 % instant yeast, 10 % sugar and 1.8 % salt is the usual one, and a
/// tenth of its yeast takes a night in the room, not an hour.
#[test]
fn a_new_formula_is_compared_with_a_usual_dough() {
    for (_, sheet) in examples() {
        let usual = plan_of(&sheet, &DaySettings::default(), None);
        let noted = plan_of(&sheet, &settings_of(&sheet), None);
        let times = usual.run.references.yeast_activity.number();
        // The dough warms meanwhile, so that times are not quite in proportion.
        assert!((bulk(&noted) / bulk(&usual) / times - 1.0).abs() < 0.35);
        let little = plan_of(
            &with(&sheet, Role::Yeast, 0.1),
            &DaySettings::default(),
            None,
        );
        let slower = times / little.run.references.yeast_activity.number();
        assert!(
            slower > 6.0 && bulk(&little) > 3.0 * bulk(&usual),
            "{slower}"
        );
    }
}

/// Source: a table of gas from plain doughs (*Applied and Environmental Microbiology*): 5 % of fresh
/// yeast gave 1.5 times the gas of 2.8 %; so twice as much again, from 3 to 6 %, is worth 1.4 to 2 times.
#[test]
fn twice_the_yeast_takes_little_more_than_half_the_time_in_both_rises_and_in_the_plan() {
    for (_, sheet) in examples() {
        let settings = settings_of(&sheet);
        let (kept, tried) = (
            plan_of(&sheet, &settings, None),
            plan_of(&with(&sheet, Role::Yeast, 2.0), &settings, None),
        );
        let times = tried.run.references.yeast_activity.number();
        assert!((1.4..2.0).contains(&times), "{times}");
        // The dough warms or cools meanwhile, so that times are not quite in proportion.
        assert!((bulk(&kept) / bulk(&tried) / times - 1.0).abs() < 0.15);
        let step = |planned: &DayResults| {
            let place = planned.plan.place(step(StepKind::Bulk, 0)).unwrap();
            planned.solved.steps[place].lasts.minutes()
        };
        assert!((step(&kept) - bulk(&kept)).abs() < 1.0);
        assert!((step(&tried) - bulk(&tried)).abs() < 1.0);
    }
}

/// Yeasts of the same dry matter: AACC, *Approved Methods*, 89-01.01, by 30 and 95 % of solids.
#[test]
fn another_yeast_of_the_same_dry_matter_takes_as_long() {
    use softcrumb::engine::ingredients::{Food, Listed};
    let (_, sheet) = examples().remove(0);
    let settings = settings_of(&sheet);
    let mut fresh = sheet.clone();
    let lines = fresh.formula.parts.iter_mut();
    for line in lines.flat_map(|part| &mut part.lines) {
        if line.food.role() == Role::Yeast {
            let before = line.food.name().to_owned();
            assert!(before.to_lowercase().contains("instant"), "{before}");
            line.food = Food::Listed(Listed::numbered(900).unwrap());
            assert!(line.food.name().to_lowercase().contains("fresh"));
            line.mass = Mass::from_grams(line.mass.grams() * 95.0 / 30.0).unwrap();
        }
    }
    let (kept, other) = (
        plan_of(&sheet, &settings, None),
        plan_of(&fresh, &settings, None),
    );
    // The listed yeasts have dry matter of their own, a little off the round figures.
    assert!((bulk(&kept) / bulk(&other) - 1.0).abs() < 0.05);
}

#[test]
fn a_dough_with_no_yeast_left_is_said_not_to_rise_and_the_plan_still_stands() {
    let (_, sheet) = examples().remove(0);
    let planned = plan_of(&with(&sheet, Role::Yeast, 0.0), &settings_of(&sheet), None);
    assert_eq!(planned.run.rises.bulk, Err(RiseError::NoYeast));
    assert_eq!(planned.run.rises.proof, Err(RiseError::NoYeast));
    assert!(!planned.solved.steps.is_empty());
}

/// What really went in counts, and not what was asked for.
#[test]
fn yeast_that_was_weighed_twice_over_counts_as_it_was_weighed() {
    let (_, sheet) = examples().remove(0);
    let mut bench = Bench::new(Bake::new(Id::from_random(1), ms(1_774_634_400_000.0)));
    for (part, own) in sheet.formula.parts.iter().enumerate() {
        for (line, one) in own.lines.iter().enumerate() {
            if one.food.role() == Role::Yeast {
                let twice = one.mass + one.mass;
                bench.weigh(LineAt { part, line }, Some(twice));
            }
        }
    }
    let settings = settings_of(&sheet);
    let (asked, got) = (
        plan_of(&sheet, &settings, None),
        plan_of(&sheet, &settings, Some(&bench)),
    );
    assert!((1.2..2.0).contains(&(bulk(&asked) / bulk(&got))));
}

/// An oven that takes a fifth longer is planned with, and goes on being learnt against the programme.
#[test]
fn the_plan_bakes_as_the_log_has_found_the_oven_to() {
    use softcrumb::engine::learn::{MeasuredDuration, Observation, learn};
    let (_, sheet) = examples().remove(0);
    let took = MeasuredDuration {
        expected: minutes(25.0),
        minutes: minutes(30.0),
    };
    let noted = Observation {
        bake: Some(took),
        ..Observation::default()
    };
    let learnt = learn(&[noted; 5], Kitchen::default().mixer.friction);
    let plan = |learnt: &Learnt| {
        day::of(&DayInput {
            sheet: &sheet,
            kitchen: &Kitchen::default(),
            settings: &DaySettings::default(),
            learnt,
            rounded: None,
            zone: &Zone::default(),
            now: ms(1_774_634_400_000.0),
            bench: None,
        })
        .unwrap()
    };
    let (usual, own) = (plan(&Learnt::default()), plan(&learnt));
    assert!((own.bake.minutes() / usual.bake.minutes() - 1.2).abs() < 1e-6);
    assert_eq!(own.programme, usual.programme);
    let baked = |planned: &DayResults| {
        let steps = planned.plan.steps().iter().zip(&planned.solved.steps);
        let bakes = steps.filter(|(step, _)| step.at.work == StepKind::Bake);
        bakes.map(|(_, timed)| timed.lasts.minutes()).sum::<f64>()
    };
    assert!((baked(&own) / baked(&usual) - 1.2).abs() < 0.01);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(crate::cases::cases(600)))]

    #[test]
    fn more_yeast_is_never_slower_and_more_sugar_or_salt_never_faster(
        which in 0..4usize, less in 0.05..3.0f64, more in 1.0..4.0f64,
    ) {
        let (_, sheet) = examples().remove(which);
        let settings = settings_of(&sheet);
        // A dough of other weights comes off at another temperature, so times cannot be compared.
        let speed = |role, times| {
            let planned = plan_of(&with(&sheet, role, times), &settings, None);
            planned.run.references.yeast_activity.number()
        };
        for (role, faster) in [(Role::Yeast, true), (Role::Sugar, false), (Role::Salt, false)] {
            let (few, many) = (speed(role, less), speed(role, less * more));
            prop_assert!(if faster { many >= few } else { many <= few }, "{role:?} {few} {many}");
        }
    }
}
