//! A bench that was only looked at is no bake, and what nobody weighed is not called weighed.

use softcrumb::results::batch;
use softcrumb::results::day::{
    DayInput, begin_early, bench_screen, is_untouched, note_findings, step_done,
};
use softcrumb::sheet::day::Weighing;
use softcrumb::sheet::{Kitchen, Moment};

use crate::bench_results::celsius;
use crate::starts_now::{AtBench, FRIDAY, TOAST, after};

/// The first example's bench at the time its plan begins.
fn opened() -> (AtBench, Moment) {
    let early = after(FRIDAY, 0.0);
    let begins = AtBench::of(0, early).ask(early, |_, results| results.solved.begins);
    let now = Moment::from_instant(begins);
    (AtBench::of(0, now), now)
}

/// By definition: what was only looked at is untouched; what was done, begun on purpose, weighed or
/// measured is not.
#[test]
fn a_bench_is_untouched_until_something_is_done_at_it() {
    let (at, now) = opened();
    assert!(is_untouched(&at.bench), "the first step is only shown");
    let first = at.ask(now, |_, results| {
        bench_screen(Some(results), Some(&at.bench), now)
            .step
            .unwrap()
    });
    let mut done = at.clone();
    at.ask(now, |_, results| {
        step_done(&mut done.bench, results, first, now);
    });
    let mut measured = at.clone();
    measured.bench.bake.noted.dough = Some(celsius(24.0));
    let mut weighed = at.clone();
    weighed.bench.weighed = vec![weighing(&at)];
    let start = after(FRIDAY, -60.0);
    let mut early = AtBench::of(TOAST, start);
    assert!(is_untouched(&early.bench), "nothing is due");
    let bench = early.bench.clone();
    early.ask(start, |_, results| {
        let next = bench_screen(Some(results), Some(&bench), start);
        let mut begun = bench.clone();
        begin_early(&mut begun, results, next.step.unwrap(), start);
        assert!(!is_untouched(&begun), "begun before its time, on purpose");
    });
    early.bench.bake.note = "Door open.".to_owned();
    for touched in [&done, &measured, &weighed, &early] {
        assert!(!is_untouched(&touched.bench), "{:?}", touched.bench);
    }
}

/// By definition: the water of a bake is known as weighed only where weights were ticked or typed.
#[test]
fn a_bake_without_a_weight_has_no_hydration_as_weighed() {
    let (mut at, now) = opened();
    let water = |at: &AtBench| {
        let mut bench = at.bench.clone();
        let batch = batch::of(&at.sheet, Kitchen::default().scales);
        at.ask(now, |input, _| {
            let input = DayInput {
                rounded: batch.rounded.as_ref(),
                ..*input
            };
            note_findings(&mut bench, &input);
        });
        bench.bake.found.water
    };
    assert_eq!(water(&at), None);
    at.bench.weighed = vec![weighing(&at)];
    assert!(water(&at).is_some());
}

/// The first line as it was asked for.
fn weighing(at: &AtBench) -> Weighing {
    let line = at.sheet.formula.lines().next().unwrap().0;
    Weighing {
        at: line,
        mass: None,
    }
}
