//! What is noted at the bench: a weight taken back, a paste off the kettle, what the log then says,
//! one count of the steps, and a step that begins before it is due.

use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::formula::LineAt;
use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, learn};
use softcrumb::engine::plan::{Edit, StepKind};
use softcrumb::engine::quantity::{Division, Mass, Minutes, Temperature};
use softcrumb::results::day::{
    self, DayInput, DayResults, FoundWarmth, Moved, as_expected, begin_bake, begin_early,
    bench_list, bench_screen, finish_bake, found_warmth, note_findings, start_now, step_done,
    step_weighing, steps_counted, take_back,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings, Measured};
use softcrumb::sheet::{Id, Kitchen, Moment, examples};

use crate::bench_results::{NOW, begun, celsius, first, with};
use crate::days::{grams, minutes, ms, step};

/// By definition: what was typed is there again, and counts again.
#[test]
fn a_weight_that_was_typed_outlives_its_tick() {
    let at = LineAt { part: 0, line: 2 };
    let mut bench = begun();
    bench.weigh(at, Some(grams(104.0)));
    bench.unweigh(at);
    let scald = step(StepKind::Scald, 0);
    with(Some(&bench), |input, results| {
        let weighing = step_weighing(input, results, scald);
        let line = weighing.line(at).unwrap();
        assert!(!line.is_weighed);
        assert_eq!(line.mass, Some(grams(104.0)), "it is still shown");
        assert_eq!(weighing.so_far, Mass::ZERO, "it is not in the bowl");
        assert_eq!(day::weighing_effect(input).differences, []);
    });
    bench.unweigh(at);
    bench.tick(at);
    assert_eq!(bench.weighing(at).unwrap().mass, Some(grams(104.0)));
    bench.weigh(at, None);
    bench.unweigh(at);
    bench.tick(at);
    assert_eq!(bench.weighing(at).unwrap().mass, None, "as asked");
}

/// What a paste of the example says that is found so warm at a step, so many minutes after stirring.
fn found(kind: StepKind, degrees: f64, after: f64) -> FoundWarmth {
    let mut bench = begun();
    let stirred = ms(NOW);
    bench.bake.end(step(StepKind::Scald, 0), stirred);
    bench.measure(Measured {
        step: step(kind, 0),
        part: 0,
        at: celsius(degrees),
        when: Moment::from_instant(stirred.instant().later(minutes(after))),
    });
    let said = with(Some(&bench), |input, _| {
        found_warmth(input, step(kind, 0), 0)
    });
    said.unwrap()
}

/// Source: wheat starch cooks from 58 to 65 °C, Faltermaier et al., *J. Inst. Brew.* 2014; rye to 70 °C,
/// Lund, *Crit. Rev. Food Sci. Nutr.* 20, 1984.
#[test]
fn a_paste_off_the_kettle_is_judged_by_its_starch() {
    let flours = &first().formula.parts[0].lines;
    let has_rye = flours.iter().any(|line| line.food.name().contains("ye"));
    let ends = if has_rye { 70.0 } else { 65.0 };
    for (kind, after) in [(StepKind::Scald, 0.0), (StepKind::CoolPaste, 2.0)] {
        let FoundWarmth::Fresh(short) = found(kind, 55.0, after) else {
            panic!("{kind:?}: it is not told that the paste is short");
        };
        assert!(short.is_short());
        assert_eq!(short.goal, celsius(ends));
        assert!(short.begins <= celsius(58.0));
    }
    let FoundWarmth::Fresh(hot) = found(StepKind::Scald, ends, 0.0) else {
        panic!("a hot paste is not told");
    };
    assert!(!hot.is_short());
    // What has cooled for half an hour, or is cold already, or is hot enough, is asked how long it needs.
    for (degrees, after) in [(55.0, 30.0), (4.0, 2.0), (75.0, 2.0)] {
        let said = found(StepKind::CoolPaste, degrees, after);
        assert!(
            matches!(said, FoundWarmth::Needs(_)),
            "{degrees} {after} {said:?}"
        );
    }
}

/// A kitchen whose log has rises that take half as long again.
fn slow() -> Learnt {
    let took = MeasuredDuration {
        expected: minutes(60.0),
        minutes: minutes(90.0),
    };
    let noted = Observation {
        bulk: Some(took),
        ..Observation::default()
    };
    learn(&[noted; 5], Kitchen::default().mixer.friction)
}

fn in_slow_kitchen<T>(
    bench: Option<&Bench>,
    now: Moment,
    ask: impl FnOnce(&DayInput, &DayResults) -> T,
) -> T {
    let sheet = first();
    let weighing = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    let input = DayInput {
        sheet: &sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &slow(),
        rounded: Some(&round(&sheet.formula, weighing)),
        zone: &Zone::default(),
        now,
        bench,
    };
    let results = day::of(&input).unwrap();
    ask(&input, &results)
}

