//! A preferment that is not ripe in time, in words: what the plan says, and that its way out is one.

use super::days::plan;
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Mass, Minutes, Temperature};
use softcrumb::engine::rise::RiseSettings;
use softcrumb::results::day::{DayInput, of};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::text::day;

/// The first example with so much less yeast in its preferment.
fn less_yeast(times: f64) -> Sheet {
    let mut sheet = examples().remove(0).1;
    for part in &mut sheet.formula.parts {
        if part.kind == softcrumb::engine::formula::PartKind::Preferment {
            for line in &mut part.lines {
                if line.food.role() == softcrumb::engine::ingredients::Role::Yeast {
                    line.mass = Mass::from_grams(line.mass.grams() / times).unwrap();
                }
            }
        }
    }
    sheet
}

/// Common practice: little yeast in a cool room wants a warmer start, or more yeast; after the stand
/// that is advised nothing is in the way.
#[test]
fn a_preferment_that_is_not_ripe_is_in_the_way_with_its_way_out() {
    let found = [1.0, 1.1, 1.2, 1.3, 1.5, 2.0].map(|times| {
        let sheet = less_yeast(times);
        let results = plan(&sheet, 17.0, Target::Open);
        (sheet, results)
    });
    let mut under = found
        .iter()
        .filter(|(_, results)| !results.preferment_conflicts.is_empty());
    let (sheet, results) = under.next().unwrap();
    let conflict = &results.preferment_conflicts[0];
    let zone = Zone::default();
    let said = day::preferment_conflict(conflict, results, &sheet.formula, &zone, british());
    is_plain(&said);
    assert!(said.contains("is not ripe"), "{said}");
    let ripe = said.contains("it would be ripe ") || said.contains("nor two days later");
    assert!(ripe, "{said}");
    assert!(
        conflict.stand.is_some() || conflict.yeast.is_some(),
        "{said}"
    );
    let Some(bench) = conflict.stand else { return };
    let kitchen = Kitchen {
        room: Temperature::from_celsius(17.0).unwrap(),
        ..Kitchen::default()
    };
    let settings = DaySettings {
        rises: RiseSettings {
            bench,
            ..RiseSettings::default()
        },
        ..DaySettings::default()
    };
    let after = of(&DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &Learnt::default(),
        rounded: None,
        zone: &zone,
        now: super::days::friday(),
        bench: None,
    });
    assert_eq!(after.unwrap().preferment_conflicts, []);
    assert!(bench > Minutes::ZERO);
}
