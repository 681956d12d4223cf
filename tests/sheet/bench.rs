//! The bench: timers that keep their end, steps that begin and end once, photos.

use softcrumb::engine::plan::{DurationRange, Plan, Step, StepKind};
use softcrumb::engine::quantity::Minutes;
use softcrumb::sheet::Id;
use softcrumb::sheet::day::{Bake, Bench, Timer};

use crate::days::{bake, minutes, ms, step};

#[test]
fn timers_keep_their_end_and_are_heard_once() {
    let mut bench = Bench::new(bake(1));
    let bulk = step(StepKind::Bulk, 0);
    bench.set_timer(bulk, ms(60_000.0));
    bench.set_timer(step(StepKind::Melt, 0), ms(90_000.0));
    assert_eq!(bench.timers[0].left(ms(30_000.0)), minutes(0.5));
    assert_eq!(bench.over(ms(59_999.0)).count(), 0);
    assert_eq!(bench.over(ms(70_000.0)).count(), 1);
    bench.hear(ms(70_000.0));
    assert_eq!(bench.over(ms(80_000.0)).count(), 0);
    assert_eq!(bench.over(ms(95_000.0)).count(), 1);
    bench.set_timer(bulk, ms(200_000.0));
    let ends: Vec<&Timer> = bench
        .timers
        .iter()
        .filter(|timer| timer.step == bulk)
        .collect();
    assert_eq!((ends.len(), ends[0].heard), (1, false));
    assert_eq!(ends[0].left(ms(300_000.0)), Minutes::ZERO);
}

#[test]
fn steps_begin_once_and_end_once() {
    let mut bake = Bake::new(Id::from_random(3), ms(0.0));
    let mix = step(StepKind::Mix, 0);
    bake.begin(mix, ms(10.0));
    bake.begin(mix, ms(20.0));
    assert_eq!(bake.steps[0].began, ms(10.0));
    bake.end(mix, ms(5.0));
    // The clock was set back in between, so the step ends when it began.
    assert_eq!(bake.steps[0].ended, Some(ms(10.0)));
    bake.end(mix, ms(30.0));
    assert_eq!(bake.steps[0].ended, Some(ms(10.0)));
    let rest = step(StepKind::Mix, 1);
    bake.end(rest, ms(7.0));
    assert_eq!(bake.steps[1].ended, Some(ms(7.0)));
}

#[test]
fn a_photo_is_a_small_picture_and_nothing_else() {
    assert!(Bake::is_photo("data:image/jpeg;base64,AAA+/b=="));
    for text in [
        "data:image/jpeg;base64,",
        "data:image/svg+xml;base64,AAAA",
        "data:text/html;base64,AAAA",
        "data:image/jpeg;base64,A\" onload=\"x",
        "javascript:alert(1)",
    ] {
        assert!(!Bake::is_photo(text), "{text}");
    }
    let large = format!("data:image/jpeg;base64,{}", "A".repeat(Bake::PHOTO_LENGTH));
    assert!(!Bake::is_photo(&large));
}

/// A night in the fridge goes on while other work is done; it is over when the dough takes it in.
#[test]
fn what_waits_goes_on_until_a_step_takes_it_in() {
    let just = |m: f64, hands: f64, of: u16, after: Vec<usize>| {
        let at = step(StepKind::Own, of);
        Step::new(at, DurationRange::just(minutes(m)), minutes(hands), after)
    };
    let plan = Plan::of(vec![
        just(10.0, 10.0, 1, vec![]),
        just(600.0, 0.0, 2, vec![0]),
        just(12.0, 12.0, 3, vec![]),
        just(15.0, 15.0, 4, vec![1, 2]),
    ])
    .unwrap();
    let mut bench = Bench::new(Bake::new(Id::from_random(1), ms(0.0)));
    let own = |of| step(StepKind::Own, of);
    let ended = |bench: &Bench, of| {
        let done = bench.bake.steps.iter().find(|done| done.step == own(of));
        done.map(|done| done.ended)
    };
    bench.go_on(&plan, own(1), Some(own(2)), ms(1000.0));
    assert_eq!(ended(&bench, 1), Some(Some(ms(1000.0))));
    bench.go_on(&plan, own(2), Some(own(3)), ms(2000.0));
    assert_eq!((ended(&bench, 2), bench.at), (Some(None), Some(own(3))));
    bench.go_on(&plan, own(3), Some(own(4)), ms(9000.0));
    assert_eq!(
        ended(&bench, 2),
        Some(Some(ms(9000.0))),
        "the dough takes it in"
    );
    bench.go_on(&plan, own(4), None, ms(9500.0));
    assert!(bench.bake.steps.iter().all(|done| done.ended.is_some()));
    assert_eq!(bench.bake.steps.len(), 4);
}
