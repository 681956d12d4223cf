//! The time the bread is ready: its range contains the likely time, and narrows as steps are done.

use proptest::prelude::*;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Instant, Minutes};
use softcrumb::results::day::{self, DayInput, DayResults, ReadyItem, ReadyRange, begin_bake};
use softcrumb::results::run::StageKind;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings, Target};
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};
use softcrumb::text::{FormatOptions, day::calendar_events};

use crate::dough::cases;
use crate::heat_cases::celsius;

/// Friday, 27 March 2026, 18:00.
const NOW: i64 = 1_774_634_400;

fn at(seconds: i64) -> Moment {
    Moment::from_instant(Instant::from_seconds(seconds).unwrap())
}

struct Kept {
    sheet: Sheet,
    kitchen: Kitchen,
    settings: DaySettings,
}

impl Kept {
    fn new(example: usize, room: f64, ahead: i64) -> Self {
        Self {
            sheet: examples().remove(example).1,
            kitchen: Kitchen {
                room: celsius(room),
                ..Kitchen::default()
            },
            settings: DaySettings {
                target: Target::Table(at(NOW + ahead)),
                sleep: None,
                ..DaySettings::default()
            },
        }
    }

    fn input<'k>(&'k self, now: Moment, zone: &'k Zone, bench: Option<&'k Bench>) -> DayInput<'k> {
        DayInput {
            sheet: &self.sheet,
            kitchen: &self.kitchen,
            settings: &self.settings,
            learnt: LEARNT.get_or_init(Learnt::default),
            rounded: None,
            zone,
            now,
            bench,
        }
    }

    fn plan(&self, now: Moment, bench: Option<&Bench>) -> DayResults {
        day::of(&self.input(now, &Zone::default(), bench)).unwrap()
    }

    /// A bake that begins now.
    fn bench(&self) -> Bench {
        let (now, zone) = (at(NOW), Zone::default());
        let plan = self.plan(now, None);
        begin_bake(
            Id::from_random(1),
            None,
            now,
            &self.input(now, &zone, None),
            Some(&plan),
        )
    }
}

static LEARNT: std::sync::OnceLock<Learnt> = std::sync::OnceLock::new();

fn widths(ready: &ReadyRange) -> [i64; 2] {
    let likely = ready.likely.seconds();
    [
        likely - ready.soonest.seconds(),
        ready.latest.seconds() - likely,
    ]
}

fn is_in_order(ready: &ReadyRange) -> bool {
    let [soonest, latest] = ready.shown();
    let told = soonest <= ready.soonest && ready.latest <= latest;
    told && ready.soonest <= ready.likely && ready.likely <= ready.latest
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn the_range_contains_the_likely_time_and_never_widens_as_planned(
        example in 0..examples().len(), room in 16.0..30.0f64, hours in 26..40i64,
    ) {
        let kept = Kept::new(example, room, hours * 3600);
        let mut bench = kept.bench();
        let mut before = kept.plan(at(NOW), Some(&bench));
        prop_assume!(before.solved.conflicts.is_empty());
        let planned = before.clone();
        let mut events: Vec<(Instant, bool, StepAt)> = planned
            .steps()
            .flat_map(|(step, timed)| [(timed.begins, false, step.at), (timed.ends, true, step.at)])
            .collect();
        events.sort();
        let mut compared = 0;
        for (time, over, step) in events {
            let now = Moment::from_instant(time.max(bench.bake.began.instant()));
            if over {
                bench.bake.end(step, now);
            } else {
                bench.bake.begin(step, now);
            }
            let after = kept.plan(now, Some(&bench));
            let Some(new) = &after.ready else { continue };
            prop_assert!(is_in_order(new), "{new:?}");
            prop_assert!(new.likely <= after.solved.table);
            // A step that has begun wants no hands any more: the plan may then lengthen another.
            let kept_times = after.solved.steps == before.solved.steps;
            let (old, narrow) = (widths(before.ready.as_ref().unwrap()), widths(new));
            prop_assert!(
                !kept_times || narrow[0] <= old[0] && narrow[1] <= old[1],
                "{step:?} over {over}: {old:?} {narrow:?}",
            );
            compared += u32::from(kept_times);
            before = after;
        }
        prop_assert!(compared > 20, "{compared}");
        let ready = before.ready.unwrap();
        prop_assert!(ready.is_certain(), "{ready:?}");
    }

    /// What is in the fridge for hours absorbs what happened before it.
    #[test]
    fn nothing_before_a_long_time_in_the_fridge_counts(room in 18.0..26.0f64) {
        let kept = Kept::new(0, room, 30 * 3600);
        let plan = kept.plan(at(NOW), None);
        prop_assume!(plan.solved.conflicts.is_empty());
        let ready = plan.ready.clone().unwrap();
        let scald = plan.plan.place(StepAt { work: StepKind::Scald, of: 0 }).unwrap();
        let counts = |item: &ReadyItem| matches!(item, ReadyItem::Step { step, .. } if *step == scald);
        prop_assert!(!ready.later.items.iter().any(counts));
    }
}

