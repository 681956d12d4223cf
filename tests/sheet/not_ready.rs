//! What a step of the bench waits for: dough that has not risen, bread that is not baked, a cold oven.

use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::Minutes;
use softcrumb::results::day::{begin_early, bench_screen, not_ready, step_done};
use softcrumb::sheet::Moment;

use crate::days::minutes;
use crate::starts_now::{AtBench, FRIDAY, TOAST, after};

/// The waits of a bake in its order: when each begins, how long it lasts, what is next, and the bench.
fn waits(example: usize) -> Vec<(Moment, Minutes, StepAt, AtBench)> {
    let mut at = AtBench::of(example, after(FRIDAY, 0.0));
    let mut now = at.ask(after(FRIDAY, 0.0), |_, results| {
        Moment::from_instant(results.solved.begins)
    });
    let mut waits = Vec::new();
    loop {
        let (then, _) = at.until_it_waits(now);
        let bench = at.bench.clone();
        let screen = at.ask(then, |_, results| {
            bench_screen(Some(results), Some(&bench), then)
        });
        let (Some(next), Some(until)) = (screen.step, screen.idle_until) else {
            return waits;
        };
        let lasts = until.since(then.instant());
        waits.push((then, lasts, next, at.clone()));
        if next.work == StepKind::Cool {
            return waits;
        }
        now = Moment::from_instant(until);
    }
}

/// What is not ready after a share of a wait.
fn at_share(
    (began, lasts, next, at): &(Moment, Minutes, StepAt, AtBench),
    share: f64,
) -> Option<(StepKind, f64)> {
    let now = after(began.milliseconds(), lasts.minutes() * share);
    at.ask(now, |_, results| {
        let found = not_ready(Some(results), Some(&at.bench), *next, now)?;
        let left = found
            .until
            .map_or(f64::INFINITY, |until| until.since(now.instant()).minutes());
        Some((found.step.work, left))
    })
}

/// Common practice: dough that has just been made has not risen, bread that has just gone in is not
/// baked; a preferment needs a night.
#[test]
fn what_has_just_begun_is_not_ready() {
    for example in [0, TOAST] {
        let waits = waits(example);
        let told: Vec<StepKind> = waits
            .iter()
            .filter_map(|wait| Some(at_share(wait, 0.02)?.0))
            .collect();
        for kind in [StepKind::Bulk, StepKind::Rest, StepKind::Bake] {
            assert!(told.contains(&kind), "{example}: {kind:?} in {told:?}");
        }
        assert_eq!(
            told.contains(&StepKind::ChillPreferment),
            example == 0,
            "{told:?}"
        );
    }
}

/// By definition: nothing is told at the planned end, and less time is left as the clock goes on.
#[test]
fn what_is_over_as_planned_is_ready() {
    for example in [0, TOAST] {
        for wait in waits(example) {
            assert_eq!(at_share(&wait, 1.0), None, "{:?}", wait.2);
            let left = [0.1, 0.5].map(|share| at_share(&wait, share));
            if let [Some(first), Some(then)] = left {
                assert!(then.1 < first.1, "{:?}", wait.2);
            }
        }
    }
}

/// Common practice: a home oven is hot after some 20 minutes. One that is on is told of until then, one
/// that is off until somebody lights it.
#[test]
fn a_cold_oven_is_not_ready_for_the_bread() {
    let waits = waits(TOAST);
    let bake = StepAt {
        work: StepKind::Bake,
        of: 0,
    };
    let heats = waits
        .iter()
        .find(|wait| wait.2.work == StepKind::Preheat)
        .unwrap();
    let (now, _, preheat, at) = heats;
    let off = at.ask(*now, |_, results| {
        not_ready(Some(results), Some(&at.bench), bake, *now)
    });
    let off = off.unwrap();
    assert_eq!((off.step.work, off.until), (StepKind::Preheat, None));
    let mut lit = at.clone();
    at.ask(*now, |_, results| {
        step_done(&mut lit.bench, results, *preheat, *now);
    });
    let on = lit.ask(*now, |_, results| {
        not_ready(Some(results), Some(&lit.bench), *preheat, *now)
    });
    assert_eq!(on, None, "lighting it waits for nothing");
    let hot = after(now.milliseconds(), 25.0);
    lit.ask(hot, |_, results| {
        let found = not_ready(Some(results), Some(&lit.bench), bake, hot).unwrap();
        assert_eq!(
            found.step.work,
            StepKind::Proof,
            "it is hot, the dough rises"
        );
    });
}

/// By definition: a step that is only set going is not begun by being shown, and so what it waits for
/// is told as long as it runs; one that is done by hand has ended what it waited for.
#[test]
fn a_bake_that_is_begun_early_still_says_what_is_not_ready() {
    for wait in waits(TOAST) {
        let (began, _, next, at) = &wait;
        if at_share(&wait, 0.02).is_none() {
            continue;
        }
        let now = Moment::from_instant(began.instant().later(minutes(1.0)));
        let mut early = at.clone();
        at.ask(now, |_, results| {
            begin_early(&mut early.bench, results, *next, now);
        });
        let still = early.ask(now, |_, results| {
            not_ready(Some(results), Some(&early.bench), *next, now)
        });
        let is_set_going = matches!(
            next.work,
            StepKind::Preheat | StepKind::Bake | StepKind::Cool
        );
        assert_eq!(still.is_some(), is_set_going, "{next:?}");
    }
}
