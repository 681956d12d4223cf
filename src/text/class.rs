//! The class in words: what each bench weighs, the total, bowls, and the oven's loads.

use crate::engine::class::{BenchBatch, BowlNeed, Class, ClassError, OvenPlan};
use crate::results::batch::class::{ClassResults, ClassWeights, late_load};
use crate::text::{
    caution::Advice,
    format,
    format_options::FormatOptions,
    tr,
    weighing::{PartWeights, part_weights},
};

/// What a kind of bench weighs out.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchView {
    /// "6 benches of 2 students, 2 loaves each".
    pub title: String,
    /// Part by part.
    pub parts: Vec<PartWeights>,
}

/// A class as a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassView {
    /// "13 students at 7 benches, 14 loaves, 6.02 kg of dough".
    pub title: String,
    /// Kind of bench by kind of bench.
    pub benches: Vec<BenchView>,
    /// Everything together.
    pub total: Vec<PartWeights>,
    /// "8 bowls of 2 l for the final dough".
    pub bowls: Vec<String>,
    /// "Load 1: loaves 1 to 5, in at 0 min, out at 30 min".
    pub loads: Vec<String>,
    /// What to do where loads must wait.
    pub stagger: Option<Advice>,
}

/// The class in words, its weights as the scales show them.
///
/// # Errors
/// [`ClassError`] when a bench's batch cannot be scaled or there are too many loads for one day.
pub fn view(class: &ClassResults, options: FormatOptions) -> Result<ClassView, ClassError> {
    let weights = class.weights.as_ref().map_err(Clone::clone)?;
    let oven = class.oven.as_ref().map_err(Clone::clone)?;
    let benches = weights.class.benches.iter().zip(&weights.benches);
    Ok(ClassView {
        title: title(&weights.class, options),
        benches: benches
            .map(|(bench, rounded)| BenchView {
                title: bench_title(bench, options),
                parts: part_weights(rounded, options),
            })
            .collect(),
        total: part_weights(&weights.total, options),
        bowls: bowls(weights, options),
        loads: loads(oven, options),
        stagger: stagger(oven, options),
    })
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

fn bench_title(bench: &BenchBatch, options: FormatOptions) -> String {
    let loaves = counted(bench.loaves.get(), [tr!("loaf"), tr!("loaves")], options);
    if bench.students == 0 {
        return tr!("The teacher’s bench, {loaves}", loaves = loaves);
    }
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
}

fn bowls(weights: &ClassWeights, options: FormatOptions) -> Vec<String> {
    let of = |need: &BowlNeed| {
        let part = weights.class.total.parts.get(need.part)?;
        Some(tr!(
            "{first}, {second} or larger: {third}",
            first = counted(need.count, [tr!("bowl"), tr!("bowls")], options),
            second = format::volume(need.room, options),
            third = part.name
        ))
    };
    weights.bowls.iter().filter_map(of).collect()
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
    let last = late_load(oven)?;
    Some(Advice {
        means: tr!("The last load goes in {value} after the first; dough begun with the first would rise too far.", value = format::minutes(last, options))
        .into(),
        to_do: tr!("Begin each load’s dough {value} after the one before, or keep its shaped pieces in the \
             fridge until then.", value = format::minutes(oven.stagger, options))
        .into(),
        source: tr!("common practice").into(),
    })
}

fn counted(count: u32, [one, several]: [&str; 2], options: FormatOptions) -> String {
    let noun = if count == 1 { one } else { several };
    format!("{}\u{A0}{noun}", format::count(count, options))
}
