//! The usual plans of the examples, and their edits.

use softcrumb::engine::heat::HeatFrom;
use softcrumb::engine::plan::{
    Aim, Around, Conflict, Done, DurationRange, Edit, Loads, Plan, PlanError, StepAt, StepKind,
    Times, edited, solutions, solve, usual,
};
use softcrumb::engine::quantity::Minutes;
use softcrumb::sheet::examples;

use crate::heat_cases::minutes;
use crate::plan_cases::{DAY, MIDNIGHT, at, nights};

fn between(least: f64, wished: f64, most: f64) -> DurationRange {
    DurationRange::between(minutes(least), minutes(wished), minutes(most)).unwrap()
}

pub(crate) fn times() -> Times {
    Times {
        cool_paste: minutes(30.0),
        chill_paste: between(120.0, 720.0, 1440.0),
        stand: minutes(40.0),
        chill: between(480.0, 720.0, 1080.0),
        warm_up: minutes(30.0),
        mix: minutes(9.0),
        bulk: [minutes(60.0), minutes(72.0), minutes(86.0)],
        rest: minutes(15.0),
        proof: [minutes(55.0), minutes(66.0), minutes(79.0)],
        preheat: between(20.0, 20.0, 45.0),
        bake: vec![minutes(10.0), minutes(15.0)],
        heat: vec![HeatFrom::Both, HeatFrom::Bottom],
        cool: between(30.0, 60.0, 720.0),
        loads: Loads::default(),
        pieces: 10,
    }
}

fn plan(example: usize) -> Plan {
    usual(&examples()[example].1.formula, &times()).unwrap()
}

/// Asleep from eleven to half past six, one pair of hands.
pub(crate) fn home() -> Around {
    Around {
        nights: nights(12, 30),
        one_pair_of_hands: true,
        ..Around::default()
    }
}

pub(crate) const fn step(work: StepKind, of: u16) -> StepAt {
    StepAt { work, of }
}

#[test]
fn bread_for_tea_is_planned_from_the_evening_before_with_no_work_at_night() {
    for example in 0..4 {
        let plan = plan(example);
        // The plan is made at half past four in the afternoon.
        let table = at(MIDNIGHT + 16 * 3600 + 1800);
        let solved = solve(&plan, Aim::Table(table), &home());
        assert_eq!(solved.conflicts, [], "{example}");
        for (step, timed) in plan.steps().iter().zip(&solved.steps) {
            let clock = (timed.begins.seconds() - MIDNIGHT).rem_euclid(DAY);
            let awake = (6 * 3600 + 1800..23 * 3600).contains(&clock);
            assert!(awake || step.hands <= Minutes::ZERO, "{step:?} {timed:?}");
        }
    }
}

#[test]
fn bread_for_breakfast_says_what_is_in_the_way_and_what_solves_it() {
    let table = at(MIDNIGHT + 8 * 3600);
    // Bread baked the evening before stays good.
    assert_eq!(solve(&plan(0), Aim::Table(table), &home()).conflicts, []);
    // Bread that is eaten warm from the oven needs work at night.
    let warm = edited(
        &plan(0),
        &[Edit::LeftOut {
            step: step(StepKind::Cool, 0),
        }],
    )
    .unwrap();
    let solved = solve(&warm, Aim::Table(table), &home());
    assert!(
        solved
            .conflicts
            .iter()
            .all(|one| matches!(one, Conflict::AtNight { .. }))
    );
    assert!(!solved.conflicts.is_empty());
    assert!(!solutions(&warm, Aim::Table(table), &home()).is_empty());
}

#[test]
fn the_usual_steps_follow_the_parts() {
    let plan = plan(0);
    let works: Vec<StepKind> = plan.steps().iter().map(|step| step.at.work).collect();
    assert_eq!(works.len(), 22);
    for work in [
        StepKind::Scald,
        StepKind::ChillPreferment,
        StepKind::ButterIn,
        StepKind::Drizzle,
    ] {
        assert!(works.contains(&work), "{work:?}");
    }
    let plain = usual(&examples()[1].1.formula, &times()).unwrap();
    let works: Vec<StepKind> = plain.steps().iter().map(|step| step.at.work).collect();
    for work in [
        StepKind::Scald,
        StepKind::ChillPreferment,
        StepKind::ButterIn,
        StepKind::WarmUp,
        StepKind::Melt,
    ] {
        assert!(!works.contains(&work), "{work:?}");
    }
}

