//! Timing of a run: how long each example takes from kettle to table, and what one key costs.

use std::hint::black_box;

use softcrumb::engine::formula::{Figure, LineAt};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::results::batch::{self, BatchResults};
use softcrumb::results::day::{self, DayInput};
use softcrumb::results::formula;
use softcrumb::results::heat::{HeatInput, HeatResults};
use softcrumb::results::run::Run;
use softcrumb::sheet::{Kitchen, Sheet, examples};

use crate::day::AskedDay;
use crate::timing::{MeasuredDuration, Timed, median_of};

/// How often each evaluation is timed.
const TURNS: usize = 201;
/// A whole run of one formula, µs: batch, run, Heat's results, Day's plan.
const BUDGET_OF_RUN: f64 = 1000.0;
/// What one key may cost beyond the same evaluation with nothing changed, µs.
const BUDGET_OF_KEY: f64 = 300.0;

/// The places whose results a key changes.
#[derive(Clone, Copy)]
enum OpenPlace {
    Formula,
    Heat,
    Day,
}

/// The sheet after a digit was typed.
type Typed = fn(&Sheet) -> Option<Sheet>;

/// Everything but the formula that results follow from.
struct Surroundings {
    kitchen: Kitchen,
    day: AskedDay,
    learnt: Learnt,
}

/// Times the run of every example, and one key in the first of them.
pub(crate) fn time() -> Timed {
    let around = Surroundings {
        kitchen: Kitchen::default(),
        day: AskedDay::usual(),
        learnt: Learnt::default(),
    };
    let mut timed = Timed {
        lines: Vec::new(),
        within_budget: true,
    };
    let examples = examples();
    for (_, sheet) in &examples {
        let took = median_of(TURNS, || around.evaluate(sheet));
        let what = format!("run, heat and plan of {}", sheet.name);
        timed.note(&took, &what, BUDGET_OF_RUN);
    }
    if let Some((_, sheet)) = examples.first() {
        for (place, called) in [
            (OpenPlace::Formula, "Formula"),
            (OpenPlace::Heat, "Heat"),
            (OpenPlace::Day, "Day"),
        ] {
            around.time_keys(sheet, place, called, &mut timed);
        }
    }
    timed
}

impl Timed {
    fn note(&mut self, took: &MeasuredDuration, what: &str, budget: f64) {
        self.lines.push(took.say(what, Some(budget)));
        self.within_budget &= took.is_within(budget);
    }
}

/// The first line of the last part, one gram heavier.
fn heavier(sheet: &Sheet) -> Option<Sheet> {
    let mut typed = sheet.clone();
    let part = typed.formula.parts.len().checked_sub(1)?;
    let line = typed.formula.line_mut(LineAt { part, line: 0 })?;
    line.mass = Mass::from_grams(line.mass.grams() + 1.0).ok()?;
    Some(typed)
}

/// One per cent of the flour more water in all.
fn wetter(sheet: &Sheet) -> Option<Sheet> {
    let wet = formula::figures(sheet).share(Figure::TotalWater).ok()?;
    let wet = Share::from_percent(wet.percent() + 1.0).ok()?;
    let at = formula::gives_way(sheet, Figure::TotalWater, None);
    formula::try_figure(sheet, Figure::TotalWater, wet, at).ok()
}

impl Surroundings {
    /// Times a place with nothing changed, and after a digit in two boxes.
    fn time_keys(&self, sheet: &Sheet, place: OpenPlace, called: &str, timed: &mut Timed) {
        let same = median_of(TURNS, || self.evaluate_place(place, sheet));
        timed
            .lines
            .push(same.say(&format!("{called} place, nothing changed"), None));
        let budget = same.median + BUDGET_OF_KEY;
        let boxes: [(&str, Typed); 2] = [("a weight", heavier), ("hydration", wetter)];
        for (typed_in, change) in boxes {
            let key = median_of(TURNS, || {
                change(sheet).map(|typed| self.evaluate_place(place, &typed))
            });
            let what = format!("{called} place, a digit in {typed_in}");
            timed.note(&key, &what, budget);
        }
    }

    /// All that follows from one formula.
    fn evaluate(&self, sheet: &Sheet) {
        let batch = batch::of(black_box(sheet), self.kitchen.scales);
        let input = self.input(sheet, &batch);
        let run = input.run();
        black_box(heat(&input, &batch, &run));
        drop(black_box(day::of_run(&input, run)));
    }

    /// What the memos of the open place compute again after a key.
    fn evaluate_place(&self, place: OpenPlace, sheet: &Sheet) {
        let batch = batch::of(black_box(sheet), self.kitchen.scales);
        let input = self.input(sheet, &batch);
        match place {
            OpenPlace::Formula => drop(black_box(formula::of(sheet))),
            OpenPlace::Heat => {
                let run = input.run();
                drop(black_box(heat(&input, &batch, &run)));
            }
            OpenPlace::Day => drop(black_box(day::of(&input))),
        }
    }

    fn input<'i>(&'i self, sheet: &'i Sheet, batch: &'i BatchResults) -> DayInput<'i> {
        DayInput {
            sheet,
            kitchen: &self.kitchen,
            settings: &self.day.settings,
            learnt: &self.learnt,
            rounded: batch.rounded.as_ref(),
            zone: &self.day.zone,
            now: self.day.now,
            bench: None,
        }
    }
}

fn heat(input: &DayInput, batch: &BatchResults, run: &Run) -> HeatResults {
    HeatResults::of(&HeatInput {
        formula: &batch.formula,
        settings: &input.sheet.heat,
        kitchen: input.kitchen,
        picked: None,
        run,
    })
}
