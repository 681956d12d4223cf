//! What is no conflict of a plan, no remedy and no plan at all: a few minutes, the time that is set, a
//! formula without a dough.

use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{
    Aim, Around, Change, Conflict, DurationRange, Plan, PlanError, Step, StepKind, solutions, solve,
};
use softcrumb::engine::quantity::Instant;
use softcrumb::results::day::{self, DayInput};
use softcrumb::sheet::civil::{Clock, Zone};
use softcrumb::sheet::day::{DaySettings, Sleep, Target};
use softcrumb::sheet::{Kitchen, Sheet, examples};

use crate::days::{minutes, ms, step};
use crate::starts_now::{FRIDAY, TOAST, after, ask};

/// Common practice: nobody gets up at 6:30 sharp; work that begins a minute before is no work at night.
#[test]
fn work_a_minute_before_one_wakes_is_no_conflict_and_half_an_hour_is() {
    let sheet = examples().remove(TOAST).1;
    let set = after(FRIDAY, 60.0 * 22.0);
    let begins = |sleep| {
        let settings = DaySettings {
            target: Target::Table(set),
            sleep,
            ..DaySettings::default()
        };
        ask((&sheet, &settings), None, ms(FRIDAY), |_, results| {
            (results.solved.begins, results.solved.conflicts.clone())
        })
    };
    let (first, _) = begins(None);
    let asleep = |until: f64| {
        let until = Zone::default().civil(first.later(minutes(until))).clock;
        Some(Sleep {
            from: Clock::from_hour(3, 0).unwrap(),
            until,
        })
    };
    let (again, none) = begins(asleep(2.0));
    assert_eq!((again, none), (first, vec![]));
    // Bread may lie a night before it is cut, but not be cut before it is made.
    let late = begins(asleep(60.0 * 8.0)).1;
    assert!(
        late.iter()
            .any(|one| matches!(one, Conflict::AtNight { .. }))
    );
}

/// By definition: what is offered reads otherwise than what is set, and to whole five minutes, so that
/// it is read as it is set.
#[test]
fn no_remedy_is_the_time_that_is_set() {
    let lasts = DurationRange::just(minutes(60.0));
    let bulk = Step::new(step(StepKind::Bulk, 0), lasts, minutes(1.0), vec![]);
    let plan = Plan::of(vec![bulk]).unwrap();
    let at = |seconds| Instant::from_seconds(seconds).unwrap();
    let around = |now| Around {
        now: Some(now),
        ..Around::default()
    };
    let offered = |late: i64| {
        let (table, around) = (at(36_000), around(at(32_400 + late)));
        let solved = solve(&plan, Aim::Table(table), &around);
        assert_eq!(solved.conflicts.len(), 1);
        solutions(&plan, Aim::Table(table), &around)
    };
    assert_eq!(offered(30), []);
    assert_eq!(offered(90), [Change::TableLater(at(36_300))]);
}

/// By definition: without a dough there is nothing to plan.
#[test]
fn an_empty_formula_has_no_plan() {
    let sheet = examples().remove(0).1.emptied();
    let of = |sheet: &Sheet| {
        day::of(&DayInput {
            sheet,
            kitchen: &Kitchen::default(),
            settings: &DaySettings::default(),
            learnt: &Learnt::default(),
            rounded: None,
            zone: &Zone::default(),
            now: ms(FRIDAY),
            bench: None,
        })
    };
    assert_eq!(of(&sheet).err(), Some(PlanError::NoDough));
    assert!(of(&examples().remove(0).1).is_ok());
}