/// Longer, left out, sooner, added, and one that does not fit.
fn changed_in_five_ways() -> Plan {
    let plan = plan(0);
    let edits = [
        Edit::Duration {
            step: step(StepKind::Rest, 0),
            minutes: minutes(25.0),
        },
        Edit::LeftOut {
            step: step(StepKind::Round, 0),
        },
        Edit::Sooner {
            step: step(StepKind::ButterIn, 0),
        },
        Edit::Added {
            after: step(StepKind::Bulk, 0),
            number: 1,
            name: "Fold the dough".to_owned(),
            minutes: minutes(5.0),
            hands: minutes(5.0),
        },
        Edit::LeftOut {
            step: step(StepKind::Own, 9),
        },
    ];
    let changed = edited(&plan, &edits).unwrap();
    assert_eq!(changed.steps().len(), plan.steps().len());
    changed
}

#[test]
fn steps_are_lengthened_left_out_moved_and_added() {
    let changed = changed_in_five_ways();
    let find = |work| {
        let place = changed
            .place(step(work, u16::from(work == StepKind::Own)))
            .unwrap();
        &changed.steps()[place]
    };
    assert_eq!(find(StepKind::Rest).lasts.wished(), minutes(25.0));
    assert_eq!(changed.place(step(StepKind::Round, 0)), None);
    let waits_for = |work| {
        let inputs = &find(work).after;
        assert_eq!(inputs.len(), 1);
        changed.steps()[inputs[0]].at.work
    };
    assert_eq!(waits_for(StepKind::Divide), StepKind::Own);
    assert_eq!(waits_for(StepKind::Own), StepKind::Bulk);
    assert_eq!(waits_for(StepKind::Rest), StepKind::Divide);
    assert_eq!(waits_for(StepKind::Mix), StepKind::ButterIn);
    assert_eq!(waits_for(StepKind::Bulk), StepKind::Mix);
}

#[test]
fn a_first_step_goes_no_sooner() {
    let plan = plan(0);
    let same = edited(
        &plan,
        &[Edit::Sooner {
            step: step(StepKind::Scald, 0),
        }],
    )
    .unwrap();
    assert_eq!(same, plan);
}

#[test]
fn plans_that_go_in_circles_or_hold_nothing_are_refused() {
    let mut steps = plan(1).into_steps();
    steps[0].after = vec![3];
    assert!(matches!(
        Plan::of(steps.clone()),
        Err(PlanError::GoesInCircles { .. })
    ));
    steps[0].after = vec![99];
    assert_eq!(
        Plan::of(steps.clone()),
        Err(PlanError::NoSuchInput { step: 0, input: 99 })
    );
    assert_eq!(Plan::of(Vec::new()), Err(PlanError::NoSteps));
    let many = vec![steps[1].clone(); 61];
    assert_eq!(Plan::of(many), Err(PlanError::TooManySteps { most: 60 }));
    assert!(DurationRange::between(minutes(5.0), minutes(4.0), minutes(6.0)).is_err());
}

/// A rise that has begun is over in its own time, however late the table is; a night goes on.
#[test]
fn what_is_under_way_ends_in_its_own_time_unless_it_gives() {
    let plan = plan(0);
    let table = at(MIDNIGHT + 16 * 3600 + 1800);
    let now = at(MIDNIGHT - 5 * 3600);
    let under_way = |work, of| {
        let place = plan.place(step(work, of)).unwrap();
        let done = Done {
            step: place,
            began: now,
            ended: None,
        };
        let around = Around {
            now: Some(now),
            done: vec![done],
            ..Around::default()
        };
        (place, solve(&plan, Aim::Table(table), &around))
    };
    let (bulk, solved) = under_way(StepKind::Bulk, 0);
    assert_eq!(solved.steps[bulk].lasts, minutes(72.0));
    assert!(
        solved
            .conflicts
            .iter()
            .any(|one| matches!(one, Conflict::Waits { step, .. } if *step == bulk))
    );
    let (night, solved) = under_way(StepKind::ChillPreferment, 1);
    assert!(solved.steps[night].lasts > minutes(720.0));
    let night = &plan.steps()[night];
    assert_eq!(night.timer(minutes(900.0)), minutes(900.0));
    assert_eq!(night.timer(minutes(9000.0)), minutes(720.0));
}
