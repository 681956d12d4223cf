//! The bench while there is nothing to do: what is warmed before the mix, what a rise looks like, one
//! number for when the bread is ready.

use super::days::{celsius, friday, minutes, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::formula::PartKind;
use softcrumb::engine::heat::DoughRemedy;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::results::day::{BenchStep, DayInput, DayResults, before_mixing, bench_step, of};
use softcrumb::results::heat::{DoughQuestion, simplest_first};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::text::{day, format};

const fn at(work: StepKind) -> StepAt {
    StepAt { work, of: 0 }
}

fn in_a_day<T>(sheet: &Sheet, seen: impl Fn(&DayInput, &DayResults) -> T) -> T {
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    seen(&input, &of(&input).unwrap())
}

/// Common practice: milk, bowl and flour are warmed before the mixer starts.
#[test]
fn what_is_warmed_is_told_before_the_mix() {
    let mut sheet = examples().remove(0).1;
    let nothing = in_a_day(&sheet, |input, results| {
        before_mixing(input, results, at(StepKind::Mix))
    });
    assert_eq!(nothing, None);
    sheet.heat.mixing_bowl = Some(celsius(40.0));
    let mut parts = sheet.formula.parts.iter_mut();
    let dough = parts.find(|part| part.kind == PartKind::Final).unwrap();
    let liquid = dough.lines.iter_mut().find(|line| line.is_liquid());
    liquid.unwrap().temperature = Some(celsius(38.0));
    let said = in_a_day(&sheet, |input, results| {
        let found = before_mixing(input, results, at(StepKind::Mix)).unwrap();
        let (_, mix) = results.find(at(StepKind::Mix)).unwrap();
        assert!(found.at < mix.begins);
        day::before_mixing(&found, &sheet.formula, input.zone, british())
    });
    is_plain(&said);
    let said = said.replace('\u{A0}', " ");
    assert!(
        said.contains("to 38 °C") && said.contains("the bowl to 40 °C"),
        "{said}"
    );
    assert!(said.contains("out of the fridge"), "{said}");
}

/// Common practice: dough and not clock says when a rise is over.
#[test]
fn a_rise_says_where_how_warm_and_what_to_look_for() {
    let sheet = examples().remove(0).1;
    let said = in_a_day(&sheet, |input, results| {
        let found = bench_step(input, results, at(StepKind::Proof)).unwrap();
        day::bench_meanwhile(&found, &sheet.formula, input.zone, british()).unwrap()
    });
    is_plain(&said);
    assert!(
        said.contains("°C") && said.contains("gentle press"),
        "{said}"
    );
}

/// By definition: the time to cut from is the time the bread is ready.
#[test]
fn cut_it_from_when_it_is_ready() {
    for (_, sheet) in examples() {
        in_a_day(&sheet, |input, results| {
            let Some(BenchStep::Cool { cut, .. }) = bench_step(input, results, at(StepKind::Cool))
            else {
                panic!("it cools");
            };
            let ready = results.ready.as_ref().unwrap().likely;
            assert_eq!(cut, ready);
            assert_eq!(results.ready_to_cut(), ready);
        });
    }
}

/// By definition: what is between two clocks is their difference as they show.
#[test]
fn a_time_between_clocks_is_that_of_the_clocks() {
    for (_, sheet) in examples() {
        let results = plan(&sheet, 17.0, Target::Open);
        let (from, until) = (results.solved.begins, results.solved.table);
        let between = format::between_clocks(from, until).minutes();
        assert!((between - between.round()).abs() < 1e-9, "{between}");
        assert!((between - until.since(from).minutes()).abs() <= 1.0);
    }
    // An hour is sixty minutes.
    let shown = |low, high| {
        format::minutes_range(minutes(low), minutes(high), british()).replace('\u{A0}', " ")
    };
    assert_eq!(shown(50.0, 80.0), "50 min to 1 h 20 min");
    assert_eq!(format::box_minutes(minutes(169.9), british()), "170");
}

/// By definition: one thing to do is simpler than two.
#[test]
fn the_simplest_remedy_is_told_first() {
    let sheet = examples().remove(0).1;
    let wanted = sheet.heat.dough;
    let results = plan(&sheet, 17.0, Target::Open);
    let kitchen = Kitchen::default();
    let load = &results.run.mixing.as_ref().unwrap().load;
    let found = DoughQuestion::as_it_is(load, wanted, &kitchen).remedies();
    let sorted = simplest_first(found.unwrap(), wanted);
    let number = |remedy: &DoughRemedy| remedy.steps().count();
    assert!(!sorted.is_empty());
    assert!(
        sorted
            .windows(2)
            .all(|pair| number(&pair[0]) <= number(&pair[1]))
    );
}
