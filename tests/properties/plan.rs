//! Plans: nothing before its inputs, the same from both ends, nothing that cannot be kept unsaid.

use proptest::prelude::*;
use softcrumb::engine::plan::{Aim, Around, Change, Done, Plan, Solved, solutions, solve};
use softcrumb::engine::quantity::Minutes;

use crate::dough::cases;
use crate::plan_cases::{DAY, MIDNIGHT, QUARTER, any_around, any_plan, at};

/// Every step after what it waits for, within its limits, over by the table.
fn holds_together(plan: &Plan, solved: &Solved) {
    for (step, timed) in plan.steps().iter().zip(&solved.steps) {
        for input in &step.after {
            assert!(solved.steps[*input].ends <= timed.begins, "{solved:?}");
        }
        assert!(step.lasts.least() <= timed.lasts && timed.lasts <= step.lasts.most());
        assert!(timed.ends <= solved.table && timed.begins >= solved.begins);
        assert_eq!(timed.ends.since(timed.begins), timed.lasts);
    }
}

/// Reckoned apart from the solver: minutes of work in sleep, and of hands wanted twice.
fn broken(plan: &Plan, solved: &Solved, around: &Around) -> (i64, i64) {
    let works: Vec<(i64, i64)> = plan
        .steps()
        .iter()
        .zip(&solved.steps)
        .filter(|(step, _)| step.hands > Minutes::ZERO)
        .map(|(_, timed)| (timed.begins.seconds(), timed.hands_until.seconds()))
        .collect();
    let both = |(a, b): (i64, i64), (c, d): (i64, i64)| (b.min(d) - a.max(c)).max(0);
    let mut asleep = 0;
    let mut twice = 0;
    for (place, work) in works.iter().enumerate() {
        for span in &around.nights {
            asleep += both(*work, (span.from.seconds(), span.until.seconds()));
        }
        for other in &works[place + 1..] {
            twice += both(*work, *other);
        }
    }
    (asleep, if around.one_pair_of_hands { twice } else { 0 })
}

fn table(quarters: i64) -> Aim {
    Aim::Table(at(MIDNIGHT + quarters * QUARTER))
}

/// The plan with the lengths that were found as its settings.
fn with_found_lengths(plan: &Plan, solved: &Solved) -> Plan {
    let mut steps = plan.clone().into_steps();
    for (step, timed) in steps.iter_mut().zip(&solved.steps) {
        step.lasts = step.lasts.wishing(timed.lasts);
    }
    Plan::of(steps).unwrap()
}

