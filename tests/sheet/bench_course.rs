//! The course of a bake at the bench, through both days: what is due, what runs beside it, and taking
//! back.

use softcrumb::engine::batch::{Rounded, ScaleSettings, round};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Division, Mass, Minutes};
use softcrumb::results::day::{
    self, BenchScreen, DayInput, DayResults, Doing, StepWeighing, begin_bake, bench_screen, doing,
    step_additions, step_done, step_weighing, take_back, to_keep,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings, Timer};
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};

use crate::days::{ms, step};

/// Friday, 27 March 2026, 18:00.
const FRIDAY: f64 = 1_774_634_400_000.0;

fn rounded(sheet: &Sheet) -> Rounded {
    let main = Division::ONE_GRAM;
    round(&sheet.formula, ScaleSettings { main, pocket: None })
}

fn at<T>(
    sheet: &Sheet,
    bench: Option<&Bench>,
    now: Moment,
    ask: impl FnOnce(&DayInput, &DayResults) -> T,
) -> T {
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&rounded(sheet)),
        zone: &Zone::default(),
        now,
        bench,
    };
    let results = day::of(&input).unwrap();
    ask(&input, &results)
}

fn begun(sheet: &Sheet, now: Moment) -> Bench {
    at(sheet, None, now, |input, results| {
        begin_bake(Id::from_random(1), None, now, input, Some(results))
    })
}

fn later(now: Moment, minutes: Minutes) -> Moment {
    Moment::from_instant(now.instant().later(minutes))
}

/// A baker who does each step when it is due, as long as it keeps hands busy.
fn bake_through(
    sheet: &Sheet,
    mut see: impl FnMut(&Bench, &DayResults, &BenchScreen, Moment),
) -> Bench {
    let mut now = ms(FRIDAY);
    let mut bench = begun(sheet, now);
    for _ in 0..80 {
        let screen = at(sheet, Some(&bench), now, |_, results| {
            let screen = bench_screen(Some(results), Some(&bench), now);
            see(&bench, results, &screen, now);
            screen
        });
        let Some(step) = screen.step else { break };
        if let Some(until) = screen.idle_until {
            now = Moment::from_instant(until);
            continue;
        }
        now = at(sheet, Some(&bench.clone()), now, |_, results| {
            let hands = results.find(step).unwrap().0.hands;
            let done = later(now, hands);
            step_done(&mut bench, results, step, done);
            done
        });
    }
    bench
}

/// Twenty-five taps are what `In the hand` allows for two days; each step is done once, in the order
/// of work, and nothing that is due tomorrow begins tonight.
#[test]
fn two_days_at_the_bench_take_a_tap_a_step_and_nothing_begins_before_its_time() {
    for (id, sheet) in examples() {
        let (mut waits, mut taps) = (0, 0);
        let bench = bake_through(&sheet, |bench, results, screen, now| {
            let Some(step) = screen.step else { return };
            if let Some(until) = screen.idle_until {
                waits += 1;
                assert!(until > now.instant());
                assert_eq!(bench.bake.began(step), None, "{id:?} {step:?} began early");
            } else {
                taps += 1;
                // What it waits for was begun, and is over by its timer or by hand.
                let (one, _) = results.find(step).unwrap();
                for input in one
                    .after
                    .iter()
                    .map(|place| results.plan.steps()[*place].at)
                {
                    let timer = bench.timers.iter().find(|timer| timer.step == input);
                    assert!(
                        bench.bake.began(input).is_some(),
                        "{id:?} {step:?} {input:?}"
                    );
                    assert!(
                        timer.is_none_or(|timer| timer.ends <= now),
                        "{step:?} {input:?}"
                    );
                }
            }
        });
        assert!(taps <= 24, "{id:?}: {taps} taps");
        assert!(waits >= 3, "{id:?}: {waits} waits");
        all_was_done(&sheet, &bench);
    }
}

/// Every step began; all are over but the cooling, whose timer alone runs on.
fn all_was_done(sheet: &Sheet, bench: &Bench) {
    let steps: Vec<StepAt> = at(sheet, Some(bench), ms(FRIDAY), |_, results| {
        let steps = results.plan.steps().iter();
        steps.map(|step| step.at).collect()
    });
    for step in steps {
        assert!(bench.bake.began(step).is_some(), "{step:?} never began");
        let over = bench.bake.is_over(step);
        assert_eq!(over, step.work != StepKind::Cool, "{step:?}");
    }
    let timers: Vec<StepKind> = bench.timers.iter().map(|timer| timer.step.work).collect();
    assert_eq!(timers, [StepKind::Cool], "a timer ends with its step");
}

/// A rise is noted as long as it took: from the end of mixing until the dough is divided.
#[test]
fn a_rise_is_noted_from_the_work_before_it_to_the_work_after_it() {
    let sheet = examples().remove(0).1;
    let bench = bake_through(&sheet, |_, _, _, _| {});
    let done = |work: StepKind| {
        let mut steps = bench.bake.steps.iter();
        steps.find(|done| done.step.work == work).cloned().unwrap()
    };
    let bulk = done(StepKind::Bulk);
    assert_eq!(Some(bulk.began), done(StepKind::ButterIn).ended);
    assert_eq!(bulk.ended, Some(done(StepKind::Divide).began));
    let promised = bench.planned(bulk.step).unwrap().lasts.minutes();
    let took = bulk.ended.unwrap().instant().since(bulk.began.instant());
    assert!(
        (took.minutes() - promised).abs() < 15.0,
        "{took:?} {promised}"
    );
}

