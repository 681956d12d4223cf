//! When the bread is ready: the same sentence at every place, with its range and its margin.

use super::days::{friday, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::quantity::Instant;
use softcrumb::results::batch;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::Target;
use softcrumb::sheet::{Kitchen, Moment, Pantry, examples};
use softcrumb::text::share::{CardList, bench_card};
use softcrumb::text::{day, format};

fn in_hours(hours: i64) -> Moment {
    let seconds = friday().instant().seconds() + hours * 3600;
    Moment::from_instant(Instant::from_seconds(seconds).unwrap())
}

#[test]
fn a_wished_time_says_how_late_it_may_be_and_how_much_sooner_to_aim() {
    for (_, sheet) in examples() {
        let results = plan(&sheet, 22.0, Target::Table(in_hours(26)));
        let said = day::ready(&results, &Zone::default(), british()).unwrap();
        is_plain(&said);
        let [soonest, latest] = results.ready.as_ref().unwrap().shown();
        let clock = |at| format::clock_at(at, &Zone::default());
        let range = format!("between {} and {}.", clock(soonest), clock(latest));
        assert!(
            said.starts_with("Ready to cut ") && said.contains(&range),
            "{said}"
        );
        let wished = results.solved.table;
        let margin = if latest > wished {
            let late = format::minutes(latest.since(wished), british());
            format!("set it {late} earlier")
        } else {
            let spare = format::minutes(wished.since(latest), british());
            format!("there are {spare} to spare")
        };
        assert!(said.contains(&margin), "{said}");
    }
}

#[test]
fn a_plan_from_its_start_has_a_range_and_no_margin() {
    let (_, sheet) = examples().remove(0);
    let results = plan(&sheet, 22.0, Target::From(in_hours(1)));
    let said = day::ready(&results, &Zone::default(), british()).unwrap();
    assert!(
        said.contains("between") && !said.contains("you set"),
        "{said}"
    );
}

#[test]
fn calendar_and_paper_say_the_same_sentence_once() {
    let (_, sheet) = examples().remove(0);
    let results = plan(&sheet, 22.0, Target::Table(in_hours(26)));
    let said = day::ready(&results, &Zone::default(), british()).unwrap();
    let zone = Zone::default();
    let events = day::calendar_events(&results, &sheet.formula, "own", &zone, british());
    let with: Vec<_> = events
        .iter()
        .filter(|event| event.description.contains(&said))
        .collect();
    assert_eq!(with.len(), 1);
    assert_eq!(with[0].ends, results.solved.table);
    let batch = batch::of(&sheet, Kitchen::default().scales);
    let list = CardList {
        list: &[],
        steps: &[],
    };
    let pantry = Pantry::default();
    let card = bench_card(&sheet, &batch, list, (&pantry, None), british()).unwrap();
    let card = card.with_ready(&said, None);
    assert!(card.notes.iter().any(|(_, note)| *note == said));
    assert!(card.fit.one_page);
}

/// JCGM 100:2008, 5.1.2: each line of the working is a sum in quadrature, or what a wait takes off.
#[test]
fn the_working_of_the_table_names_every_step_that_counts() {
    let (_, sheet) = examples().remove(0);
    let results = plan(&sheet, 22.0, Target::Table(in_hours(26)));
    let lines = day::table_working(&results, &sheet.formula);
    let ready = results.ready.unwrap();
    let mut later = lines.iter().rev();
    let later = later
        .find(|line| line.result.of == "later at the latest")
        .unwrap();
    assert!((later.result.value - ready.later.minutes.minutes()).abs() < 1e-9);
    assert!(
        later
            .with
            .iter()
            .any(|given| given.of == "dough not measured")
    );
}
