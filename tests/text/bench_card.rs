//! Card and bench are one list: the same steps, sentences and weights.

use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepKind, weighed_at};
use softcrumb::results::batch::{self, BatchResults};
use softcrumb::results::day::{
    self as results, DayInput, DayResults, Doing, begin_bake, bench_list, bench_screen, doing,
    step_done,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};
use softcrumb::text::day::{bench_sentence, step_number};
use softcrumb::text::share::{card_steps, card_weights};
use softcrumb::text::{format, weighing};

use crate::days::friday;
use crate::format_options::british;
use crate::plain_speech::is_plain;

fn in_a_day<T>(sheet: &Sheet, ask: impl Fn(&DayInput, &DayResults, &BatchResults) -> T) -> T {
    let kitchen = Kitchen::default();
    let batch = batch::of(sheet, kitchen.scales);
    let input = DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: batch.rounded.as_ref(),
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    ask(&input, &results::of(&input).unwrap(), &batch)
}

/// The bench is gone through as a baker does; each step it shows is the next of the card.
#[test]
fn the_card_has_the_steps_that_the_bench_goes_through() {
    for (_, sheet) in examples() {
        in_a_day(&sheet, |input, plan, _| {
            let list = bench_list(input, plan);
            let id = Id::from_random(1);
            let mut bench = begin_bake(id, None, input.now, input, Some(plan));
            let mut seen = Vec::new();
            while let Some(step) = bench_screen(Some(plan), Some(&bench), input.now).step {
                let of = bench_screen(Some(plan), Some(&bench), input.now).of;
                assert_eq!(of, list.len(), "{}", step_number(1, 1, british()));
                seen.push(step);
                step_done(&mut bench, plan, step, input.now);
                assert!(seen.len() <= list.len());
            }
            let listed: Vec<_> = list.iter().map(|one| one.step.at).collect();
            assert_eq!(seen, listed);
            // What has no number begins by itself, and is on the list once.
            let runs = list.iter().flat_map(|one| &one.runs);
            assert!(
                runs.clone()
                    .all(|one| doing(one.at.work) == Doing::ByItself)
            );
            assert_eq!(runs.count() + list.len(), plan.plan.steps().len());
        });
    }
}

#[test]
fn with_a_clock_the_sentences_are_those_of_the_bench() {
    for (_, sheet) in examples() {
        in_a_day(&sheet, |input, plan, _| {
            let list = bench_list(input, plan);
            let steps = card_steps(&list, &sheet.formula, Some(input.zone), british());
            for (step, listed) in steps.iter().zip(&list) {
                let said = bench_sentence(&listed.figures, &sheet.formula, input.zone, british());
                assert!(step.says.starts_with(&said), "{}", step.says);
                assert!(step.begins.is_some());
            }
            // Without one they say how long: no time of day is in them.
            for step in card_steps(&list, &sheet.formula, None, british()) {
                let runs = step.runs.iter().map(|(_, says)| says);
                for said in runs.chain([&step.says]) {
                    is_plain(said);
                    assert!(!said.contains(':') || !said.contains("Sat"), "{said}");
                }
            }
        });
    }
}

/// What a step weighs at the bench is on the card with the same figure; what goes in whole too.
#[test]
fn the_weights_are_those_of_the_bench() {
    for (_, sheet) in examples() {
        in_a_day(&sheet, |input, plan, batch| {
            let rounded = batch.rounded.as_ref().unwrap();
            let list = bench_list(input, plan);
            let card = card_weights(rounded, &list, british());
            let shown: Vec<&str> = card
                .iter()
                .flat_map(|part| &part.lines)
                .map(|line| line.1.as_str())
                .collect();
            for step in &list {
                let places = weighed_at(step.step.at, &plan.plan, &sheet.formula);
                assert_eq!(step.weighing.places(), places);
                for line in &step.weighing.lines {
                    let weighed = weighing::to_weigh(rounded.line(line.at).unwrap(), british());
                    assert!(shown.contains(&weighed.as_str()), "{weighed}");
                }
                for part in &step.weighing.parts {
                    let own = format::mass(part.mass, british());
                    assert!(shown.contains(&own.as_str()), "{own}");
                }
            }
            let mixes = list.iter().filter(|one| one.step.at.work == StepKind::Mix);
            let whole: usize = mixes.map(|one| one.weighing.parts.len()).sum();
            let lines: usize = sheet
                .formula
                .parts
                .iter()
                .map(|part| part.lines.len())
                .sum();
            assert_eq!(shown.len(), lines + whole);
        });
    }
}

/// No time of day is known of a card that nobody has planned.
#[test]
fn a_list_without_a_plan_begins_in_the_evening() {
    let (_, sheet) = examples().remove(0);
    let list = results::usual_list(&sheet, &Kitchen::default(), None);
    let six = Moment::from_milliseconds(18.0 * 3_600_000.0).unwrap();
    assert!(list[0].timed.begins >= six.instant());
}
