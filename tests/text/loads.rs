//! The oven's loads in sentences, and what they are called in the plan.

use std::num::{NonZeroU16, NonZeroU32};

use softcrumb::engine::class::{ClassSettings, OvenSettings, oven};
use softcrumb::engine::formula::Formula;
use softcrumb::engine::plan::{Loads, StepAt, StepKind};
use softcrumb::engine::quantity::Minutes;
use softcrumb::results::day::{bake_difference, load_times};
use softcrumb::text::day::{class_loads, loads};
use softcrumb::text::{FormatOptions, day, name};

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap()
}

fn of(count: u16, staggered: bool) -> Loads {
    Loads {
        count: NonZeroU16::new(count).unwrap(),
        between: minutes(10.0),
        staggered,
    }
}

/// 25 min and 10 in between are 35 apart; three loads take 3 × 25 + 2 × 10 = 95 min.
#[test]
fn loads_say_how_far_apart_they_are_and_what_becomes_of_the_dough() {
    let told = |count, staggered| {
        let times = load_times(of(count, staggered), minutes(25.0));
        times.map(|times| loads(&times, FormatOptions::default()).replace('\u{a0}', " "))
    };
    assert_eq!(told(1, true), None);
    let own = told(3, true).unwrap();
    assert!(
        own.starts_with("3 loads, 35 min apart, 1 h 35 min from"),
        "{own}"
    );
    assert!(own.contains("dough begins as much later"), "{own}");
    let one = told(3, false).unwrap();
    assert!(one.contains("wait in the fridge"), "{one}");
}

/// Thirteen loaves, six at a time: three loads.
#[test]
fn the_class_offers_its_loads_and_says_where_its_bake_is_another() {
    let settings = OvenSettings {
        places: NonZeroU16::new(6).unwrap(),
        bake: minutes(30.0),
        between: minutes(10.0),
    };
    let plan = oven(NonZeroU32::new(13).unwrap(), settings).unwrap();
    let said = class_loads(&plan, FormatOptions::default());
    assert_eq!(said, "Plan the class’s 13 loaves, 3 loads");
    assert_eq!(plan.as_planned(), of(3, true));
    let class = ClassSettings {
        oven: settings,
        ..ClassSettings::default()
    };
    let differs = |programme| {
        let differs = bake_difference(&class, of(3, true), minutes(programme));
        let said = differs.map(|both| day::bake_difference(both, FormatOptions::default()));
        said.map(|said| said.replace('\u{a0}', " "))
    };
    assert_eq!(bake_difference(&class, of(3, false), minutes(34.0)), None);
    assert_eq!(differs(30.4), None);
    let said = differs(34.0).unwrap();
    assert!(said.contains("bakes 34 min") && said.contains("says 30 min"));
}

#[test]
fn steps_of_later_loads_are_called_by_their_load() {
    let formula = Formula { parts: Vec::new() };
    let called = |work| name::step_at(StepAt { work, of: 2 }, &formula);
    let all = [
        StepKind::LaterDough,
        StepKind::LaterProof,
        StepKind::Refill,
        StepKind::LaterBake,
    ];
    let said: Vec<String> = all.into_iter().map(called).collect();
    assert_eq!(
        said,
        [
            "Load 2: dough from the bowl to the oven",
            "Load 2: proof in its turn",
            "Load 2: empty the oven, let it heat up",
            "Load 2: bake in its turn",
        ]
    );
}
