//! One question, one answer: when the bread is ready, what a rise is scaled from, what solves a conflict.

use super::days::{friday, minutes, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, learn};
use softcrumb::engine::plan::{PlanError, StepKind};
use softcrumb::engine::quantity::Instant;
use softcrumb::engine::rise::ReferenceBasis;
use softcrumb::results::day::{DayInput, DayResults, of};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};
use softcrumb::text::chart::day_ribbon;
use softcrumb::text::{ErrorText, day, format};

/// The toast loaf, which has no night.
fn toast() -> Sheet {
    examples().remove(1).1
}

fn in_hours(hours: i64) -> Target {
    let seconds = friday().instant().seconds() + hours * 3600;
    Target::Table(Moment::from_instant(
        Instant::from_seconds(seconds).unwrap(),
    ))
}

/// By definition: bread has one time at which it is ready, in the head, the row, the picture and the
/// line, also where it lies ready until the time that was set.
#[test]
fn the_bread_is_ready_at_one_time() {
    let sheet = toast();
    let zone = Zone::default();
    let mut lies = 0;
    for hours in 8..24 {
        let results = plan(&sheet, 21.0, in_hours(hours));
        let Some(said) = day::ready_between(&results, &zone) else {
            continue;
        };
        let ready = format::day_and_clock(results.ready_to_cut(), &zone);
        assert!(said.contains(&ready), "{said}");
        let row = day::when_answer(&results, &zone);
        assert!(row.contains(&ready), "{row}");
        let picture = day_ribbon(&results, &zone, british());
        assert!(picture.contains(&ready), "{picture}");
        let label = day::table_label(&results, &zone);
        let weekday = format::weekday(results.ready_to_cut(), &zone);
        assert!(label.contains(weekday), "{label}");
        let early = results.solved.table.since(results.ready_to_cut());
        lies += i32::from(early > minutes(5.0));
    }
    assert!(lies > 0, "bread lies ready somewhere");
}

/// A day of the toast loaf after a bake whose bulk rise took 50 min where an hour was expected.
fn taught() -> (DaySettings, DayResults) {
    let bake = Observation {
        bulk: Some(MeasuredDuration {
            expected: minutes(60.0),
            minutes: minutes(50.0),
        }),
        ..Observation::default()
    };
    let kitchen = Kitchen::default();
    let learnt = learn(&[bake], kitchen.mixer.friction);
    let (sheet, settings) = (toast(), DaySettings::default());
    let results = of(&DayInput {
        sheet: &sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &learnt,
        rounded: None,
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    });
    (settings, results.unwrap())
}

/// By definition: the known rise that a day is worked out from is one figure wherever it is told, and it
/// is told whose it is.
#[test]
fn the_known_rise_is_that_of_the_bakes_where_these_have_taught_one() {
    let (settings, results) = taught();
    let references = &results.run.references;
    assert_eq!(references.bulk.basis, ReferenceBasis::Bakes(1));
    let time = format::minutes(references.bulk.time, british());
    let row = day::known_answer(&settings, Some(references), british());
    assert!(
        row.contains(&format!("bulk {time} at 26")) && row.contains("by your bakes, proof"),
        "{row}"
    );
    let risen = results.run.rises.bulk.as_ref().unwrap();
    let product = day::rise_difference(risen, results.bulk_place, british());
    is_plain(&product);
    let begins = format!("{time} (by your bakes, at 26");
    assert!(product.starts_with(&begins), "{product}");
    is_plain(day::taught_rises(references).unwrap());
    // Without bakes it is the formula's own, everywhere.
    let before = plan(&toast(), 21.0, Target::Open);
    let own = day::known_answer(&settings, Some(&before.run.references), british());
    assert!(!own.contains("your bakes"), "{own}");
    assert_eq!(own, day::known_answer(&settings, None, british()));
    assert_eq!(day::taught_rises(&before.run.references), None);
    assert_eq!(Learnt::default().bulk, None);
}

/// By definition: one is not any one of several.
#[test]
fn a_single_way_out_is_not_any_one_of_these() {
    assert_eq!(day::what_solves(1), "This solves it");
    assert_eq!(day::what_solves(2), "Any one of these solves it");
}

/// By definition: what is set going is not over.
#[test]
fn what_is_set_going_is_not_called_done() {
    for kind in StepKind::ALL {
        let said = day::done(kind);
        // As long as the longest button there was beside Back.
        assert!(said.chars().count() <= "Finish and save to the log".chars().count());
    }
    assert_eq!(day::done(StepKind::ChillPaste), "It is in the fridge");
    assert_eq!(day::done(StepKind::Mix), "Done");
}

/// By definition: a message says where to go.
#[test]
fn a_day_without_a_dough_says_where_to_begin() {
    let said = PlanError::NoDough.sentence(british());
    is_plain(&said);
    assert!(said.contains("Formula"), "{said}");
}
