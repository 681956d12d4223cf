//! A paste that cools too slowly, in words: which, by whose rules, how it lies, and what cures it.

use super::days::{minutes, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::heat::RuleSet;
use softcrumb::engine::quantity::Factor;
use softcrumb::sheet::day::Target;
use softcrumb::sheet::examples;
use softcrumb::text::day;

/// Common practice: food that was out for ten hours is thrown away.
#[test]
fn own_times_that_fail_are_shown_with_the_way_that_passes() {
    let (_, mut sheet) = examples().remove(0);
    sheet.heat.cooling.set_own(true);
    sheet.heat.cooling.set_bench(minutes(600.0));
    let results = plan(&sheet, 22.0, Target::Open);
    let conflict = &results.paste_conflicts[0];
    let rules = RuleSet::default();
    let said = day::paste_conflict(conflict, rules, &sheet.formula, british());
    is_plain(&said);
    let part = &sheet.formula.parts[conflict.part].name;
    assert!(said.contains(part) && said.contains("too slowly"), "{said}");
    assert!(said.contains("on the bench, then the fridge"), "{said}");
    let cure = day::paste_cure(conflict, british()).unwrap();
    assert!(
        cure.starts_with("Cool it the quickest way that passes: "),
        "{cure}"
    );
}

/// Common practice: what is too much for any vessel is cooked in portions.
#[test]
fn what_no_vessel_cools_is_shown_in_portions() {
    let (_, mut sheet) = examples().remove(0);
    let told: Vec<String> = [10.0, 20.0, 40.0, 80.0, 160.0, 1000.0]
        .into_iter()
        .filter_map(|times| {
            sheet.batch.wanted = BatchTarget::Times(Factor::from_number(times).unwrap());
            let results = plan(&sheet, 22.0, Target::Open);
            let conflict = results.paste_conflicts.first()?;
            assert_eq!(day::paste_cure(conflict, british()), None);
            let rules = RuleSet::default();
            Some(day::paste_conflict(
                conflict,
                rules,
                &sheet.formula,
                british(),
            ))
        })
        .collect();
    told.iter().for_each(|said| is_plain(said));
    assert!(
        told.iter().any(|said| said.contains("portions")),
        "{told:?}"
    );
    assert!(
        told.iter().any(|said| said.contains("Make less of it")),
        "{told:?}"
    );
}
