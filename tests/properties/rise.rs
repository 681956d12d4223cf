//! Rises at every temperature: the closed form, colder is slower, chilled preferments lie between.

use proptest::prelude::*;
use softcrumb::engine::formula::Form;
use softcrumb::engine::heat::{Air, Curve, Exposure, simulate};
use softcrumb::engine::quantity::{Factor, Minutes, Share};
use softcrumb::engine::rise::{
    Cardinal, ReferenceRise, RiseAsked, RiseError, RiseSettings, equivalent_time, rise, steady,
    yeast_activity,
};
use softcrumb::results::day::{ReferenceRises, RiseInput, preferment_rise, rises};
use softcrumb::sheet::{Kitchen, examples};

use crate::dough::cases;
use crate::heat_cases::{any_body, any_stay, celsius, minutes};

fn asked(anchor: ReferenceRise, yeast_activity: f64) -> RiseAsked {
    RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: Factor::from_number(yeast_activity).unwrap(),
        volume: Factor::TWO,
    }
}

const LONG: f64 = 80_000.0;

proptest! {
    #![proptest_config(cases(crate::cases::cases(20_000)))]

    #[test]
    fn a_constant_temperature_is_the_closed_form(
        known in 5.0..600.0f64, then in 12.0..42.0f64, now in 8.0..44.0f64, yeast_activity in 0.3..3.0f64,
    ) {
        let anchor = ReferenceRise::stated(minutes(known), celsius(then));
        let rate = |t: f64| Cardinal::DOUGH.rate(celsius(t)).fraction();
        let closed = known * rate(then) / rate(now) / yeast_activity;
        prop_assume!(closed < LONG);
        let course = steady(celsius(now), minutes(LONG)).unwrap();
        let risen = rise(&course, &asked(anchor, yeast_activity)).unwrap();
        prop_assert!((risen.due.minutes() / closed - 1.0).abs() < 1e-9);
        prop_assert!((risen.soonest.minutes() / closed * 1.2 - 1.0).abs() < 1e-9);
        if let Some(latest) = risen.latest {
            prop_assert!((latest.minutes() / closed / 1.2 - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn the_colder_the_slower_up_to_the_best(
        low in 1.4..35.9f64, more in 0.01..10.0f64,
    ) {
        let best = Cardinal::DOUGH.best().celsius();
        let high = (low + more).min(best);
        let rate = |t: f64| Cardinal::DOUGH.rate(celsius(t));
        prop_assert!(rate(low) < rate(high));
        prop_assert!(rate(high) <= Share::WHOLE);
        let beyond = (best + more).min(60.0);
        prop_assert!(rate(beyond) < rate(best));
    }

    #[test]
    fn nothing_but_numbers_comes_of_any_three_temperatures(
        n in -40.0..350.0f64, o in -40.0..350.0f64, x in -40.0..350.0f64, t in -40.0..350.0f64,
    ) {
        if let Ok(curve) = Cardinal::new(celsius(n), celsius(o), celsius(x)) {
            let rate = curve.rate(celsius(t)).fraction();
            prop_assert!((0.0..=1.0).contains(&rate));
            prop_assert!((curve.rate(celsius(o)).fraction() - 1.0).abs() < 1e-9);
        }
    }
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn any_course_is_up_or_said_not_to_be(
        body in any_body(), stays in prop::collection::vec(any_stay(), 0..4),
        start in 0.0..60.0f64, known in 0.0..2000.0f64, then in 0.0..50.0f64,
    ) {
        let course = simulate(&body, celsius(start), &stays).unwrap();
        let anchor = ReferenceRise::stated(minutes(known), celsius(then));
        match rise(&course, &asked(anchor, 1.0)) {
            Ok(risen) => {
                prop_assert!(risen.soonest <= risen.due);
                prop_assert!(risen.latest.is_none_or(|latest| latest >= risen.due));
                prop_assert!(risen.points.windows(2).all(|two| two[0].done <= two[1].done));
                let done = risen.done_at(risen.due).fraction();
                prop_assert!((done - 1.0).abs() < 1e-6, "{done}");
            }
            Err(RiseError::AnchorAtRest { at }) => {
                prop_assert_eq!(Cardinal::DOUGH.rate(at), Share::NONE);
            }
            Err(RiseError::AnchorOfNoTime) => prop_assert!(known <= 0.0),
            Err(RiseError::NotInTime { reached, .. }) => prop_assert!(reached < Share::WHOLE),
            Err(other) => prop_assert!(false, "{other}"),
        }
    }

    /// A preferment chilled after a while on the bench lies between never and at once chilled.
    #[test]
    fn bench_then_fridge_lies_between_bench_only_and_fridge_only(
        bench in 1.0..240.0f64, fridge in 60.0..1800.0f64,
        room in 12.0..35.0f64, cold in 1.5..8.0f64,
    ) {
        let kitchen = Kitchen {
            room: celsius(room),
            fridge: celsius(cold),
            ..Kitchen::default()
        };
        let settings = RiseSettings {
            bench: minutes(bench),
            fridge: minutes(fridge),
            ..RiseSettings::default()
        };
        let (_, sheet) = examples().remove(0);
        let rise = preferment_rise(&sheet.formula, 1, &kitchen, &settings, celsius(26.0)).unwrap();
        prop_assert!(rise.chilled_at_once.equals < rise.equivalent_time.equals);
        prop_assert!(rise.equivalent_time.equals < rise.never_chilled.equals);
    }
}

/// A cold start, a warm proof: a dough that warms up is done between the times at its two ends.
#[test]
fn a_dough_that_warms_is_up_between_the_times_of_both_ends() {
    let (_, sheet) = examples().remove(0);
    let anchor = ReferenceRise::stated(minutes(60.0), celsius(26.0));
    for (start, place) in [(14.0, 28.0), (30.0, 18.0), (4.0, 24.0)] {
        let at = |t: f64| {
            let course: Curve = steady(celsius(t), minutes(LONG)).unwrap();
            rise(&course, &asked(anchor, 1.0)).unwrap().due.minutes()
        };
        let kitchen = Kitchen {
            room: celsius(place),
            ..Kitchen::default()
        };
        let settings = RiseSettings::default();
        let rises = rises(&RiseInput {
            formula: &sheet.formula,
            kitchen: &kitchen,
            dough: celsius(start),
            pieces: 9,
            settings: &settings,
            references: &ReferenceRises::of(&settings),
        });
        let due = rises.bulk.unwrap().due.minutes();
        let (one, other) = (at(start), at(place));
        assert!(
            due > one.min(other) && due < one.max(other),
            "{one} {due} {other}"
        );
    }
}

/// The trapezoid between the solver's moments against the same sum on four times as many.
#[test]
fn the_sum_along_the_course_does_not_depend_on_its_steps() {
    let (_, sheet) = examples().remove(0);
    let kitchen = Kitchen::default();
    let settings = RiseSettings::default();
    let coarse = preferment_rise(&sheet.formula, 1, &kitchen, &settings, celsius(26.0)).unwrap();
    let mut quarters = Vec::new();
    for (total, place) in [
        (settings.bench, kitchen.room),
        (settings.fridge, kitchen.fridge),
    ] {
        let quarter = minutes(total.minutes() / 4.0);
        quarters.extend(
            [Exposure {
                minutes: quarter,
                air: Air::still(place),
            }; 4],
        );
    }
    let body = ball_of(&sheet, &kitchen);
    let fine = simulate(&body, kitchen.room, &quarters).unwrap();
    let fine = equivalent_time(&fine, Cardinal::DOUGH, celsius(26.0)).unwrap();
    let ratio = coarse.equivalent_time.equals.minutes() / fine.equals.minutes();
    assert!((ratio - 1.0).abs() < 0.002, "{ratio}");
}

fn ball_of(sheet: &softcrumb::sheet::Sheet, kitchen: &Kitchen) -> softcrumb::engine::heat::Body {
    use softcrumb::engine::heat::Body;
    use softcrumb::results::heat::part_matter;
    let (mass, matter) = part_matter(&sheet.formula.parts[1]).unwrap();
    Body::ball_of(&matter, mass, (kitchen.room, kitchen.fridge)).unwrap()
}

/// Twice the yeast is nearly twice as fast: much yeast brings less than its share.
#[test]
fn twice_the_yeast_is_nearly_twice_as_fast_and_sugar_is_slower() {
    let (_, sheet) = examples().remove(0);
    let before = yeast_activity(&sheet.formula, Form::AsWritten).unwrap();
    let mut formula = sheet.formula.clone();
    for part in &mut formula.parts {
        for line in &mut part.lines {
            if line.food.role() == softcrumb::engine::ingredients::Role::Yeast {
                line.mass = line.mass + line.mass;
            }
        }
    }
    let twice = yeast_activity(&formula, Form::AsWritten).unwrap();
    let ratio = twice.against(&before).unwrap().number();
    assert!((1.5..2.0).contains(&ratio), "{ratio}");
    let sugar = formula.parts[2]
        .lines
        .iter_mut()
        .find(|line| line.food.role() == softcrumb::engine::ingredients::Role::Sugar)
        .unwrap();
    sugar.mass = sugar.mass + sugar.mass;
    let sweet = yeast_activity(&formula, Form::AsWritten).unwrap();
    assert!(sweet.against(&twice).unwrap().number() < 1.0);
    formula.parts.retain(|part| {
        part.lines
            .iter()
            .all(|line| line.food.role() != softcrumb::engine::ingredients::Role::Yeast)
    });
    assert_eq!(
        yeast_activity(&formula, Form::AsWritten),
        Err(RiseError::NoYeast)
    );
    let none = Minutes::ZERO;
    let course = steady(celsius(26.0), none).unwrap();
    let anchor = ReferenceRise::stated(minutes(60.0), celsius(26.0));
    assert!(matches!(
        rise(&course, &asked(anchor, 1.0)),
        Err(RiseError::NotInTime { .. })
    ));
}
