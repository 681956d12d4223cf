//! The dough of the known rises: a usual one unless somebody said otherwise.

use softcrumb::engine::formula::Formula;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::engine::rise::YeastActivity;
use softcrumb::results::day::{self, DayInput};
use softcrumb::results::run::Run;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::storage::record::Record;

use crate::bench_results::NOW;
use crate::days::{minutes, ms};

fn own_dough() -> YeastActivity {
    let share = |of: f64| Share::from_fraction(of).unwrap();
    YeastActivity::of(share(0.01), share(0.1), share(0.018)).unwrap()
}

/// A record as an earlier release wrote it: a dough beside times that nobody had stated.
fn earlier(minutes: u16) -> String {
    format!(
        r#"{{"softcrumb":"day","version":1,"rises":{{"bulk":{{"minutes":{minutes},"at_c":26}},
        "rest_min":15,"proof":{{"minutes":60,"at_c":28}},
        "dough":{{"yeast_share":0.01,"sugar_share":0.1,"salt_share":0.018}},
        "bench_min":40,"fridge_min":720,"volume_times":2}}}}"#
    )
}

#[test]
fn a_dough_that_an_earlier_release_put_beside_the_usual_rises_is_not_known() {
    let usual = DaySettings::read(&earlier(60)).unwrap();
    assert_eq!(usual.rises.dough, None);
    let stated = DaySettings::read(&earlier(75)).unwrap();
    assert_eq!(stated.rises.dough, Some(own_dough()));
}

#[test]
fn a_dough_that_was_said_to_have_the_usual_rises_is_stored() {
    let mut said = DaySettings::default();
    said.rises.dough = Some(own_dough());
    assert_eq!(DaySettings::read(&said.write()).unwrap(), said);
    said.rises.bulk.time = minutes(90.0);
    assert_eq!(DaySettings::read(&said.write()).unwrap(), said);
}

fn yeast_times(formula: &Formula, times: f64) -> Formula {
    let mut changed = formula.clone();
    let lines = changed.parts.iter_mut().flat_map(|part| &mut part.lines);
    for line in lines.filter(|line| line.food.role() == softcrumb::engine::ingredients::Role::Yeast)
    {
        line.mass = Mass::from_grams(line.mass.grams() * times).unwrap();
    }
    changed
}

fn run(sheet: &Sheet, settings: &DaySettings, times: f64) -> Run {
    let sheet = Sheet {
        formula: yeast_times(&sheet.formula, times),
        ..sheet.clone()
    };
    let input = DayInput {
        sheet: &sheet,
        kitchen: &Kitchen::default(),
        settings,
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: ms(NOW),
        bench: None,
    };
    day::of(&input).unwrap().run
}

/// Common practice: less yeast rises longer. By the printed proportion the time is one over how many
/// times as fast the yeast works, as far as the range of the rise leaves open.
#[test]
fn half_the_yeast_rises_longer_and_twice_shorter_without_a_dough_of_its_own() {
    let settings = DaySettings::read(&earlier(60)).unwrap();
    for (_, sheet) in examples() {
        let bulk = |times: f64| {
            let run = run(&sheet, &settings, times);
            let rise = run.rises.bulk.unwrap();
            let spread = rise.asked.anchor.spread.fraction();
            (
                rise.due.minutes(),
                run.references.yeast_activity.number(),
                spread,
            )
        };
        let (usual, speed, spread) = bulk(1.0);
        for times in [0.5, 2.0] {
            let (due, now, _) = bulk(times);
            assert_eq!(due > usual, times < 1.0, "{} {times}", sheet.name);
            let slower = speed / now;
            let range = slower / (1.0 + spread)..=slower * (1.0 + spread);
            assert!(
                range.contains(&(due / usual)),
                "{} {due} {usual} {slower}",
                sheet.name
            );
        }
    }
}
