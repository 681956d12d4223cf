//! A day and a log with every field set, spelt out: what the frozen samples were read as.

use softcrumb::engine::learn::{MeasuredDuration, Observation, WeighedLoss};
use softcrumb::engine::plan::{Edit, Loads, StepKind};
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature};
use softcrumb::engine::rise::{RiseSettings, Stated, YeastActivity};
use softcrumb::sheet::Id;
use softcrumb::sheet::civil::Clock;
use softcrumb::sheet::day::{Bake, DaySettings, Fridge, Log, Resets, Sleep, Target};

use crate::days::{minutes, ms, step};

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn celsius(c: f64) -> Temperature {
    Temperature::from_celsius(c).unwrap()
}

/// Every kind of work that the release of the frozen samples has.
fn works() -> impl Iterator<Item = StepKind> {
    let mut all = StepKind::ALL.into_iter();
    std::iter::from_fn(move || all.find(|work| *work != StepKind::Preheat))
}

/// A plan with every field that there is, and a change of every kind of step.
#[allow(
    clippy::too_many_lines,
    reason = "one value with every field set, a line a field"
)]
pub(crate) fn day() -> DaySettings {
    let share = |component: f64| Share::from_fraction(component).unwrap();
    let mut edits: Vec<Edit> = works()
        .zip(1_u16..)
        .map(|(work, number)| Edit::Duration {
            step: step(work, number % 3),
            minutes: minutes(f64::from(number) + 0.5),
        })
        .collect();
    edits.push(Edit::LeftOut {
        step: step(StepKind::Brush, 0),
    });
    edits.push(Edit::Sooner {
        step: step(StepKind::Drizzle, 1),
    });
    edits.push(Edit::Added {
        after: step(StepKind::Proof, 2),
        number: 65_535,
        name: "Score".to_owned(),
        minutes: minutes(3.0),
        hands: minutes(2.5),
    });
    let mut loads = Loads::of(4.try_into().unwrap());
    loads.between = minutes(11.5);
    loads.staggered = true;
    DaySettings {
        rises: RiseSettings {
            bulk: Stated {
                time: minutes(75.0),
                at: celsius(25.5),
            },
            rest: minutes(18.0),
            proof: Stated {
                time: minutes(55.0),
                at: celsius(29.5),
            },
            dough: YeastActivity::of(share(0.0275), share(0.125), share(0.0185)).ok(),
            bulk_place: Some(celsius(26.5)),
            proof_place: Some(celsius(31.5)),
            bench: minutes(45.0),
            fridge: minutes(690.0),
            volume: Factor::from_number(1.85).unwrap(),
        },
        target: Target::From(ms(1_774_812_345_678.0)),
        sleep: Some(Sleep {
            from: Clock::from_hour(21, 40).unwrap(),
            until: Clock::from_hour(4, 50).unwrap(),
        }),
        fridge: Fridge {
            least: minutes(420.0),
            most: minutes(1200.0),
        },
        one_pair_of_hands: false,
        loads,
        edits,
    }
}

/// A plan without sleep, and without a time that was chosen.
pub(crate) fn sleepless() -> DaySettings {
    DaySettings {
        sleep: None,
        ..DaySettings::default()
    }
}

fn noted() -> Observation {
    let weighed = |before, after| {
        Some(WeighedLoss {
            before: grams(before),
            after: grams(after),
        })
    };
    let took = |expected, took| {
        Some(MeasuredDuration {
            expected: minutes(expected),
            minutes: minutes(took),
        })
    };
    Observation {
        unmixed: Some(celsius(17.5)),
        warmed_for: None,
        dough: Some(celsius(26.25)),
        mixing: Some(minutes(10.5)),
        bowl: weighed(1012.5, 1001.0),
        oven_loss: weighed(985.0, 876.5),
        bulk: took(75.0, 81.5),
        proof: took(55.0, 49.0),
        bake: took(23.0, 24.5),
        steam: None,
        cooling: None,
    }
}

/// A bake with every field that there is.
pub(crate) fn bake() -> Bake {
    let mut bake = Bake::new(
        Id::from_text("abcdefghijklmnopqrstuvwx27").unwrap(),
        ms(1_774_712_345_678.0),
    );
    bake.formula = Id::from_text("eveningclass2");
    bake.name = "Everything on a board".to_owned();
    bake.kitchen = "Under the roof".to_owned();
    bake.room = Some(celsius(22.75));
    bake.noted = noted();
    for (work, number) in works().zip(0_u16..) {
        let began = 1_774_712_345_678.0 + f64::from(number) * 600_000.0;
        bake.begin(step(work, 0), ms(began));
        if number % 4 > 0 {
            bake.end(step(work, 0), ms(began + 300_000.5));
        }
    }
    bake.note = "Oven door open\ttwice;\n\"good\" crumb.".to_owned();
    bake.photo = true;
    bake
}

/// A log that has forgotten everything once, with a full bake and one that has just begun.
pub(crate) fn log() -> Log {
    let resets = Resets {
        friction: Some(ms(1_774_000_000_001.0)),
        losses: Some(ms(1_774_000_000_002.0)),
        rises: Some(ms(1_774_000_000_003.0)),
        oven: Some(ms(1_774_000_000_004.0)),
    };
    let begun = Bake::new(Id::from_text("z").unwrap(), ms(0.0));
    Log::of(vec![begun, bake()], resets)
}