fn sorted(timers: &[Timer]) -> Vec<(StepAt, Moment)> {
    let mut all: Vec<_> = timers
        .iter()
        .map(|timer| (timer.step, timer.ends))
        .collect();
    all.sort_by_key(|(step, _)| *step);
    all
}

/// By definition: taking back leaves what was there before.
#[test]
fn back_undoes_done_at_every_step() {
    let sheet = examples().remove(0).1;
    let mut seen = 0;
    bake_through(&sheet, |bench, results, screen, now| {
        let (Some(step), None) = (screen.step, screen.idle_until) else {
            return;
        };
        let mut after = bench.clone();
        let done = later(now, Minutes::from_minutes(3.0).unwrap());
        step_done(&mut after, results, step, done);
        assert_ne!(&after, bench);
        take_back(&mut after, results, done);
        let again = bench_screen(Some(results), Some(&after), done);
        assert_eq!((again.step, again.idle_until), (Some(step), None));
        // What had begun before has begun; what began with it, or after, has not.
        for was in &bench.bake.steps {
            assert!(after.bake.began(was.step).is_some(), "{step:?} {was:?}");
        }
        let new = after
            .bake
            .steps
            .iter()
            .filter(|one| bench.bake.began(one.step).is_none());
        assert!(new.clone().all(|one| one.step == step), "{step:?}");
        let ahead = |bench: &Bench| {
            let timers = sorted(&bench.timers).into_iter();
            timers.filter(|(_, ends)| *ends > done).collect::<Vec<_>>()
        };
        if doing(step.work) == Doing::SetGoing {
            assert_eq!(ahead(&after), ahead(bench), "{step:?}");
        }
        seen += 1;
    });
    assert!(seen > 12, "{seen}");
}

/// By definition: what is not done is still to be done, however late it is.
#[test]
fn a_step_that_is_open_stays_until_it_is_done() {
    let mut gone = 0;
    for (id, sheet) in examples() {
        let mut seen = Vec::new();
        bake_through(&sheet, |bench, results, screen, now| {
            if let (Some(step), None) = (screen.step, screen.idle_until) {
                let mut kept = bench.clone();
                kept.at = to_keep(bench, results, now).or(bench.at);
                assert_eq!(kept.at, Some(step), "{id:?} {step:?}");
                assert_eq!(to_keep(&kept, results, now), None);
                seen.push((step, bench.clone(), kept, now));
            }
        });
        for (step, bench, kept, now) in seen {
            for past in [4.0, 20.0, 90.0, 600.0] {
                let then = later(now, Minutes::from_minutes(past).unwrap());
                let shown = |bench: &Bench| {
                    at(&sheet, Some(bench), then, |_, results| {
                        let screen = bench_screen(Some(results), Some(bench), then);
                        (screen.step, screen.idle_until)
                    })
                };
                assert_eq!(shown(&kept), (Some(step), None), "{id:?} {past} min");
                gone += usize::from(shown(&bench) != (Some(step), None));
            }
        }
    }
    assert!(gone > 0, "none would have gone by itself");
}

/// Common practice: flour goes into a dough that is being mixed, never into one that bakes.
#[test]
fn more_flour_is_offered_where_it_can_still_go_in() {
    let sheet = examples().remove(0).1;
    let mut bench = begun(&sheet, ms(FRIDAY));
    let mix = step(StepKind::Mix, 0);
    let milk = at(&sheet, Some(&bench), ms(FRIDAY), |input, results| {
        step_weighing(input, results, mix).places()[1]
    });
    bench.weigh(milk, Mass::from_grams(140.0).ok());
    at(&sheet, Some(&bench), ms(FRIDAY), |input, results| {
        let offered = |work| step_additions(input, results, step(work, 0));
        assert_eq!(offered(StepKind::Mix).len(), 1);
        assert_eq!(offered(StepKind::ButterIn).len(), 1);
        for work in [
            StepKind::Scald,
            StepKind::Divide,
            StepKind::Bake,
            StepKind::Cool,
        ] {
            assert_eq!(offered(work), [], "{work:?}");
        }
    });
    let tipped = |bench: &Bench| -> StepWeighing {
        at(&sheet, Some(bench), ms(FRIDAY), |input, results| {
            step_weighing(input, results, mix)
        })
    };
    let before = tipped(&bench).so_far;
    bench.put_in(step(StepKind::Scald, 0), true);
    let after = tipped(&bench);
    let paste = after.part(0).unwrap();
    assert!(paste.is_in);
    // 58 + 14 + 112 g stirred in, 5 g of steam lost.
    assert!((paste.mass.grams() - 179.0).abs() < 3.0, "{:?}", paste.mass);
    assert_eq!(
        (after.so_far.grams() - before.grams()).round(),
        paste.mass.grams().round()
    );
}
