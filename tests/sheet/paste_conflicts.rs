//! Cooling by the user's own times that fails the chosen rules: the plan of the day says so, with
//! its cure.

use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::heat::RuleSet;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::Factor;
use softcrumb::results::day::{self, DayInput, DayResults, PasteCure};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Sheet, examples};

use crate::days::{minutes, ms};

fn plan(sheet: &Sheet, rules: RuleSet) -> DayResults {
    let kitchen = Kitchen {
        rules,
        ..Kitchen::default()
    };
    day::of(&DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: ms(1_774_634_400_000.0),
        bench: None,
    })
    .unwrap()
}

/// Source: FDA, Food Code 2022, 3-501.14: from 57 to 21 °C within 2 h, to 5 °C within 6 h in all.
/// A covered bowl that stands out for ten hours meets no such rule.
#[test]
fn own_times_that_are_too_slow_are_shown_for_every_example_and_one_tap_cures_them() {
    let mut pastes = 0;
    for (_, mut sheet) in examples() {
        for rules in RuleSet::ALL {
            sheet.heat.cooling.set_own(false);
            let chosen = plan(&sheet, rules);
            assert_eq!(chosen.paste_conflicts, [], "{}", sheet.name);
            sheet.heat.cooling.set_own(true);
            sheet.heat.cooling.set_bench(minutes(600.0));
            let slow = plan(&sheet, rules);
            assert_eq!(slow.paste_conflicts.len(), slow.run.coolings.len());
            for conflict in &slow.paste_conflicts {
                assert_eq!(conflict.way.bench, minutes(600.0));
                let cure = conflict.cure.unwrap();
                let PasteCure::Quickest { way, .. } = cure else {
                    panic!("{cure:?}");
                };
                // A run without times of its own uses the way that the remedy names.
                let taken = chosen.run.cooling(conflict.part).unwrap();
                assert_eq!(taken.plan.way, way);
                pastes += 1;
            }
        }
    }
    assert!(pastes >= 6, "{pastes}");
}

/// Common practice: what is too much for one vessel is cooked in portions.
#[test]
fn a_paste_that_no_way_cools_is_cooked_in_portions() {
    let (_, mut sheet) = examples().remove(0);
    let mut cures = Vec::new();
    for times in [10.0, 20.0, 40.0, 80.0, 160.0] {
        sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
        let planned = plan(&sheet, RuleSet::default());
        cures.extend(planned.paste_conflicts.first().map(|one| one.cure));
    }
    assert!(
        cures
            .iter()
            .any(|cure| matches!(cure, Some(PasteCure::Portions(2..=4)))),
        "{cures:?}"
    );
}
