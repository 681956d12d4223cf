//! Card and bench are one list: the same steps, sentences and weights.

use softcrumb::engine::class::{ClassSettings, oven};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepKind, weighed_at};
use softcrumb::results::batch::{self, BatchResults, class_batch};
use softcrumb::results::day::{
    self as results, DayInput, DayResults, Doing, as_the_run_bakes, begin_bake, bench_list,
    bench_screen, doing, first_load, is_later, step_done,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};
use softcrumb::text::day::{bench_sentence, step_number};
use softcrumb::text::share::{card_steps, card_weights, with_loads};
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

/// Thirteen loaves, six at a time, are three loads, so far apart as a bake and the 10 min in between
/// (by definition). A student has the steps of one loaf in the order they are done, and one sentence,
/// where the dough begins, for whoever's loaf goes in later.
#[test]
fn a_student_has_the_steps_of_one_loaf_and_is_told_of_the_loads_where_its_dough_begins() {
    let (_, sheet) = examples().remove(0);
    let kitchen = Kitchen::default();
    let learnt = Learnt::default();
    let mut settings = DaySettings::default();
    let class = class_batch::with_own_loaf(&sheet, ClassSettings::default());
    let class = as_the_run_bakes(&sheet, class, &kitchen, (&settings, &learnt));
    let class_oven = oven(13.try_into().unwrap(), class.oven).unwrap();
    settings.loads = class_oven.as_planned();
    let whole = results::evening_list(&sheet, &kitchen, None, (&settings, &learnt));
    let alone = results::evening_list(&sheet, &kitchen, None, (&DaySettings::default(), &learnt));
    assert!(whole.len() > alone.len());

    let list = first_load(whole.clone());
    // Other loads move what can wait, so the steps are compared, not their order.
    let kinds = |list: &[results::ListedStep]| {
        let all = list.iter().map(|one| format!("{:?}", one.step.at));
        let mut all: Vec<String> = all.collect();
        all.sort();
        all
    };
    assert_eq!(kinds(&list), kinds(&alone));
    // The bread cools from when its own load is out, not the last.
    let cool = list.last().unwrap();
    let bake = list.iter().rfind(|one| one.step.at.work == StepKind::Bake);
    assert_eq!(cool.timed.begins, bake.unwrap().timed.ends);

    let mut steps = card_steps(&list, &sheet.formula, None, british());
    with_loads(&mut steps, &list, &class_oven, british());
    let told: Vec<usize> = (0..steps.len())
        .filter(|at| steps[*at].says.contains("The class bakes in 3 loads"))
        .collect();
    let begins = list
        .iter()
        .position(|one| one.step.at.work == StepKind::Mix);
    assert_eq!(told, [begins.unwrap()]);
    let apart = class.oven.bake.minutes() + 10.0;
    let later = format!("begin this step {apart:.0}\u{a0}min later for load 2 and ");
    let told = &steps[told[0]].says;
    assert!(told.contains(&later), "{told} {later}");

    // On the card of all loads, each step of a later one says what to do, and how long or how late.
    for (step, listed) in card_steps(&whole, &sheet.formula, None, british())
        .iter()
        .zip(&whole)
        .filter(|(_, listed)| is_later(listed.step.at.work))
    {
        assert!(step.says.contains("min"), "{}: {}", step.name, step.says);
        is_plain(&step.says);
        assert!(listed.step.at.of > 1);
    }
}
