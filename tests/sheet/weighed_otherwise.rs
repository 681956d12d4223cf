//! Weights that came out otherwise: what they change, where that is told, and what is divided then.

use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::formula::{LineAt, PartKind};
use softcrumb::engine::ingredients::Role;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{Conflict, StepKind};
use softcrumb::engine::quantity::{Division, Mass};
use softcrumb::results::batch::scaled_formula;
use softcrumb::results::day::{
    self, BenchStep, DayInput, DayResults, WeighingEffect, bench_step, late_under_way,
    step_weighing_effect, weighing_effect,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Sheet, examples};

use crate::days::{minutes, ms, step};

/// Friday, 27 March 2026, 18:00.
const FRIDAY: f64 = 1_774_634_400_000.0;

fn grams(mass: f64) -> Mass {
    Mass::from_grams(mass).unwrap()
}

fn with<T>(sheet: &Sheet, bench: &Bench, ask: impl FnOnce(&DayInput, &DayResults) -> T) -> T {
    let main = Division::ONE_GRAM;
    let scales = ScaleSettings { main, pocket: None };
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&round(&scaled_formula(sheet), scales)),
        zone: &Zone::default(),
        now: ms(FRIDAY),
        bench: Some(bench),
    };
    ask(&input, &day::of(&input).unwrap())
}

fn bench() -> Bench {
    Bench::new(Bake::new(Id::from_random(1), ms(FRIDAY)))
}

/// The first line of a role in a part of a kind.
fn line(sheet: &Sheet, kind: PartKind, role: Role) -> LineAt {
    let mut parts = sheet.formula.parts.iter();
    let part = parts.position(|part| part.kind == kind).unwrap();
    let mut lines = sheet.formula.parts[part].lines.iter();
    let line = lines.position(|line| line.food.role() == role).unwrap();
    LineAt { part, line }
}

/// The first example, its preferment raised by 0.37 g of yeast: less than half of what a scale of
/// 1 g shows.
fn little_yeast() -> (Sheet, LineAt) {
    let mut sheet = examples().remove(0).1;
    let yeast = line(&sheet, PartKind::Preferment, Role::Yeast);
    sheet.formula.line_mut(yeast).unwrap().mass = grams(0.37);
    let batch = scaled_formula(&sheet).line(yeast).unwrap().mass.grams();
    assert!((batch - 0.37).abs() < 0.02, "{batch}");
    (sheet, yeast)
}

fn bulk(_: &DayInput, results: &DayResults) -> f64 {
    results.run.rises.bulk.as_ref().unwrap().due.minutes()
}

/// By definition: what was not weighed otherwise is there as asked.
#[test]
fn a_weight_below_the_scale_still_counts_where_another_is_typed() {
    let (sheet, _) = little_yeast();
    let flour = line(&sheet, PartKind::Preferment, Role::Flour);
    let asked = scaled_formula(&sheet).line(flour).unwrap().mass;
    let mut typed = bench();
    typed.weigh(flour, Some(asked));
    let (none, one) = (with(&sheet, &bench(), bulk), with(&sheet, &typed, bulk));
    assert!((none - one).abs() < 0.1, "{none} {one}");
    // Without that yeast it would take longer.
    let mut without = typed.clone();
    without.weigh(
        line(&sheet, PartKind::Preferment, Role::Yeast),
        Some(Mass::ZERO),
    );
    assert!(with(&sheet, &without, bulk) > one + 2.0);
}

fn at(sheet: &Sheet, bench: &Bench, work: StepKind, of: u16) -> WeighingEffect {
    with(sheet, bench, |input, results| {
        step_weighing_effect(input, results, step(work, of))
    })
}

/// Common practice: a weight as the page asks for it is no mistake; ten times the yeast raises the
/// dough much sooner.
#[test]
fn a_weight_as_advised_is_as_planned_and_too_much_yeast_is_told_by_the_rise() {
    let (sheet, yeast) = little_yeast();
    let preferment = u16::try_from(yeast.part).unwrap();
    let mut typed = bench();
    typed.weigh(yeast, Some(grams(0.37)));
    let effect = at(&sheet, &typed, StepKind::MixPreferment, preferment);
    assert_eq!(effect, WeighingEffect::default());
    typed.weigh(yeast, Some(grams(4.0)));
    let effect = at(&sheet, &typed, StepKind::MixPreferment, preferment);
    assert_eq!(effect.differences.len(), 1);
    assert_eq!(effect.rises.len(), 2);
    for (which, [was, now]) in effect.rises {
        assert!(now < was, "{which:?} {was:?} {now:?}");
    }
}

/// Common practice: what went into another bowl is made up for in the mixer, not in the scald.
#[test]
fn a_weight_is_told_where_something_can_be_done_about_it() {
    let sheet = examples().remove(0).1;
    let water = line(&sheet, PartKind::Preferment, Role::Water);
    let asked = scaled_formula(&sheet).line(water).unwrap().mass;
    let mut typed = bench();
    typed.weigh(water, Some(asked + grams(10.0)));
    assert_eq!(
        with(&sheet, &typed, |input, _| weighing_effect(input))
            .differences
            .len(),
        1
    );
    let told = |work, of| at(&sheet, &typed, work, of).differences;
    let own = told(StepKind::MixPreferment, u16::try_from(water.part).unwrap());
    assert!(own.len() == 1 && !own[0].elsewhere);
    let mixed = told(StepKind::Mix, 0);
    assert!(mixed.len() == 1 && mixed[0].elsewhere);
    assert_eq!(told(StepKind::Scald, 0), []);
    assert_eq!(told(StepKind::Divide, 0), []);
}

/// By definition: what is divided is all that was weighed.
#[test]
fn the_dough_that_is_there_is_divided() {
    let sheet = examples().remove(0).1;
    let dough = |bench: &Bench| {
        let found = with(&sheet, bench, |input, results| {
            bench_step(input, results, step(StepKind::Divide, 0))
        });
        let Some(BenchStep::Divide { divided, .. }) = found else {
            panic!("{found:?}")
        };
        divided.unwrap().dough.grams()
    };
    let mut more = bench();
    let flour = line(&sheet, PartKind::Final, Role::Flour);
    let asked = scaled_formula(&sheet).line(flour).unwrap().mass;
    more.weigh(flour, Some(asked + grams(100.0)));
    let added = dough(&more) - dough(&bench());
    // What sticks to the bowl of it is missing.
    assert!((90.0..=100.1).contains(&added), "{added}");
}

/// By definition: what has begun cannot begin at another time.
#[test]
fn a_step_under_way_is_not_told_to_begin_sooner() {
    let sheet = examples().remove(0).1;
    let mut begun = bench();
    with(&sheet, &bench(), |_, results| {
        let place = results.plan.place(step(StepKind::Mix, 0)).unwrap();
        let by = minutes(33.0);
        let late = Conflict::TooLate { step: place, by };
        assert_eq!(late_under_way(results, &begun, &late), None);
        begun.bake.begin(step(StepKind::Mix, 0), ms(FRIDAY));
        assert_eq!(late_under_way(results, &begun, &late), Some(by));
        begun.end(step(StepKind::Mix, 0), ms(FRIDAY));
        assert_eq!(late_under_way(results, &begun, &late), Some(by));
    });
}
