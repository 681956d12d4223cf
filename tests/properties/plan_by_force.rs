//! Small plans solved by brute force: every length of every step that gives, one after the other.

use proptest::prelude::*;
use softcrumb::engine::plan::{Aim, Around, Plan, solve};
use softcrumb::engine::quantity::Minutes;

use crate::dough::cases;
use crate::plan_cases::{MIDNIGHT, QUARTER, any_around, any_plan, at};

fn quarters(minutes: Minutes) -> i64 {
    let seconds = minutes.minutes() * 60.0;
    #[allow(
        clippy::as_conversions,
        clippy::cast_possible_truncation,
        reason = "whole quarters"
    )]
    let whole = seconds as i64;
    whole.div_euclid(QUARTER)
}

/// When each step begins, in quarters before the table, as late as can be.
fn begins(plan: &Plan, lasts: &[i64]) -> Vec<i64> {
    let steps = plan.steps();
    let mut found = vec![0_i64; steps.len()];
    for place in (0..steps.len()).rev() {
        let mut ends = 0;
        for (other, step) in steps.iter().enumerate() {
            if step.after.contains(&place) {
                ends = ends.max(found[other]);
            }
        }
        found[place] = ends + lasts[place];
    }
    found
}

/// Whether no work falls into sleep and no hands are wanted twice.
fn keeps(plan: &Plan, lasts: &[i64], table: i64, around: &Around) -> bool {
    let begins = begins(plan, lasts);
    let works: Vec<(i64, i64)> = plan
        .steps()
        .iter()
        .zip(begins)
        .filter(|(step, _)| step.hands > Minutes::ZERO)
        .map(|(step, before)| {
            let from = table - before * QUARTER;
            (from, from + quarters(step.hands) * QUARTER)
        })
        .collect();
    let meet = |a: (i64, i64), b: (i64, i64)| a.1.min(b.1) > a.0.max(b.0);
    works.iter().enumerate().all(|(place, work)| {
        let sleeps = around.nights.iter();
        let mut sleeps = sleeps.map(|span| (span.from.seconds(), span.until.seconds()));
        let mut others = works[place + 1..].iter();
        let alone = !around.one_pair_of_hands || !others.any(|other| meet(*work, *other));
        alone && !sleeps.any(|sleep| meet(*work, sleep))
    })
}

/// The least that lengths must leave their settings, in quarters; `None` where nothing will do.
fn by_force(plan: &Plan, table: i64, around: &Around) -> Option<i64> {
    let limits: Vec<(i64, i64, i64)> = plan
        .steps()
        .iter()
        .map(|step| {
            let lasts = step.lasts;
            (
                quarters(lasts.least()),
                quarters(lasts.wished()),
                quarters(lasts.most()),
            )
        })
        .collect();
    let mut lasts: Vec<i64> = limits.iter().map(|(least, ..)| *least).collect();
    let mut best: Option<i64> = None;
    loop {
        let off = lasts
            .iter()
            .zip(&limits)
            .map(|(now, (_, wished, _))| (now - wished).abs());
        let off: i64 = off.sum();
        if best.is_none_or(|best| off < best) && keeps(plan, &lasts, table, around) {
            best = Some(off);
        }
        // Counts to the next combination of lengths, as an odometer does.
        let Some(place) = (0..lasts.len()).find(|place| lasts[*place] < limits[*place].2) else {
            return best;
        };
        lasts[place] += 1;
        for before in 0..place {
            lasts[before] = limits[before].0;
        }
    }
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(4000)))]

    /// One step that gives: wherever brute force finds lengths that can be kept, so does the
    /// solver, and never further from what is wished.
    #[test]
    fn with_one_step_that_gives_the_solver_is_as_good_as_brute_force(
        plan in any_plan(5, 1), around in any_around(), table in 0..96_i64,
    ) {
        let table = MIDNIGHT + table * QUARTER;
        if let Some(best) = by_force(&plan, table, &around) {
            let solved = solve(&plan, Aim::Table(at(table)), &around);
            prop_assert!(solved.conflicts.is_empty(), "{:?}", solved.conflicts);
            prop_assert!(off_wish(&plan, &solved.steps) <= best * QUARTER);
        }
    }
}

fn off_wish(plan: &Plan, timed: &[softcrumb::engine::plan::Timed]) -> i64 {
    let pairs = plan.steps().iter().zip(timed);
    pairs
        .map(|(step, timed)| {
            (quarters(timed.lasts) - quarters(step.lasts.wished())).abs() * QUARTER
        })
        .sum()
}

/// Two that give: how often the solver finds what brute force finds, over drawn plans.
#[test]
fn with_two_steps_that_give_the_solver_is_nearly_as_good_as_brute_force() {
    use proptest::strategy::ValueTree;
    use proptest::test_runner::TestRunner;
    let mut runner = TestRunner::deterministic();
    let (mut solvable, mut missed, mut further) = (0_u32, 0_u32, 0_u32);
    for round in 0..1500_i64 {
        let plan = any_plan(5, 2).new_tree(&mut runner).unwrap().current();
        let around = any_around().new_tree(&mut runner).unwrap().current();
        let table = MIDNIGHT + round.rem_euclid(96) * QUARTER;
        if let Some(best) = by_force(&plan, table, &around) {
            solvable += 1;
            let solved = solve(&plan, Aim::Table(at(table)), &around);
            missed += u32::from(!solved.conflicts.is_empty());
            let off = off_wish(&plan, &solved.steps);
            further += u32::from(solved.conflicts.is_empty() && off > best * QUARTER);
        }
    }
    assert!(solvable > 800);
    assert!(missed * 100 <= solvable, "{missed} of {solvable} missed");
    assert!(further * 20 <= solvable, "{further} of {solvable} further");
}
