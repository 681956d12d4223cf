//! Records of the day: settings, log and bench come back as they were, and damage is answered.

use softcrumb::engine::formula::LineAt;
use softcrumb::engine::learn::{
    MeasuredCooling, MeasuredDuration, MeasuredSteam, Observation, WeighedLoss,
};
use softcrumb::engine::plan::{Edit, Loads, StepAt, StepKind};
use softcrumb::engine::quantity::{Factor, Mass, Minutes, Share, Temperature};
use softcrumb::engine::rise::YeastActivity;
use softcrumb::sheet::civil::Clock;
use softcrumb::sheet::day::{
    Bake, Bench, Crust, DaySettings, Findings, Log, Measured, PlanSnapshot, Resets, Sleep, Target,
    WeighedOtherwise,
};
use softcrumb::sheet::{Id, Moment};
use softcrumb::storage::record::Record;

pub(crate) fn ms(milliseconds: f64) -> Moment {
    Moment::from_milliseconds(milliseconds).unwrap()
}

pub(crate) fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

fn celsius(c: f64) -> Temperature {
    Temperature::from_celsius(c).unwrap()
}

pub(crate) fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

pub(crate) const fn step(work: StepKind, of: u16) -> StepAt {
    StepAt { work, of }
}

/// Everything filled in.
pub(crate) fn settings() -> DaySettings {
    let mut settings = DaySettings {
        target: Target::Table(ms(1_774_800_000_000.0)),
        sleep: Some(Sleep {
            from: Clock::from_hour(22, 15).unwrap(),
            until: Clock::from_hour(5, 45).unwrap(),
        }),
        one_pair_of_hands: false,
        loads: Loads::of(3.try_into().unwrap()),
        edits: vec![
            Edit::Duration {
                step: step(StepKind::Rest, 0),
                minutes: minutes(22.5),
            },
            Edit::LeftOut {
                step: step(StepKind::Bake, 1),
            },
            Edit::Sooner {
                step: step(StepKind::ButterIn, 0),
            },
            Edit::Added {
                after: step(StepKind::Bulk, 0),
                number: 4,
                name: "Fold, \"gently\"".to_owned(),
                minutes: minutes(5.0),
                hands: minutes(4.0),
            },
        ],
        ..DaySettings::default()
    };
    settings.rises.proof_place = Temperature::from_celsius(29.5).ok();
    settings.rises.bulk_place = Temperature::from_celsius(27.0).ok();
    let share = |component: f64| Share::from_fraction(component).unwrap();
    settings.rises.dough = YeastActivity::of(share(0.025), share(0.1), share(0.018)).ok();
    settings
}

fn steam() -> MeasuredSteam {
    MeasuredSteam {
        expected: grams(6.5),
        weighed: WeighedLoss {
            before: grams(150.0),
            after: grams(141.5),
        },
    }
}

fn cooling() -> MeasuredCooling {
    MeasuredCooling {
        expected: celsius(31.5),
        found: celsius(29.0),
        factor: Factor::from_number(1.125).unwrap(),
        within: Share::from_fraction(0.0625).unwrap(),
    }
}

fn found() -> Findings {
    Findings {
        water: Share::from_fraction(0.6725).ok(),
        paste: Temperature::from_celsius(8.5).ok(),
        bread: Some(grams(762.0)),
        core: Temperature::from_celsius(92.5).ok(),
        crust: Some(Crust::Golden),
    }
}

pub(crate) fn bake(number: u64) -> Bake {
    let hours = f64::from(u32::try_from(number).unwrap());
    let mut bake = Bake::new(
        Id::from_random(number),
        ms(1_774_700_000_000.0 + hours * 3.6e6),
    );
    bake.formula = Id::from_text("lanternloaf");
    bake.name = "Evening class loaf".to_owned();
    bake.kitchen = "Lantern Lane".to_owned();
    bake.room = Temperature::from_celsius(19.5).ok();
    bake.note = "Rose slowly;\nnext time warmer.".to_owned();
    bake.noted = Observation {
        unmixed: Temperature::from_celsius(16.25).ok(),
        warmed_for: Minutes::from_minutes(8.5).ok(),
        dough: Temperature::from_celsius(25.5).ok(),
        mixing: Some(minutes(9.5)),
        bowl: Some(WeighedLoss {
            before: grams(905.0),
            after: grams(893.5),
        }),
        oven_loss: Some(WeighedLoss {
            before: grams(850.0),
            after: grams(762.0),
        }),
        bulk: Some(MeasuredDuration {
            expected: minutes(60.0),
            minutes: minutes(74.0),
        }),
        proof: None,
        bake: Some(MeasuredDuration {
            expected: minutes(25.0),
            minutes: minutes(27.0),
        }),
        steam: Some(steam()),
        cooling: Some(cooling()),
    };
    bake.found = found();
    bake.begin(step(StepKind::Scald, 0), bake.began);
    bake.end(step(StepKind::Scald, 0), ms(1_774_900_000_000.0));
    bake.begin(step(StepKind::Bulk, 0), ms(1_774_900_100_000.0));
    bake
}

pub(crate) fn log() -> Log {
    let resets = Resets {
        rises: Some(ms(1_774_000_000_000.0)),
        ..Resets::default()
    };
    Log::of(vec![bake(2), bake(1)], resets)
}

