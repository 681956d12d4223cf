//! One dough has one temperature, one mass and one time in the oven wherever they are shown.

use softcrumb::engine::batch::{BatchTarget, Rounded, ScaleReading};
use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Factor, Minutes};
use softcrumb::results::batch::{self, class_batch, scale};
use softcrumb::results::day::{
    self as results, BenchStep, DayInput, as_the_run_bakes, bake_summary, begin_bake, bench_step,
    of, plan_snapshot, usual_run,
};
use softcrumb::results::heat::{DoughOffMixer, HeatInput, HeatResults};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Sheet, examples};
use softcrumb::text::{day, format, heat};

use crate::days::friday;
use crate::format_options::british;

/// The examples, once as they are and once smaller.
fn sheets() -> impl Iterator<Item = Sheet> {
    examples().into_iter().flat_map(|(_, sheet)| {
        [1.0, 0.8217].map(|times| {
            let mut sheet = sheet.clone();
            sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
            sheet
        })
    })
}

/// Runs a function of a sheet's day at the bench, its plan noted.
fn at_bench<T>(sheet: &Sheet, ask: impl FnOnce(&DayInput, &Rounded, &Bench) -> T) -> T {
    let kitchen = Kitchen::default();
    let rounded = batch::of(sheet, kitchen.scales).rounded.unwrap();
    let input = DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&rounded),
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    let plan = of(&input).unwrap();
    let mut bench = begin_bake(Id::from_random(1), None, input.now, &input, Some(&plan));
    bench.planned = plan_snapshot(&plan);
    let with = DayInput {
        bench: Some(&bench),
        ..input
    };
    ask(&with, &rounded, &bench)
}

const fn first(work: StepKind) -> StepAt {
    StepAt { work, of: 0 }
}

/// By definition: a temperature that is predicted is written in one way in Heat, Day, at the bench and in
/// the summary.
#[test]
fn the_predicted_dough_reads_the_same_everywhere() {
    for sheet in sheets() {
        at_bench(&sheet, |input, _, bench| {
            let plan = of(input).unwrap();
            let dough = format::near_temperature(plan.run.dough, british());
            let off_mixer = DoughOffMixer::of(&plan.run, sheet.heat.dough).unwrap();
            let rows = bake_summary(&bench.planned, Some(plan.run.dough), &bench.bake, &plan);
            let mix = bench_step(input, &plan, first(StepKind::Mix)).unwrap();
            let mut said = vec![
                heat::off_mixer(&off_mixer, british()),
                heat::dough_answer(&off_mixer, british()),
                day::rise_begins(&plan, british()),
                day::bench_note(&mix, british()).unwrap(),
                day::summary_figure(rows[0].predicted, british()),
                day::summary_figure(rows[0].next, british()),
            ];
            let mixed = plan.run.mixing.as_ref().unwrap();
            said.push(heat::dough_temperature(&mixed.dough, british()));
            for said in said {
                assert!(said.contains(&dough), "{dough}: {said}");
            }
        });
    }
}

/// By definition: the bread bakes as long in Heat, on Batch, in Day's plan and at the bench.
#[test]
fn the_bake_lasts_the_same_everywhere() {
    for sheet in sheets() {
        at_bench(&sheet, |input, _, _| {
            let plan = of(input).unwrap();
            let of_day = (input.settings, input.learnt);
            let usual = usual_run(&sheet, input.kitchen, of_day);
            let heat = HeatResults::of(&HeatInput {
                formula: &scale(&sheet).unwrap().formula,
                settings: &sheet.heat,
                kitchen: input.kitchen,
                picked: None,
                run: &plan.run,
            });
            let class = class_batch::with_own_loaf(&sheet, ClassSettings::default());
            let class = as_the_run_bakes(&sheet, class, input.kitchen, of_day);
            let bakes = plan
                .steps()
                .filter(|(step, _)| step.at.work == StepKind::Bake);
            let steps: f64 = bakes.map(|(_, timed)| timed.lasts.minutes()).sum();
            let heat = heat.baking.unwrap().planned.unwrap().total;
            let all = [heat, usual.bake_time(), plan.bake, class.oven.bake];
            let all = all.map(|minutes| format::minutes(minutes, british()));
            let steps = format::minutes(Minutes::from_minutes(steps).unwrap(), british());
            assert!(all.iter().all(|said| *said == steps), "{steps}: {all:?}");
        });
    }
}

/// By definition: what is divided at the bench adds up to the dough of the batch as a scale of whole grams
/// shows it.
#[test]
fn the_dough_that_is_divided_is_that_of_the_batch() {
    for sheet in sheets() {
        at_bench(&sheet, |input, _, _| {
            let plan = of(input).unwrap();
            let step = bench_step(input, &plan, first(StepKind::Divide));
            let Some(BenchStep::Divide { divided, .. }) = step else {
                panic!("{step:?}");
            };
            let divided = divided.unwrap();
            let pieces = divided.division.times(divided.divisions);
            let batch = divided.division.nearest(scale(&sheet).unwrap().needed);
            assert_eq!(pieces, batch);
        });
    }
}

/// By definition: a weight typed just as the scale asks for it is a weight as asked, and changes nothing.
#[test]
fn weights_that_are_typed_as_asked_leave_the_run_as_it_is() {
    for sheet in sheets() {
        at_bench(&sheet, |input, rounded, bench| {
            let mut typed = bench.clone();
            for line in &rounded.lines {
                let asked = match line.reading {
                    ScaleReading::AsWeighed => line.weighed,
                    ScaleReading::BelowScale => line.exact,
                };
                typed.weigh(line.at, Some(asked));
            }
            let weighed = DayInput {
                bench: Some(&typed),
                ..*input
            };
            let (before, after) = (of(input).unwrap().run, of(&weighed).unwrap().run);
            assert_eq!(after.dough, before.dough);
            assert_eq!(after.bake, before.bake);
            assert!(results::weighing_effect(&weighed).differences.is_empty());
        });
    }
}
