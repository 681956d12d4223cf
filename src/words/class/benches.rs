//! The class: what each bench weighs out, the teacher's total, bowls, and the oven's loads.

use std::num::NonZeroU32;

use crate::engine::batch::{Weighing, round};
use crate::engine::class::{Bench, BowlNeed, Class, OvenPlan, bowls};
use crate::engine::formula::Formula;
use crate::engine::quantity::Minutes;
use crate::engine::working::Line;
use crate::words::{caution::Advice, manner::Manner, name, say, weigh, write};

/// The lines of one stream, each with its weight.
#[derive(Clone, Debug, PartialEq)]
pub struct StreamLines {
    /// The stream.
    pub name: String,
    /// Ingredient and weight.
    pub lines: Vec<(String, String)>,
}

/// What a kind of bench weighs out.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchView {
    /// "6 benches of 2 students, 2 loaves each".
    pub title: String,
    /// Stream by stream.
    pub streams: Vec<StreamLines>,
}

/// A class as a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassView {
    /// "13 students at 7 benches, 14 loaves, 6.02 kg of dough".
    pub title: String,
    /// Kind of bench by kind of bench.
    pub benches: Vec<BenchView>,
    /// Everything together.
    pub total: Vec<StreamLines>,
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
pub fn class(class: &Class, oven: &OvenPlan, scales: Weighing, manner: Manner) -> ClassView {
    let mut working = class.working();
    working.extend(oven.working());
    ClassView {
        title: title(class, manner),
        benches: class
            .benches
            .iter()
            .map(|bench| bench_view(bench, scales, manner))
            .collect(),
        total: streams(&class.total, scales, manner),
        bowls: bowl_lines(class, manner),
        loads: loads(oven, manner),
        stagger: stagger(oven, manner),
        working,
    }
}

fn title(class: &Class, manner: Manner) -> String {
    say!(
        "{} at {}, {}, {} of dough",
        counted(
            class.wishes.students.get().into(),
            [say!("student"), say!("students")],
            manner
        ),
        counted(class.stations, [say!("bench"), say!("benches")], manner),
        counted(class.loaves, [say!("loaf"), say!("loaves")], manner),
        write::mass(class.dough, manner)
    )
}

fn bench_view(bench: &Bench, scales: Weighing, manner: Manner) -> BenchView {
    let loaves = counted(bench.loaves.get(), [say!("loaf"), say!("loaves")], manner);
    let title = if bench.students == 0 {
        say!("The teacher’s bench, {loaves}", loaves)
    } else {
        say!(
            "{} with {}, {loaves} each",
            counted(bench.count.get(), [say!("bench"), say!("benches")], manner),
            counted(
                bench.students.into(),
                [say!("student"), say!("students")],
                manner
            ),
            loaves
        )
    };
    BenchView {
        title,
        streams: streams(&bench.batch.formula, scales, manner),
    }
}

/// Every line of a formula as the scales show it.
fn streams(formula: &Formula, scales: Weighing, manner: Manner) -> Vec<StreamLines> {
    let rounded = round(formula, scales);
    let numbered = formula.streams.iter().enumerate();
    let all = numbered.map(|(at, stream)| StreamLines {
        name: stream.name.clone(),
        lines: rounded
            .lines
            .iter()
            .filter(|line| line.at.stream == at)
            .filter_map(|line| {
                let food = &formula.line(line.at)?.food;
                Some((name::food(food), weigh::line(line, manner).shows))
            })
            .collect(),
    });
    all.filter(|stream| !stream.lines.is_empty()).collect()
}

fn bowl_lines(class: &Class, manner: Manner) -> Vec<String> {
    let of = |need: &BowlNeed| {
        let stream = class.total.streams.get(need.stream)?;
        Some(say!(
            "{}, {} or larger: {}",
            counted(need.count, [say!("bowl"), say!("bowls")], manner),
            write::volume(need.room, manner),
            stream.name
        ))
    };
    bowls(class).iter().filter_map(of).collect()
}

fn loads(oven: &OvenPlan, manner: Manner) -> Vec<String> {
    let numbered = oven.loads.iter().enumerate();
    numbered
        .map(|(at, load)| {
            let last = load.first + load.loaves.saturating_sub(1);
            let which = if load.loaves == 1 {
                say!("loaf {}", write::count(load.first, manner))
            } else {
                say!(
                    "loaves {} to {}",
                    write::count(load.first, manner),
                    write::count(last, manner)
                )
            };
            say!(
                "Load {}: {which}, in at {}, out at {}",
                at + 1,
                which,
                write::minutes(load.goes_in, manner),
                write::minutes(load.comes_out, manner)
            )
        })
        .collect()
}

fn stagger(oven: &OvenPlan, manner: Manner) -> Option<Advice> {
    oven.waits_longer_than(LONGEST_WAIT).then(|| Advice {
        means: say!("The last load goes in {} after the first; dough begun with the first would rise too far.", write::minutes(oven.loads.last().map_or(Minutes::ZERO, |load| load.goes_in), manner))
        .into(),
        to_do: say!("Begin each load’s dough {} after the one before, or keep its shaped pieces in the \
             fridge until then.", write::minutes(oven.stagger, manner))
        .into(),
        source: say!("common practice").into(),
    })
}

fn counted(count: u32, [one, several]: [&str; 2], manner: Manner) -> String {
    let noun = if count == 1 { one } else { several };
    let count = NonZeroU32::new(count).map_or(0, NonZeroU32::get);
    format!("{}\u{A0}{noun}", write::count(count, manner))
}
