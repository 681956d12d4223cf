//! A bake that runs ahead of its time: the bread as soon as the dough allows, and one time of it
//! everywhere.

use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{Aim, Change, Conflict, StepKind};
use softcrumb::results::day::{
    self, BenchStep, ConflictedPlan, DayInput, DayResults, Moved, ReadyTime, begin_bake,
    begin_early, bench_screen, bench_step, duration_changes, start_now, step_corrections,
    step_done,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings, Target};
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};

use crate::bench_results::celsius;
use crate::days::{minutes, ms, step};

/// Saturday, 28 March 2026, 9:00: the plan is for Sunday at 16:00.
const SATURDAY: f64 = 1_774_688_400_000.0;
/// Friday, 18:00: the plan is for Saturday at 16:00.
pub(crate) const FRIDAY: f64 = 1_774_634_400_000.0;

pub(crate) fn after(start: f64, by: f64) -> Moment {
    ms(start + by * 60_000.0)
}

pub(crate) fn ask<T>(
    (sheet, settings): (&Sheet, &DaySettings),
    bench: Option<&Bench>,
    now: Moment,
    run: impl FnOnce(&DayInput, &DayResults) -> T,
) -> T {
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings,
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now,
        bench,
    };
    let results = day::of(&input).unwrap();
    run(&input, &results)
}

/// An example at the bench: the sheet, its settings and the bake under way.
#[derive(Clone)]
pub(crate) struct AtBench {
    pub(crate) sheet: Sheet,
    settings: DaySettings,
    pub(crate) bench: Bench,
}

impl AtBench {
    pub(crate) fn of(example: usize, now: Moment) -> Self {
        let (sheet, settings) = (examples().remove(example).1, DaySettings::default());
        let bench = ask((&sheet, &settings), None, now, |input, results| {
            begin_bake(Id::from_random(1), None, now, input, Some(results))
        });
        Self {
            sheet,
            settings,
            bench,
        }
    }

    pub(crate) fn ask<T>(&self, now: Moment, run: impl FnOnce(&DayInput, &DayResults) -> T) -> T {
        let of = (&self.sheet, &self.settings);
        ask(of, Some(&self.bench), now, run)
    }

    /// Does the steps that are due until one is to be waited for, each as long as it keeps hands busy;
    /// returns when that is, and the step that is next.
    pub(crate) fn until_it_waits(&mut self, start: Moment) -> (Moment, StepKind) {
        let mut now = start;
        for _ in 0..30 {
            let bench = self.bench.clone();
            let (next, waits) = self.ask(now, |_, results| {
                let screen = bench_screen(Some(results), Some(&bench), now);
                (screen.step.unwrap(), screen.idle_until.is_some())
            });
            if waits {
                return (now, next.work);
            }
            let mut after = bench;
            now = self.ask(now, |_, results| {
                let hands = results.find(next).unwrap().0.hands;
                let done = Moment::from_instant(now.instant().later(hands));
                step_done(&mut after, results, next, done);
                done
            });
            self.bench = after;
        }
        panic!("nothing is waited for");
    }

    /// Begins the next step at once.
    fn begin(&mut self, now: Moment) {
        let mut bench = self.bench.clone();
        self.ask(now, |_, results| {
            let screen = bench_screen(Some(results), Some(&bench), now);
            begin_early(&mut bench, results, screen.step.unwrap(), now);
        });
        self.bench = bench;
    }
}

/// The place of the toast loaf among the examples: it has no night.
pub(crate) const TOAST: usize = 1;

/// Common practice: a straight dough is mixed and baked in one go, within half a day, and risen dough
/// does not wait for tomorrow.
#[test]
fn a_dough_without_a_night_that_is_begun_now_is_ready_as_soon_as_it_can_be() {
    let mut at = AtBench::of(TOAST, ms(SATURDAY));
    let mix = step(StepKind::Mix, 0);
    // The bench says it before the tap.
    let told = at.ask(ms(SATURDAY), |input, results| {
        start_now(input, results, mix).unwrap()
    });
    assert!(matches!(told.moved, Moved::Earlier(_)), "{told:?}");
    assert_eq!(told.conflicts, []);
    at.begin(ms(SATURDAY));
    let (now, next) = at.until_it_waits(ms(SATURDAY));
    assert_eq!(next, StepKind::Divide);
    let bench = at.bench.clone();
    at.ask(now, |input, results| {
        let ready = results.ready_to_cut();
        let hours = ready.since(ms(SATURDAY).instant()).minutes() / 60.0;
        assert!((4.0..10.0).contains(&hours), "ready after {hours} h");
        assert!(ready.since(told.ready).minutes() < 10.0, "as it was told");
        assert_eq!(results.solved.conflicts, []);
        assert_eq!(results.solved.table, ready, "one time");
        assert_eq!(results.aim, Aim::Table(ready));
        let screen = bench_screen(Some(results), Some(&bench), now);
        let (_, bulk) = results.find(step(StepKind::Bulk, 0)).unwrap();
        let waits = screen.idle_until.unwrap().since(bulk.ends).minutes();
        assert!(waits < 1.5, "the dough is divided when it has risen");
        let found = step_corrections(input, results, step(StepKind::Bulk, 0));
        assert!(matches!(found.ready, Some(ReadyTime::Moved { now, .. }) if now == ready));
    });
}