proptest! {
    #![proptest_config(cases(1000))]

    #[test]
    fn backwards_then_forwards_gives_the_same_times(plan in any_plan(9, 3), quarters in 0..96_i64) {
        let around = Around::default();
        let back = solve(&plan, table(quarters), &around);
        holds_together(&plan, &back);
        prop_assert!(back.conflicts.is_empty());
        let forth = solve(&plan, Aim::From(back.begins), &around);
        prop_assert_eq!(&forth.steps, &back.steps);
        prop_assert_eq!(forth.table, back.table);
    }

    /// With sleep in between, the chosen lengths stay.
    #[test]
    fn backwards_then_forwards_is_the_same_round_sleep(
        plan in any_plan(9, 3), around in any_around(), quarters in 0..96_i64,
    ) {
        let back = solve(&plan, table(quarters), &around);
        holds_together(&plan, &back);
        let (asleep, twice) = broken(&plan, &back, &around);
        prop_assert_eq!(back.conflicts.is_empty(), asleep == 0 && twice == 0);
        prop_assume!(back.conflicts.is_empty());
        let kept = with_found_lengths(&plan, &back);
        let forth = solve(&kept, Aim::From(back.begins), &around);
        prop_assert_eq!(&forth.steps, &back.steps);
        let again = solve(&kept, table(quarters), &around);
        prop_assert_eq!(&again.steps, &back.steps);
    }

    #[test]
    fn forwards_nothing_begins_before_and_nights_stay_free(
        plan in any_plan(9, 3), around in any_around(), quarters in 0..96_i64,
    ) {
        let start = at(MIDNIGHT - DAY + quarters * QUARTER);
        let forth = solve(&plan, Aim::From(start), &around);
        holds_together(&plan, &forth);
        if forth.conflicts.is_empty() {
            prop_assert!(forth.begins >= start);
            prop_assert_eq!(broken(&plan, &forth, &around), (0, 0));
        }
    }

    #[test]
    fn every_change_that_is_offered_solves_it(
        plan in any_plan(7, 2), around in any_around(), quarters in 0..96_i64,
    ) {
        let solved = solve(&plan, table(quarters), &around);
        for change in &solutions(&plan, table(quarters), &around) {
            let (aim, around) = match change {
                Change::TableLater(later) => {
                    prop_assert!(*later > solved.table);
                    (Aim::Table(*later), around.clone())
                }
                Change::TableEarlier(earlier) => {
                    prop_assert!(*earlier < solved.table);
                    (Aim::Table(*earlier), around.clone())
                }
                Change::HelpingHand => {
                    let helped = Around { one_pair_of_hands: false, ..around.clone() };
                    (table(quarters), helped)
                }
                Change::LetLast { step, minutes, longer } => {
                    let limits = plan.steps()[*step].lasts;
                    prop_assert_eq!(*longer, *minutes > limits.most());
                    prop_assert!(*longer || *minutes < limits.least());
                    continue;
                }
            };
            prop_assert!(solve(&plan, aim, &around).conflicts.is_empty(), "{:?}", change);
        }
    }

    /// What has been done stays where it was; what is to come is not before it, nor before now.
    #[test]
    fn what_has_been_done_stays_and_the_rest_follows(
        plan in any_plan(8, 3), around in any_around(), quarters in 0..96_i64,
        first in 0..8_usize, late in -8..16_i64,
    ) {
        let planned = solve(&plan, table(quarters), &around);
        let roots = (0..plan.steps().len()).filter(|place| plan.steps()[*place].after.is_empty());
        let roots: Vec<usize> = roots.collect();
        let place = roots[first.min(roots.len() - 1)];
        let began = planned.steps[place].begins;
        let ended = at((planned.steps[place].ends.seconds() + late * QUARTER).max(began.seconds()));
        let around = Around {
            now: Some(ended),
            done: vec![Done { step: place, began, ended: Some(ended) }],
            ..around
        };
        let again = solve(&plan, table(quarters), &around);
        prop_assert_eq!(again.steps[place].begins, began);
        prop_assert_eq!(again.steps[place].ends, ended);
        if again.conflicts.is_empty() {
            for (other, timed) in again.steps.iter().enumerate() {
                prop_assert!(other == place || timed.begins >= ended);
            }
        }
        for change in &solutions(&plan, table(quarters), &around) {
            if let Change::TableLater(later) = change {
                let later = solve(&plan, Aim::Table(*later), &around);
                prop_assert!(later.conflicts.is_empty());
            }
        }
    }

}

proptest! {
    #![proptest_config(cases(60))]

    /// Any times at all are answered.
    #[test]
    fn any_times_are_answered(
        plan in any_plan(12, 5), table in 0..253_402_300_799_i64, now in 0..253_402_300_799_i64,
        began in 0..253_402_300_799_i64, ended in 0..253_402_300_799_i64, around in any_around(),
    ) {
        let done = |ended| Done { step: 0, began: at(began), ended };
        for done in [vec![], vec![done(None)], vec![done(Some(at(ended)))]] {
            let around = Around { now: Some(at(now)), done, ..around.clone() };
            let solved = solve(&plan, Aim::Table(at(table)), &around);
            prop_assert_eq!(solved.steps.len(), plan.steps().len());
            let forth = solve(&plan, Aim::From(at(table)), &around);
            prop_assert_eq!(forth.steps.len(), plan.steps().len());
        }
    }
}
