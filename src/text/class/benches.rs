//! The class: what each bench weighs out, the teacher's total, bowls, and the oven's loads.

use std::num::NonZeroU32;

use crate::engine::batch::{Weighing, round};
use crate::engine::class::{Bench, BowlNeed, Class, OvenPlan, bowls};
use crate::engine::formula::Formula;
use crate::engine::quantity::Minutes;
use crate::engine::working::Line;
use crate::text::{caution::Advice, format, format_options::FormatOptions, name, tr, weighing};

/// The lines of one part, each with its weight.
#[derive(Clone, Debug, PartialEq)]
pub struct PartLines {
    /// The part.
    pub name: String,
    /// Ingredient and weight.
    pub lines: Vec<(String, String)>,
}

/// What a kind of bench weighs out.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchView {
    /// "6 benches of 2 students, 2 loaves each".
    pub title: String,
    /// Part by part.
    pub parts: Vec<PartLines>,
}

/// A class as a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassView {
    /// "13 students at 7 benches, 14 loaves, 6.02 kg of dough".
    pub title: String,
    /// Kind of bench by kind of bench.
    pub benches: Vec<BenchView>,
    /// Everything together.
    pub total: Vec<PartLines>,
    /// "8 bowls of 2 l for the final dough".
    pub bowls: Vec<String>,
    /// "Load 1: loaves 1 to 5, in at 0 min, out at 30 min".
    pub loads: Vec<String>,
    /// What to do where loads must wait.
    pub stagger: Option<Advice>,
    /// How the figures came about.
    pub working: Vec<Line>,
}

/// From here on dough that waits for the oven rises too far. Common practice.
const LONGEST_WAIT: Minutes = Minutes::known(20.0);

/// A class as a sheet, its weights as the scales show them.
#[must_use]
pub fn class(
    class: &Class,
    oven: &OvenPlan,
    scales: Weighing,
    options: FormatOptions,
) -> ClassView {
    let mut working = class.working();
    working.extend(oven.working());
    ClassView {
        title: title(class, options),
        benches: class
            .benches
            .iter()
            .map(|bench| bench_view(bench, scales, options))
            .collect(),
        total: parts(&class.total, scales, options),
        bowls: bowl_lines(class, options),
        loads: loads(oven, options),
        stagger: stagger(oven, options),
        working,
    }
}

fn title(class: &Class, options: FormatOptions) -> String {
    tr!(
        "{first} at {second}, {third}, {fourth} of dough",
        first = counted(
            class.settings.students.get().into(),
            [tr!("student"), tr!("students")],
            options
        ),
        second = counted(class.stations, [tr!("bench"), tr!("benches")], options),
        third = counted(class.loaves, [tr!("loaf"), tr!("loaves")], options),
        fourth = format::mass(class.dough, options)
    )
}

fn bench_view(bench: &Bench, scales: Weighing, options: FormatOptions) -> BenchView {
    let loaves = counted(bench.loaves.get(), [tr!("loaf"), tr!("loaves")], options);
    let title = if bench.students == 0 {
        tr!("The teacher’s bench, {loaves}", loaves = loaves)
    } else {
        tr!(
            "{first} with {second}, {loaves} each",
            first = counted(bench.count.get(), [tr!("bench"), tr!("benches")], options),
            second = counted(
                bench.students.into(),
                [tr!("student"), tr!("students")],
                options
            ),
            loaves = loaves
        )
    };
    BenchView {
        title,
        parts: parts(&bench.batch.formula, scales, options),
    }
}

/// Every line of a formula as the scales show it.
fn parts(formula: &Formula, scales: Weighing, options: FormatOptions) -> Vec<PartLines> {
    let rounded = round(formula, scales);
    let numbered = formula.parts.iter().enumerate();
    let all = numbered.map(|(at, part)| PartLines {
        name: part.name.clone(),
        lines: rounded
            .lines
            .iter()
            .filter(|line| line.at.part == at)
            .filter_map(|line| {
                let food = &formula.line(line.at)?.food;
                Some((name::food(food), weighing::line(line, options).shows))
            })
            .collect(),
    });
    all.filter(|part| !part.lines.is_empty()).collect()
}

fn bowl_lines(class: &Class, options: FormatOptions) -> Vec<String> {
    let of = |need: &BowlNeed| {
        let part = class.total.parts.get(need.part)?;
        Some(tr!(
            "{first}, {second} or larger: {third}",
            first = counted(need.count, [tr!("bowl"), tr!("bowls")], options),
            second = format::volume(need.room, options),
            third = part.name
        ))
    };
    bowls(class).iter().filter_map(of).collect()
}

fn loads(oven: &OvenPlan, options: FormatOptions) -> Vec<String> {
    let numbered = oven.loads.iter().enumerate();
    numbered
        .map(|(at, load)| {
            let last = load.first + load.loaves.saturating_sub(1);
            let which = if load.loaves == 1 {
                tr!("loaf {value}", value = format::count(load.first, options))
            } else {
                tr!(
                    "loaves {first} to {second}",
                    first = format::count(load.first, options),
                    second = format::count(last, options)
                )
            };
            tr!(
                "Load {first}: {which}, in at {second}, out at {third}",
                first = at + 1,
                which = which,
                second = format::minutes(load.goes_in, options),
                third = format::minutes(load.comes_out, options)
            )
        })
        .collect()
}

fn stagger(oven: &OvenPlan, options: FormatOptions) -> Option<Advice> {
    oven.waits_longer_than(LONGEST_WAIT).then(|| Advice {
        means: tr!("The last load goes in {value} after the first; dough begun with the first would rise too far.", value = format::minutes(oven.loads.last().map_or(Minutes::ZERO, |load| load.goes_in), options))
        .into(),
        to_do: tr!("Begin each load’s dough {value} after the one before, or keep its shaped pieces in the \
             fridge until then.", value = format::minutes(oven.stagger, options))
        .into(),
        source: tr!("common practice").into(),
    })
}

fn counted(count: u32, [one, several]: [&str; 2], options: FormatOptions) -> String {
    let noun = if count == 1 { one } else { several };
    let count = NonZeroU32::new(count).map_or(0, NonZeroU32::get);
    format!("{}\u{A0}{noun}", format::count(count, options))
}