/// Common practice: what is in the fridge may stay there longer, and the bread is ready when it was to
/// be.
#[test]
fn a_preferment_that_is_begun_an_hour_early_stays_cold_longer() {
    let mut at = AtBench::of(0, after(FRIDAY, -60.0));
    let (begins, table) = at.ask(after(FRIDAY, -60.0), |_, results| {
        (results.solved.begins, results.solved.table)
    });
    let early = Moment::from_instant(begins.earlier(minutes(30.0)));
    at.begin(early);
    let (now, _) = at.until_it_waits(early);
    at.ask(now, |_, results| {
        assert!(!results.gives_way);
        assert_eq!(results.solved.table, table);
        assert_eq!(results.solved.conflicts, []);
    });
}

/// By definition: a time that is set while the bake is under way is a wish, and what is against it is
/// told.
#[test]
fn a_time_set_during_the_bake_is_kept_and_the_conflict_told() {
    let mut at = AtBench::of(TOAST, ms(SATURDAY));
    at.begin(ms(SATURDAY));
    let (now, _) = at.until_it_waits(ms(SATURDAY));
    let set = after(SATURDAY, 60.0 * 34.0);
    at.settings.target = Target::Table(set);
    let (plan, ready) = at.ask(now, |_, results| {
        assert!(!results.gives_way);
        assert_eq!(results.solved.table, set.instant());
        let waits = |one: &Conflict| matches!(one, Conflict::Waits { .. });
        assert!(results.solved.conflicts.iter().any(waits));
        (ConflictedPlan::of(results).unwrap(), results.solved.table)
    });
    let earlier = plan.solutions().into_iter().find_map(|one| match one {
        Change::TableEarlier(at) => Some(at),
        Change::TableLater(_) | Change::LetLast { .. } | Change::HelpingHand => None,
    });
    let earlier = earlier.unwrap();
    assert!(earlier < ready);
    // Taken, it is the time that every line has.
    at.settings.target = Target::Table(Moment::from_instant(earlier));
    at.ask(now, |_, results| {
        assert_eq!(results.solved.conflicts, []);
        let off = earlier.since(results.ready_to_cut()).minutes();
        assert!(
            off < 5.0,
            "ready {off} min before the time that was offered, to five minutes"
        );
    });
}

/// Common practice: a warmer dough is up sooner, and so is the bread ready; cool bread is not cooling.
#[test]
fn a_dough_measured_warmer_has_one_time_of_the_bread() {
    let mut at = AtBench::of(TOAST, ms(SATURDAY));
    let start = at.ask(ms(SATURDAY), |_, results| results.solved.begins);
    let start = Moment::from_instant(start);
    at.begin(start);
    at.bench.bake.noted.dough = Some(celsius(28.0));
    let (now, next) = at.until_it_waits(start);
    assert_eq!(next, StepKind::Divide);
    let bench = at.bench.clone();
    at.ask(now, |input, results| {
        let bulk = step(StepKind::Bulk, 0);
        let found = step_corrections(input, results, bulk);
        let Some(ReadyTime::Moved { planned, now }) = found.ready else {
            panic!("{:?}", found.ready);
        };
        assert_eq!(now, results.ready_to_cut());
        assert!(now < planned);
        assert!(found.rise.is_some());
        let told = |kind: StepKind| found.durations.iter().any(|one| one.step.work == kind);
        assert!(!told(StepKind::Cool), "{:?}", found.durations);
        assert!(!told(StepKind::Bulk), "the rise is told once");
        let all = duration_changes(results, &bench);
        assert!(all.iter().any(|one| one.step == bulk));
    });
}

/// Common practice: a home oven is hot after some 20 minutes, and then stands hot.
#[test]
fn an_oven_that_is_lit_early_is_hot_early_and_the_bread_not_later() {
    let mut at = AtBench::of(TOAST, ms(SATURDAY));
    at.bench.bake.noted.dough = Some(celsius(27.0));
    at.begin(ms(SATURDAY));
    let mut now = ms(SATURDAY);
    for _ in 0..12 {
        let (until, next) = at.until_it_waits(now);
        now = until;
        if next == StepKind::Preheat {
            break;
        }
        at.begin(now);
    }
    let heats = step(StepKind::Preheat, 0);
    let told = at.ask(now, |input, results| {
        let told = start_now(input, results, heats).unwrap();
        assert!(told.ready <= results.ready_to_cut().later(minutes(3.0)));
        assert_eq!(told.longer, None);
        told
    });
    assert!(told.hot.unwrap() >= minutes(10.0));
    let mut bench = at.bench.clone();
    at.ask(now, |_, results| step_done(&mut bench, results, heats, now));
    at.bench = bench;
    at.ask(after(now.milliseconds(), 2.0), |_, results| {
        let (_, heated) = results.find(heats).unwrap();
        assert!((heated.lasts.minutes() - 20.0).abs() < 0.1);
        assert_eq!(results.solved.conflicts, []);
    });
}

/// By definition: what should be is what was planned, whatever the thermometer says.
#[test]
fn the_dough_should_be_as_warm_as_it_was_planned() {
    let mut at = AtBench::of(0, ms(FRIDAY));
    let butter = step(StepKind::ButterIn, 0);
    let should = |at: &AtBench| {
        at.ask(ms(FRIDAY), |input, results| {
            bench_step(input, results, butter)
        })
    };
    let planned = should(&at);
    assert!(matches!(planned, Some(BenchStep::ButterIn { .. })));
    at.bench.bake.noted.dough = Some(celsius(24.0));
    assert_eq!(should(&at), planned);
}
