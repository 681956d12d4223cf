//! Results at the bench: the step shown, what to weigh, what was measured, what was learnt.

use softcrumb::engine::batch::{Losses, Rounded, ScaleSettings, round};
use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, WeighedLoss, learn};
use softcrumb::engine::plan::StepKind;
use softcrumb::engine::quantity::{Division, Mass, Temperature};
use softcrumb::results::day::{
    self, DayInput, DayResults, Measurement, begin_bake, critical_path, finish_bake, last_time,
    learnt_oven, measurement_at, mixing_time, note_dough_temperature, step_weighing,
    weighing_effect, with_learnt_friction, with_learnt_losses,
};
use softcrumb::sheet::civil::{Clock, Zone};
use softcrumb::sheet::day::{Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Sheet, examples};

use crate::days::{minutes, ms, step};

/// Friday evening.
pub(crate) const NOW: f64 = 1_774_634_400_000.0;

pub(crate) fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

pub(crate) fn first() -> Sheet {
    examples().remove(0).1
}

fn rounded(sheet: &Sheet) -> Rounded {
    let weighing = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    round(&sheet.formula, weighing)
}

pub(crate) fn with<T>(bench: Option<&Bench>, run: impl FnOnce(&DayInput, &DayResults) -> T) -> T {
    let sheet = first();
    let input = DayInput {
        sheet: &sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&rounded(&sheet)),
        zone: &Zone::default(),
        now: ms(NOW),
        bench,
    };
    let results = day::of(&input).unwrap();
    run(&input, &results)
}

pub(crate) fn begun() -> Bench {
    with(None, |input, results| {
        begin_bake(Id::from_random(1), None, ms(NOW), input, Some(results))
    })
}

#[test]
fn a_bake_begins_with_its_name_its_room_and_the_plans_times() {
    let bench = begun();
    assert_eq!(bench.bake.name, first().name);
    assert_eq!(bench.bake.room, Some(Kitchen::default().room));
    with(None, |_, results| {
        assert_eq!(bench.planned.len(), results.plan.steps().len());
    });
}

/// Untared, a scale shows the sum of all lines so far.
#[test]
fn the_untared_reading_is_the_sum_of_the_lines_so_far() {
    let mut bench = begun();
    let mix = step(StepKind::Mix, 0);
    let at = with(None, |input, results| {
        let weighing = step_weighing(input, results, mix);
        let mut sum = 0.0;
        for part in &weighing.parts {
            sum += part.mass.grams();
            assert!((part.untared.grams() - sum).abs() < 1e-9);
        }
        assert_eq!(weighing.parts.len(), 2, "paste and preferment go in too");
        for line in &weighing.lines {
            sum += line.target.unwrap().grams();
            assert!((line.untared.grams() - sum).abs() < 1e-9);
            assert!(!line.is_weighed);
        }
        assert!(weighing.lines.len() > 2);
        weighing.places()[1]
    });
    bench.weigh(at, Mass::from_grams(77.0).ok());
    with(Some(&bench), |input, results| {
        let line = step_weighing(input, results, mix).line(at).unwrap();
        assert!(line.is_weighed);
        assert_eq!(line.mass, Mass::from_grams(77.0).ok());
        let effect = weighing_effect(input);
        assert_eq!(effect.differences.len(), 1);
        assert_eq!(effect.differences[0].at, at);
    });
    bench.unweigh(at);
    with(Some(&bench), |input, _| {
        assert_eq!(weighing_effect(input).differences, []);
    });
}

/// The wait ends that many minutes from now, also at a step that began earlier.
/// The path leads from the first step to the table, and its parts add up to the time between them.
#[test]
fn the_critical_path_adds_up_to_the_whole_time() {
    for (_, sheet) in examples() {
        let results = day::of(&DayInput {
            sheet: &sheet,
            kitchen: &Kitchen::default(),
            settings: &DaySettings::default(),
            learnt: &Learnt::default(),
            rounded: None,
            zone: &Zone::default(),
            now: ms(NOW),
            bench: None,
        })
        .unwrap();
        let sum: f64 = critical_path(&results)
            .iter()
            .map(|item| item.lasts.minutes())
            .sum();
        let whole = results.solved.table.since(results.solved.begins);
        assert!((sum - whole.minutes()).abs() < 1e-6, "{sum} {whole:?}");
    }
}

