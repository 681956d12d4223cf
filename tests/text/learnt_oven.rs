//! What the log taught about the oven is one number in every place: Heat, Day, the bench, the card on
//! paper, the class sheet.

use super::days::friday;
use super::format_options::british;
use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, learn};
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Minutes, WarmingRate};
use softcrumb::results::batch::{self, class, class_batch};
use softcrumb::results::day::{
    BenchStep, DayInput, DayResults, as_the_run_bakes, bench_step, of, plan_list, usual_run,
};
use softcrumb::results::heat::{HeatInput, HeatResults};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::text::share::card_steps;
use softcrumb::text::{format, heat};

/// An oven in which five bakes took a quarter longer than expected.
fn slow_oven() -> Learnt {
    let minutes = |minutes| Minutes::from_minutes(minutes).unwrap();
    let bake = Observation {
        bake: Some(MeasuredDuration {
            expected: minutes(28.0),
            minutes: minutes(35.0),
        }),
        ..Observation::default()
    };
    learn(
        &[bake; 5],
        WarmingRate::from_kelvin_per_minute(0.1).unwrap(),
    )
}

fn planned<T>(sheet: &Sheet, learnt: &Learnt, seen: impl Fn(&DayInput, &DayResults) -> T) -> T {
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt,
        rounded: None,
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    seen(&input, &of(&input).unwrap())
}

/// What Heat shows of a run: the minutes of the advice and of the programme.
fn on_heat(input: &DayInput, results: &DayResults) -> ([f64; 2], String) {
    let batch = batch::of(input.sheet, input.kitchen.scales);
    let shown = HeatResults::of(&HeatInput {
        formula: &batch.formula,
        settings: &input.sheet.heat,
        kitchen: input.kitchen,
        picked: None,
        run: &results.run,
    });
    let baking = shown.baking.unwrap();
    let time = baking.time.unwrap();
    let said = heat::bake_time(&time, british())
        .means
        .replace('\u{A0}', " ");
    let total = baking.planned.unwrap().total;
    ([time.likely, total].map(Minutes::minutes), said)
}

/// By definition: the bake that Heat advises is the one that Day plans, the bench times, and paper and
/// class sheet print; a quarter longer than without the log.
#[test]
fn a_slow_oven_bakes_as_long_in_every_place() {
    let (taught, nothing) = (slow_oven(), Learnt::default());
    let factor = taught.bake.as_ref().unwrap().factor.number();
    assert!((factor - 1.25).abs() < 0.01, "{factor}");
    for (_, sheet) in examples() {
        let before = planned(&sheet, &nothing, on_heat);
        planned(&sheet, &taught, |input, results| {
            let bake = results.bake.minutes();
            let (now, said) = on_heat(input, results);
            assert!((now[0] / before.0[0] - factor).abs() < 1e-9);
            assert!((now[1] - bake).abs() < 1e-9 && (now[0] - bake).abs() <= 1.0);
            let written = format::minutes(Minutes::from_minutes(now[0]).unwrap(), british());
            assert!(said.contains(&written.replace('\u{A0}', " ")), "{said}");
            // The log learns against what it would have expected without having learnt.
            let expected = planned(&sheet, &nothing, |_, results| results.programme);
            assert_eq!(results.programme, expected);
            // At the bench.
            let at = |of| StepAt {
                work: StepKind::Bake,
                of,
            };
            let phases = (0..).map_while(|of| bench_step(input, results, at(of)));
            let timed: f64 = phases
                .map(|step| {
                    let BenchStep::Bake { phase, minutes, .. } = step else {
                        panic!("{step:?}")
                    };
                    assert_eq!(phase.unwrap().phase.minutes, minutes);
                    minutes.minutes()
                })
                .sum();
            assert!((timed - bake).abs() < 0.02, "{timed} {bake}");
            // On paper.
            let of_day = (input.settings, &taught);
            let run = usual_run(&sheet, input.kitchen, of_day);
            assert_eq!(run.bake_time(), results.bake);
            let steps = card_steps(&plan_list(input), &sheet.formula, None, british());
            let minutes = format::minutes(results.run.bake[0], british());
            let mut said = steps.iter().map(|step| &step.says);
            assert!(
                said.any(|line| line.contains(&minutes)),
                "{minutes}: {steps:?}"
            );
        });
        // On the class sheet, of what one tin of the class bakes.
        let kitchen = Kitchen::default();
        let settings = DaySettings::default();
        let own = as_the_run_bakes(
            &sheet,
            class_batch::with_own_loaf(&sheet, ClassSettings::default()),
            &kitchen,
            (&settings, &taught),
        );
        let mut bench = sheet.clone();
        bench.batch = class_batch::of_bench(&sheet, &own);
        let heat = planned(&bench, &taught, on_heat).0;
        assert!((own.oven.bake.minutes() - heat[1]).abs() < 1e-9);
        let oven = class::of(&sheet, &own, kitchen.scales).oven.unwrap();
        assert_eq!(oven.oven.bake, own.oven.bake);
    }
}
