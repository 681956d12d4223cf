//! A step that the bench shows and that hands are at: the plan goes by when it became due.

use softcrumb::results::day::{DayResults, Doing, bench_screen, doing, step_done, to_keep};
use softcrumb::sheet::Moment;

use crate::starts_now::{AtBench, FRIDAY, after};

/// By definition: a baker who does each step as it becomes due, and takes as long as it keeps hands
/// busy, is on time, also while a step is under way.
#[test]
fn what_comes_next_is_not_later_with_each_minute_of_a_step_under_way() {
    let start = after(FRIDAY, 0.0);
    let mut at = AtBench::of(0, start);
    let begins = at.ask(start, |_, results| results.solved.begins);
    let mut now = Moment::from_instant(begins);
    let mut seen = 0;
    for _ in 0..40 {
        let bench = at.bench.clone();
        let screen = at.ask(now, |_, results| {
            bench_screen(Some(results), Some(&bench), now)
        });
        let Some(step) = screen.step else { break };
        if let Some(until) = screen.idle_until {
            now = Moment::from_instant(until);
            continue;
        }
        at.bench.at = at.ask(now, |_, results| to_keep(&bench, results, now).or(bench.at));
        let next = |results: &DayResults| {
            let place = results.plan.place(step).unwrap();
            let after = results
                .steps()
                .filter(|(one, _)| one.after.contains(&place));
            after.map(|(_, timed)| timed.begins).min()
        };
        let (hands, planned) = at.ask(now, |_, results| {
            (results.find(step).unwrap().0.hands, next(results))
        });
        let half = after(now.milliseconds(), hands.minutes() * 0.6);
        let then = at.ask(half, |_, results| next(results));
        let by_hand = doing(step.work) == Doing::ByHand;
        if let (true, Some(planned), Some(then)) = (by_hand, planned, then) {
            let late = then.since(planned).minutes();
            assert!(late < 1.0, "{step:?}: what comes then is {late} min later");
        }
        seen += usize::from(hands.minutes() >= 5.0);
        now = Moment::from_instant(now.instant().later(hands));
        let mut bench = at.bench.clone();
        at.ask(now, |_, results| step_done(&mut bench, results, step, now));
        at.bench = bench;
    }
    assert!(seen >= 4, "{seen} steps that take a while");
}