/// One bake: what the plan, its calendar and Heat show of a stage is the stage's own number.
#[test]
fn every_place_shows_the_same_number() {
    for (example, (_, sheet)) in examples().into_iter().enumerate() {
        for room in [17.0, 22.0, 27.0] {
            let plan = Kept::new(example, room, 30 * 3600).plan(at(NOW), None);
            let lasts = |kind| {
                let mut stages = plan.run.stages.iter();
                stages
                    .find(|stage| stage.kind == kind)
                    .map(|stage| stage.lasts)
            };
            let step = |work| {
                let mut steps = plan.plan.steps().iter();
                steps.find(|step| step.at.work == work).unwrap()
            };
            for (kind, work) in [
                (StageKind::Bulk, StepKind::Bulk),
                (StageKind::Proof, StepKind::Proof),
            ] {
                let [soonest, likely, latest] = lasts(kind).unwrap();
                assert_eq!(step(work).lasts.wished(), likely);
                assert_eq!(step(work).over_between, Some((soonest, latest)));
            }
            // No plan makes bread cool faster than is likely.
            let [soonest, likely, _] = lasts(StageKind::Cool).unwrap();
            let cool = step(StepKind::Cool).lasts;
            assert_eq!((cool.least(), cool.wished()), (likely, likely));
            assert!(soonest < likely);
            if let Some([_, scald, _]) = lasts(StageKind::Scald) {
                assert_eq!(step(StepKind::Scald).lasts.wished(), scald);
            }
            // Heat shows the programme as it is planned.
            let bake = lasts(StageKind::Bake).unwrap()[1];
            assert_eq!(bake, plan.bake);
            let heat = plan.run.baking.as_ref().unwrap().planned.as_ref().unwrap();
            assert!((bake.minutes() - heat.total.minutes()).abs() < 1e-9);
            let (zone, options) = (Zone::default(), FormatOptions::default());
            let events = calendar_events(&plan, &sheet.formula, "own", &zone, options);
            for (event, (_, timed)) in events.iter().zip(plan.steps()) {
                assert_eq!((event.begins, event.ends), (timed.begins, timed.ends));
            }
        }
    }
}

/// Common practice: a thermometer in the dough tells more than any sum before.
#[test]
fn a_measured_dough_narrows_the_range() {
    let kept = Kept::new(0, 22.0, 30 * 3600);
    let mut bench = kept.bench();
    let before = kept.plan(at(NOW), Some(&bench));
    bench.bake.noted.dough = Some(before.run.dough);
    let after = kept.plan(at(NOW), Some(&bench));
    let [old, new] = [before, after].map(|plan| widths(&plan.ready.unwrap()));
    assert!(new[0] < old[0] && new[1] < old[1], "{old:?} {new:?}");
}

/// JCGM 100:2008, 5.1.2: the sum of squares of everything that is named.
#[test]
fn the_range_is_the_sum_in_quadrature_of_what_it_names() {
    let kept = Kept::new(0, 22.0, 30 * 3600);
    let ready = kept.plan(at(NOW), None).ready.unwrap();
    for path in [&ready.sooner, &ready.later] {
        let mut squares = 0.0;
        for item in &path.items {
            match item {
                ReadyItem::Step { by, .. } | ReadyItem::Dough { by, .. } => {
                    squares += by.minutes().powi(2);
                }
                ReadyItem::Wait { by, .. } => {
                    squares = (f64::sqrt(squares) - by.minutes()).max(0.0).powi(2);
                }
            }
        }
        assert!((f64::sqrt(squares) - path.minutes.minutes()).abs() < 1e-9);
        assert!(path.minutes > Minutes::ZERO);
    }
}
