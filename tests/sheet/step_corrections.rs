//! Corrections of a step at the bench: its start, its rise, the table, a part that is too warm.

use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::plan::StepKind;
use softcrumb::engine::quantity::Factor;
use softcrumb::results::batch;
use softcrumb::results::day::{DayInput, ReadyTime, part_warmth, step_corrections};
use softcrumb::sheet::Moment;
use softcrumb::sheet::day::{Bench, Measured};

use crate::bench_results::{NOW, begun, celsius, with};
use crate::days::{minutes, ms, step};

#[test]
fn a_start_that_is_off_by_less_than_three_minutes_is_on_time() {
    let bulk = step(StepKind::Bulk, 0);
    let start = |by: f64| {
        let mut bench = begun();
        let planned = bench.planned(bulk).unwrap().begins.milliseconds();
        bench.bake.begin(bulk, ms(planned + by * 60_000.0));
        with(Some(&bench), |input, results| {
            step_corrections(input, results, bulk).start
        })
    };
    assert_eq!(start(2.0), None);
    assert_eq!(start(-2.0), None);
    let late = start(22.0).unwrap();
    assert!(late.late && (late.by.minutes() - 22.0).abs() < 0.1);
    let early = start(-15.0).unwrap();
    assert!(!early.late && (early.by.minutes() - 15.0).abs() < 0.1);
}

#[test]
fn a_place_is_offered_only_where_it_brings_the_rise_nearer_to_its_time() {
    let bulk = step(StepKind::Bulk, 0);
    let rise = |bench: &Bench| {
        with(Some(bench), |input, results| {
            step_corrections(input, results, bulk).rise
        })
    };
    let mut bench = begun();
    let planned = with(Some(&bench), |input, _| input.run().dough.celsius());
    bench.bake.noted.dough = Some(celsius(planned - 3.0));
    let offered = rise(&bench).unwrap().place.unwrap();
    bench.bulk_place = Some(offered.at);
    let taken = rise(&bench).unwrap();
    assert_eq!((taken.chosen, taken.place), (Some(offered.at), None));
}

#[test]
fn the_dough_is_shown_at_the_steps_of_its_rise_only() {
    let mut bench = begun();
    bench.bake.noted.dough = Some(celsius(22.0));
    let dough = |kind| {
        with(Some(&bench), |input, results| {
            step_corrections(input, results, step(kind, 0)).dough
        })
    };
    let planned = with(Some(&begun()), |input, _| input.run().dough);
    assert_eq!(dough(StepKind::Mix), Some((planned, celsius(22.0))));
    assert_eq!(dough(StepKind::Bulk), Some((planned, celsius(22.0))));
    assert_eq!(dough(StepKind::Proof), None);
    assert_eq!(dough(StepKind::Bake), None);
}

#[test]
fn a_table_that_has_moved_is_shown_and_one_that_has_not_too() {
    let mut bench = begun();
    let ready = |bench: &Bench| {
        let mix = step(StepKind::Mix, 0);
        with(Some(bench), |input, results| {
            step_corrections(input, results, mix).ready
        })
    };
    assert_eq!(ready(&bench), None);
    let proof = step(StepKind::Proof, 0);
    let was = bench.planned(proof).unwrap().lasts;
    bench.let_last(proof, minutes(was.minutes() + 10.0));
    assert!(matches!(ready(&bench), Some(ReadyTime::OnTime(_))));
    for snapshot in &mut bench.planned {
        snapshot.begins = Moment::from_instant(snapshot.begins.instant().later(minutes(60.0)));
    }
    assert!(matches!(ready(&bench), Some(ReadyTime::Moved { .. })));
}

#[test]
fn a_warm_paste_waits_and_a_cold_one_goes_on() {
    let chill = step(StepKind::ChillPaste, 0);
    let warmth = |at: f64| {
        let mut bench = begun();
        bench.measure(Measured {
            step: chill,
            part: 0,
            at: celsius(at),
            when: ms(NOW),
        });
        with(Some(&bench), |input, _| part_warmth(input, chill, 0)).unwrap()
    };
    let warm = warmth(30.0);
    assert_eq!(
        warm.wait,
        warm.needs
            .ok()
            .map(|needs| softcrumb::results::day::as_shown(needs.there))
    );
    assert!(warm.wait.unwrap() > minutes(1.0));
    assert_eq!((warmth(4.0).wait, warmth(4.0).in_ice), (None, None));
    let nothing = with(Some(&begun()), |input, _| part_warmth(input, chill, 0));
    assert_eq!(nothing, None);
}

/// Common practice: three times as much paste in the same bowl cools later. The wait is that of what
/// is made, not of the formula made once.
#[test]
fn a_larger_batch_of_paste_waits_longer() {
    let chill = step(StepKind::ChillPaste, 0);
    let mut bench = begun();
    bench.measure(Measured {
        step: chill,
        part: 0,
        at: celsius(30.0),
        when: ms(NOW),
    });
    let needs = |times: f64| {
        with(Some(&bench), |input, _| {
            let mut sheet = input.sheet.clone();
            sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
            sheet.heat.cooling.set_own(true);
            let rounded = batch::of(&sheet, input.kitchen.scales).rounded;
            let of = DayInput {
                sheet: &sheet,
                rounded: rounded.as_ref(),
                ..*input
            };
            part_warmth(&of, chill, 0).unwrap().needs.unwrap().there
        })
    };
    assert!(needs(3.0) > needs(1.0));
}

#[test]
fn a_wait_is_counted_from_now_and_rings_at_its_end() {
    let mut bench = begun();
    let cool = step(StepKind::CoolPaste, 0);
    bench.bake.begin(cool, ms(NOW - 600_000.0));
    bench.wait(cool, ms(NOW), minutes(20.0));
    assert_eq!(bench.timers[0].ends, ms(NOW + 1_200_000.0));
    with(Some(&bench), |_, results| {
        let lasts = results.find(cool).unwrap().1.lasts;
        assert!((lasts.minutes() - 30.0).abs() < 0.02, "{lasts:?}");
    });
}