/// By definition: the log has the time that the bench had as the rise began, whatever it had learnt; what
/// is learnt from stays the formula's own time.
#[test]
fn the_log_expects_what_the_bench_did_and_has_the_weights_that_were_typed() {
    let now = ms(NOW);
    let mut bench = in_slow_kitchen(None, now, |input, results| {
        begin_bake(Id::from_random(1), None, now, input, Some(results))
    });
    bench.weigh(LineAt { part: 0, line: 2 }, Some(grams(104.0)));
    bench.weigh(LineAt { part: 0, line: 0 }, None);
    let (bulk, mixed) = (step(StepKind::Bulk, 0), step(StepKind::ButterIn, 0));
    bench.bake.end(step(StepKind::Mix, 0), now);
    let said = in_slow_kitchen(Some(&bench.clone()), now, |_, results| {
        let (one, timed) = results.find(bulk).unwrap();
        step_done(&mut bench, results, mixed, now);
        one.timer(timed.lasts).minutes()
    });
    let timer = bench
        .timers
        .iter()
        .find(|timer| timer.step == bulk)
        .unwrap();
    let planned = said;
    let said = timer.ends.instant().since(now.instant());
    assert!((said.minutes() - planned).abs() < 0.05);
    let up = Moment::from_instant(now.instant().later(minutes(100.0)));
    bench.end(bulk, up);
    let bake = in_slow_kitchen(Some(&bench.clone()), up, |input, results| {
        note_findings(&mut bench, input);
        finish_bake(bench, Some(results), input.settings)
    });
    assert_eq!(as_expected(&bake).bulk.unwrap().expected, said);
    let own = bake.noted.bulk.unwrap().expected;
    assert!(own < said, "learnt from is {own:?}, said was {said:?}");
    let [water] = bake.weighed.as_slice() else {
        panic!("{:?}", bake.weighed);
    };
    assert_eq!((water.asked, water.weighed), (grams(112.0), grams(104.0)));
    assert_eq!(water.food, "Water");
}

/// By definition: bench, list and plan count the same steps, also without the step that begins one that
/// runs by itself.
#[test]
fn the_bench_counts_the_steps_of_its_list() {
    for (id, sheet) in examples() {
        let usual = DaySettings::default();
        let mut without = DaySettings::default();
        without.edits.extend([0, 1, 2].map(|of| Edit::LeftOut {
            step: step(StepKind::MixPreferment, of),
        }));
        for settings in [usual, without] {
            let input = DayInput {
                sheet: &sheet,
                kitchen: &Kitchen::default(),
                settings: &settings,
                learnt: &Learnt::default(),
                rounded: None,
                zone: &Zone::default(),
                now: ms(NOW),
                bench: None,
            };
            let results = day::of(&input).unwrap();
            let bench = begin_bake(Id::from_random(1), None, ms(NOW), &input, Some(&results));
            let screen = bench_screen(Some(&results), Some(&bench), ms(NOW));
            let list = bench_list(&input, &results);
            assert_eq!(screen.of, list.len(), "{id:?}");
            assert_eq!(steps_counted(&results), list.len(), "{id:?}");
            for (number, listed) in (1..).zip(&list) {
                assert_eq!(day::step_count(&results, listed.step.at), Some(number));
                for runs in &listed.runs {
                    assert_eq!(day::step_count(&results, runs.at), None);
                }
            }
        }
    }
}

/// By definition: what is told before the tap is what the plan has after it, and Back leads to where the
/// bench was.
#[test]
fn what_starting_now_does_is_told_before_and_taken_back_after() {
    let mut bench = begun();
    let mut now = ms(NOW);
    let (mut told, mut moved) = (0, 0);
    for _ in 0..60 {
        let before = bench.clone();
        let screen = at(&before, now, |_, results| {
            bench_screen(Some(results), Some(&before), now)
        });
        let Some(next) = screen.step else { break };
        let Some(until) = screen.idle_until else {
            at(&before, now, |_, results| {
                step_done(&mut bench, results, next, now);
            });
            continue;
        };
        // A tap is never at the very moment of the one before it.
        now = Moment::from_instant(now.instant().later(minutes(1.0)));
        let then = at(&before, now, |input, results| {
            start_now(input, results, next).unwrap()
        });
        let mut early = before.clone();
        at(&before, now, |_, results| {
            begin_early(&mut early, results, next, now);
        });
        if early.bake.began(next).is_some() {
            at(&early.clone(), now, |_, results| {
                assert_eq!(results.ready_to_cut(), then.ready, "{next:?}");
                let screen = bench_screen(Some(results), Some(&early), now);
                assert_eq!((screen.step, screen.previous), (Some(next), Some(next)));
                take_back(&mut early, results, now);
            });
            assert_eq!(sorted(early), sorted(before), "{next:?}");
            told += 1;
            moved += i32::from(then.moved != Moved::Same || then.longer.is_some());
        }
        now = Moment::from_instant(until);
    }
    assert!(told >= 2 && moved >= 1, "{told} told, {moved} moved");
}

fn at<T>(bench: &Bench, now: Moment, ask: impl FnOnce(&DayInput, &DayResults) -> T) -> T {
    with(Some(bench), |input, _| {
        let input = DayInput { now, ..*input };
        let results = day::of(&input).unwrap();
        ask(&input, &results)
    })
}

/// The order of the timers says nothing.
fn sorted(mut bench: Bench) -> Bench {
    bench.timers.sort_by_key(|timer| timer.step);
    bench
}

/// By definition: colder of two, and warm enough at least.
#[test]
fn temperatures_are_compared_and_rounded_up() {
    let warm = Temperature::from_celsius(41.2).unwrap();
    assert_eq!(warm.up_to_half_degree(), celsius(41.5));
    assert_eq!(warm.min_of(celsius(40.0)), celsius(40.0));
    assert!(Minutes::ZERO < minutes(1.0));
}
