//! Plans with several loads of the oven: when each goes in, and when its dough begins.

use std::num::NonZeroU16;

use softcrumb::engine::class::{OvenSettings, oven};
use softcrumb::engine::plan::{
    Aim, Around, Change, Conflict, Edit, Loads, Plan, PlanError, Solved, StepKind, Timed, edited,
    solutions, solve, usual,
};
use softcrumb::engine::quantity::Minutes;
use softcrumb::sheet::examples;

use crate::heat_cases::minutes;
use crate::plan_cases::{MIDNIGHT, at};
use crate::plan_usual::{home, step, times};

fn loads(count: u16, between: f64, staggered: bool) -> Loads {
    Loads {
        count: NonZeroU16::new(count).unwrap(),
        between: minutes(between),
        staggered,
    }
}

fn plan(example: usize, loads: Loads) -> Plan {
    let mut times = times();
    times.loads = loads;
    usual(&examples()[example].1.formula, &times).unwrap()
}

fn solved(plan: &Plan, around: &Around) -> Solved {
    solve(plan, Aim::Table(at(MIDNIGHT + 18 * 3600)), around)
}

fn timed(plan: &Plan, solved: &Solved, work: StepKind, of: u16) -> Timed {
    solved.steps[plan.place(step(work, of)).unwrap()]
}

fn helped() -> Around {
    Around {
        one_pair_of_hands: false,
        ..home()
    }
}

/// The oven of a class (tested against Python's fractions in the peers) and the plan agree on when
/// each load goes in: counted from the first, and each dough begins as much later.
#[test]
fn the_loads_of_a_class_go_in_and_begin_when_the_oven_says() {
    for (loaves, places, between) in [(13, 6, 10.0), (13, 5, 0.0), (7, 1, 4.0)] {
        let settings = OvenSettings {
            places: NonZeroU16::new(places).unwrap(),
            bake: minutes(25.0),
            between: minutes(between),
        };
        let run = oven(loaves.try_into().unwrap(), settings).unwrap();
        let count = u16::try_from(run.loads.len()).unwrap();
        let plan = plan(0, loads(count, between, true));
        let solved = solved(&plan, &helped());
        let first = timed(&plan, &solved, StepKind::Bake, 0).begins;
        let dough = timed(&plan, &solved, StepKind::WarmUp, 0).begins;
        for (load, of) in run.loads.iter().zip(1..) {
            if of == 1 {
                continue;
            }
            let bake = timed(&plan, &solved, StepKind::LaterBake, of);
            assert_eq!(bake.begins.since(first), load.goes_in);
            assert_eq!(bake.ends.since(first), load.comes_out);
            let own = timed(&plan, &solved, StepKind::LaterDough, of);
            assert_eq!(own.begins.since(dough), load.goes_in, "load {of}");
            assert_eq!(own.ends, bake.begins);
        }
        let last = loads(count, between, true).from_first_to_last(minutes(25.0));
        assert_eq!(last, run.all_out);
    }
}

/// From one dough the later pieces are shaped with the first, and begin their proof later.
#[test]
fn from_one_dough_each_proof_begins_as_much_later_as_its_load_goes_in() {
    let plan = plan(0, loads(3, 5.0, false));
    let solved = solved(&plan, &home());
    let first = timed(&plan, &solved, StepKind::Bake, 0).begins;
    let shaped = timed(&plan, &solved, StepKind::Tin, 0).ends;
    for (of, later) in [(2, 30.0), (3, 60.0)] {
        let bake = timed(&plan, &solved, StepKind::LaterBake, of);
        assert_eq!(bake.begins.since(first), minutes(later));
        let proof = timed(&plan, &solved, StepKind::LaterProof, of);
        // The proof takes 66 min and the drizzle 3.
        assert_eq!(proof.lasts, minutes(69.0));
        assert_eq!(proof.begins.since(shaped), minutes(later));
        let range = plan.steps()[plan.place(step(StepKind::LaterProof, of)).unwrap()].over_between;
        assert_eq!(range, Some((minutes(58.0), minutes(82.0))));
    }
    assert_eq!(plan.place(step(StepKind::LaterDough, 2)), None);
}

#[test]
fn no_two_loads_are_in_the_oven_at_once_and_the_bread_cools_after_the_last() {
    for staggered in [false, true] {
        for example in 0..4 {
            let plan = plan(example, loads(6, 7.0, staggered));
            let solved = solved(&plan, &helped());
            let mut spans: Vec<Timed> = plan
                .steps()
                .iter()
                .zip(&solved.steps)
                .filter(|(step, _)| matches!(step.at.work, StepKind::Bake | StepKind::LaterBake))
                .map(|(_, timed)| *timed)
                .collect();
            spans.sort_by_key(|span| span.begins);
            assert!(spans.windows(2).all(|two| two[0].ends <= two[1].begins));
            let cool = timed(&plan, &solved, StepKind::Cool, 0);
            assert!(cool.begins >= spans.last().unwrap().ends);
        }
    }
}

/// A table so early that later doughs would begin at night, and one pair of hands for all.
#[test]
fn loads_that_cannot_be_met_are_conflicts_that_something_solves() {
    let plan = plan(1, loads(3, 10.0, true));
    // Warm from the oven, so that it cannot be baked the evening before.
    let cool = [Edit::LeftOut {
        step: step(StepKind::Cool, 0),
    }];
    let warm = edited(&plan, &cool).unwrap();
    let early = Aim::Table(at(MIDNIGHT + 9 * 3600));
    let night = solve(&warm, early, &helped());
    let asleep = |one: &Conflict| matches!(one, Conflict::AtNight { .. });
    assert!(night.conflicts.iter().any(asleep));
    assert!(
        solutions(&warm, early, &helped())
            .iter()
            .any(|change| matches!(change, Change::TableLater(_)))
    );
    // However far apart the loads are, at some distance a later one wants the hands of the first.
    let hands = |one: &Conflict| matches!(one, Conflict::HandsFull { .. });
    let crowded: Vec<Plan> = (0..24)
        .step_by(2)
        .map(|between| self::plan(0, loads(3, f64::from(between), true)))
        .filter(|plan| solved(plan, &home()).conflicts.iter().any(hands))
        .collect();
    assert!(crowded.len() > 2, "{}", crowded.len());
    let evening = Aim::Table(at(MIDNIGHT + 18 * 3600));
    let helped = |plan: &&Plan| solutions(plan, evening, &home()).contains(&Change::HelpingHand);
    assert_eq!(crowded.iter().filter(helped).count(), crowded.len());
}

#[test]
fn one_load_is_as_before_and_very_many_are_refused() {
    let once = plan(0, Loads::default());
    assert!(
        once.steps()
            .iter()
            .all(|step| step.at.of < 2 || step.at.work != StepKind::LaterBake)
    );
    assert_eq!(
        Loads::default().from_first_to_last(minutes(25.0)),
        minutes(25.0)
    );
    let mut times = times();
    times.loads = loads(99, 5.0, false);
    let refused = usual(&examples()[0].1.formula, &times);
    assert_eq!(refused, Err(PlanError::TooManySteps { most: Plan::MOST }));
    times.bake = Vec::new();
    times.loads = loads(3, 0.0, true);
    let plan = usual(&examples()[0].1.formula, &times).unwrap();
    assert_eq!(plan.place(step(StepKind::Refill, 2)), None);
    let nothing = plan.steps()[plan.place(step(StepKind::LaterBake, 2)).unwrap()].lasts;
    assert_eq!(nothing.wished(), Minutes::ZERO);
}