#[test]
fn each_measurement_has_its_step_and_the_mixing_time_is_noted_with_the_dough() {
    assert_eq!(
        measurement_at(StepKind::ButterIn),
        Some(Measurement::DoughTemperature)
    );
    assert_eq!(
        measurement_at(StepKind::Divide),
        Some(Measurement::DoughMass)
    );
    assert_eq!(measurement_at(StepKind::Cool), Some(Measurement::BreadMass));
    assert_eq!(measurement_at(StepKind::Bulk), None);
    let (sheet, kitchen) = (first(), Kitchen::default());
    let mut bake = begun().bake;
    let usual = mixing_time(Some(&bake), &sheet, &kitchen);
    assert_eq!(usual, sheet.heat.mixing.unwrap_or(kitchen.mixer.minutes));
    bake.noted.mixing = Some(minutes(7.0));
    note_dough_temperature(&mut bake, &sheet, &kitchen, celsius(24.0));
    assert_eq!(bake.noted.mixing, Some(minutes(7.0)));
    assert_eq!(bake.noted.dough, Some(celsius(24.0)));
    assert!(bake.noted.unmixed.is_some());
}

#[test]
fn durations_are_noted_only_by_the_plan_of_the_same_formula() {
    let mut bench = begun();
    let bulk = step(StepKind::Bulk, 0);
    bench.bake.begin(bulk, ms(NOW));
    bench.bake.end(bulk, ms(NOW + 4_200_000.0));
    let settings = DaySettings::default();
    assert_eq!(finish_bake(bench.clone(), None, &settings).noted.bulk, None);
    let bake = with(None, |_, results| {
        finish_bake(bench, Some(results), &settings)
    });
    assert_eq!(bake.noted.bulk.unwrap().minutes, minutes(70.0));
}

#[test]
fn a_time_still_to_come_today_was_yesterday() {
    let now = ms(NOW).instant();
    let zone = Zone::fixed(0);
    let today = zone.civil(now);
    let earlier = last_time(Clock::from_hour(1, 0).unwrap(), now, &zone);
    assert_eq!(zone.civil(earlier).date, today.date);
    let later = last_time(Clock::from_hour(23, 59).unwrap(), now, &zone);
    assert_eq!(zone.civil(later).date, today.date.plus(-1));
}

#[test]
fn what_was_learnt_is_taken_over_and_all_else_stays() {
    let grams = |g: f64| Mass::from_grams(g).unwrap();
    let took = |expected: f64, real: f64| MeasuredDuration {
        expected: minutes(expected),
        minutes: minutes(real),
    };
    let noted = Observation {
        unmixed: Some(celsius(16.0)),
        dough: Some(celsius(25.0)),
        mixing: Some(minutes(6.0)),
        bowl: Some(WeighedLoss {
            before: grams(1000.0),
            after: grams(980.0),
        }),
        bake: Some(took(30.0, 30.0)),
        ..Observation::default()
    };
    let kitchen = Kitchen::default();
    let learnt = learn(&[noted; 4], kitchen.mixer.friction);
    // 9 K in 6 minutes are 1.5 K/min.
    let own = with_learnt_friction(&kitchen, &learnt).unwrap();
    assert!((own.mixer.friction.kelvin_per_minute() - 1.5).abs() < 0.05);
    assert_eq!(with_learnt_friction(&kitchen, &Learnt::default()), None);
    // What the kitchen has is not offered again.
    assert_eq!(with_learnt_friction(&own, &learnt), None);
    let losses = Losses {
        residue: grams(12.0),
        ..first().batch.losses
    };
    let own = with_learnt_losses(losses, &learnt).unwrap();
    assert_eq!(own.residue, Mass::ZERO);
    assert!((own.residue_share.percent() - 2.0).abs() < 1e-9);
    assert_eq!((own.bake, own.dividing), (losses.bake, losses.dividing));
    assert_eq!(with_learnt_losses(losses, &Learnt::default()), None);
    assert_eq!(learnt_oven(&learnt), None, "it bakes as expected");
    let slow = Observation {
        bake: Some(took(30.0, 33.0)),
        ..Observation::default()
    };
    let learnt = learn(&[slow; 4], kitchen.mixer.friction);
    assert!(learnt_oven(&learnt).is_some());
}