pub(crate) fn bench() -> Bench {
    let mut bench = Bench::new(bake(5));
    bench.at = Some(step(StepKind::Bulk, 0));
    bench.set_timer(step(StepKind::Bulk, 0), ms(1_774_900_200_500.0));
    bench.set_timer(step(StepKind::Melt, 0), ms(1_774_900_300_000.0));
    bench.hear(ms(1_774_900_200_600.0));
    let line = |line| LineAt { part: 2, line };
    bench.weigh(line(0), None);
    bench.weigh(line(1), Some(grams(118.0)));
    bench.put_in(step(StepKind::Scald, 0), true);
    bench.planned = vec![PlanSnapshot {
        step: step(StepKind::Bulk, 0),
        begins: ms(1_774_900_000_000.0),
        lasts: minutes(61.5),
    }];
    bench.measure(Measured {
        step: step(StepKind::ChillPaste, 0),
        part: 0,
        at: Temperature::from_celsius(8.5).unwrap(),
        when: ms(1_774_890_000_000.0),
    });
    bench.let_last(step(StepKind::Proof, 0), minutes(75.0));
    bench.bulk_place = Temperature::from_celsius(29.0).ok();
    bench.proof_place = Temperature::from_celsius(31.0).ok();
    bench
}

/// The same with what later releases note: a weight that was taken back, a step begun early, what the
/// bench expected, what was weighed otherwise.
fn noted_bench() -> Bench {
    let mut bench = bench();
    let line = LineAt { part: 2, line: 2 };
    bench.weigh(line, Some(grams(52.5)));
    bench.unweigh(line);
    bench.early = Some(step(StepKind::Bulk, 0));
    let bulk = step(StepKind::Bulk, 0);
    bench.bake.begin(bulk, ms(1_774_900_000_000.0));
    bench.bake.expect(bulk, minutes(88.5));
    bench.bake.weighed = vec![WeighedOtherwise {
        food: "Milk, whole".to_owned(),
        asked: grams(118.0),
        weighed: grams(104.0),
    }];
    bench
}

#[test]
fn everything_comes_back() {
    assert_eq!(DaySettings::read(&settings().write()), Ok(settings()));
    let sleepless = DaySettings {
        sleep: None,
        target: Target::From(ms(1.0)),
        ..DaySettings::default()
    };
    assert_eq!(DaySettings::read(&sleepless.write()), Ok(sleepless));
    let mut for_a_class = DaySettings::default();
    for_a_class.loads.between = minutes(12.5);
    for_a_class.loads.staggered = true;
    assert_eq!(DaySettings::read(&for_a_class.write()), Ok(for_a_class));
    assert_eq!(
        DaySettings::read(&DaySettings::default().write()),
        Ok(DaySettings::default())
    );
    assert_eq!(Log::read(&log().write()), Ok(log()));
    assert_eq!(Log::read(&Log::default().write()), Ok(Log::default()));
    assert_eq!(Bench::read(&bench().write()), Ok(bench()));
    assert_eq!(Bench::read(&noted_bench().write()), Ok(noted_bench()));
}

#[test]
fn what_is_left_out_is_as_usual() {
    let least = r#"{"softcrumb":"day","version":1}"#;
    assert_eq!(DaySettings::read(least), Ok(DaySettings::default()));
    let least = r#"{"softcrumb":"log","version":1,"bakes":[{"id":"a","began_ms":0}]}"#;
    assert_eq!(Log::read(least).unwrap().bakes().len(), 1);
}

#[test]
fn the_log_keeps_order_and_each_bake_once() {
    let mut log = log();
    let began: Vec<f64> = log
        .bakes()
        .iter()
        .map(|bake| bake.began.milliseconds())
        .collect();
    assert!(began.is_sorted());
    let mut again = bake(1);
    again.note = "Changed".to_owned();
    log.put(again);
    assert_eq!(log.bakes().len(), 2);
    assert_eq!(log.bakes()[0].note, "Changed");
    assert_eq!(
        log.take(&bake(1).id).map(|bake| bake.note),
        Some("Changed".to_owned())
    );
    assert_eq!(log.take(&bake(1).id), None);
    let many = (0..2100).map(bake).collect();
    let mut log = Log::of(many, Resets::default());
    log.put(bake(9999));
    assert_eq!(log.bakes().len(), Log::MOST);
    assert_eq!(log.bakes().last().unwrap().id, bake(9999).id);
}

#[test]
fn rises_teach_their_own_formula_and_nothing_teaches_before_its_reset() {
    let mut log = log();
    let own = Id::from_text("lanternloaf");
    let other = Id::from_text("plainloaf");
    let bulk = |log: &Log, id: &Option<Id>| log.noted("Lantern Lane", id.as_ref())[0].bulk;
    assert!(bulk(&log, &own).is_some() && bulk(&log, &other).is_none());
    assert!(bulk(&log, &None).is_none());
    assert!(log.noted("Elsewhere", own.as_ref()).is_empty());
    let all = log.noted("Lantern Lane", other.as_ref());
    assert!(
        all.iter()
            .all(|noted| noted.friction().is_some() && noted.bowl.is_some())
    );
    log.resets.friction = Some(ms(2_000_000_000_000.0));
    log.resets.oven = log.resets.friction;
    let all = log.noted("Lantern Lane", own.as_ref());
    assert!(
        all.iter()
            .all(|noted| noted.friction().is_none() && noted.bake.is_none())
    );
}

/// Half a megabyte of five hundred bakes: read in a fraction of a blink, also on a slow phone.
#[test]
#[allow(clippy::disallowed_methods, reason = "a test of time needs a clock")]
fn a_log_of_five_hundred_bakes_opens_at_once() {
    let log = Log::of((0..500).map(bake).collect(), Resets::default());
    let text = log.write();
    let begun = std::time::Instant::now();
    assert_eq!(Log::read(&text).unwrap().bakes().len(), 500);
    let took = begun.elapsed().as_millis();
    // Unoptimised and on a busy machine; on a quarter of a processor the page has 100 ms.
    assert!(took < 400, "{took}");
}
