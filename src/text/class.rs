//! The class in words: what each bench weighs, the total, bowls, and the oven's loads.

use super::class_weighed::class_weighed;
pub use super::class_weighed::two_ways;
use crate::engine::batch::Rounded;
use crate::engine::class::{BenchBatch, BowlNeed, Class, ClassError, OvenPlan};
use crate::engine::quantity::Mass;
use crate::results::batch::class::{ClassResults, ClassWeights, late_load};
use crate::text::{
    caution::{self, Advice},
    format,
    format_options::FormatOptions,
    name, tr,
    weighing::{PartWeights, part_weights},
};

/// What a kind of bench weighs out.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchView {
    /// "6 benches of 2 students, 2 loaves each".
    pub title: String,
    /// Whether it is the teacher's own.
    pub is_teachers: bool,
    /// Part by part.
    pub parts: Vec<PartWeights>,
    /// What it takes from the teacher's bowl: the part's name, and how much.
    pub portions: Vec<(String, String)>,
    /// What helps where its scale shows nothing of an ingredient.
    pub aids: Vec<String>,
}

/// A class as a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassView {
    /// "13 students at 7 benches, 14 loaves, 6.02 kg of dough".
    pub title: String,
    /// "4927 g is weighed for it: 109 g more, for what stays in bowls"; none where it is the same.
    pub weighed: Option<String>,
    /// Kind of bench by kind of bench.
    pub benches: Vec<BenchView>,
    /// What the teacher makes in one bowl for all; none where each bench makes its own.
    pub bowl: Option<BenchView>,
    /// Everything together.
    pub total: Vec<PartWeights>,
    /// "8 bowls of 2 l for the final dough".
    pub bowls: Vec<String>,
    /// "Load 1: loaves 1 to 5, in at 0 min, out at 30 min".
    pub loads: Vec<String>,
    /// Why loads are smaller than the oven takes; none where they fill it.
    pub evened: Option<String>,
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
        weighed: class_weighed(weights, options),
        benches: benches
            .enumerate()
            .map(|(at, (bench, rounded))| BenchView {
                title: bench_title(bench, options),
                is_teachers: bench.students == 0,
                parts: weighed_only(rounded, options),
                portions: portions(weights, at, options),
                aids: caution::below_scale(rounded, options),
            })
            .collect(),
        bowl: weights.bowl.as_ref().map(|bowl| BenchView {
            title: tr!("The teacher’s bowl, made ahead for all").to_owned(),
            is_teachers: true,
            parts: weighed_only(bowl, options),
            portions: left(weights, options),
            aids: caution::below_scale(bowl, options),
        }),
        total: total(weights, options),
        bowls: bowls(weights, options),
        loads: loads(oven, options),
        evened: evened(oven, options),
        stagger: stagger(oven, options),
    })
}

/// Everything together: what the scales show in all, exact where a bench's scale shows nothing.
fn total(weights: &ClassWeights, options: FormatOptions) -> Vec<PartWeights> {
    let mut parts = part_weights(&weights.total, options);
    let filled = weights.total.formula.parts.iter().enumerate();
    let filled = filled.filter(|(_, part)| !part.lines.is_empty());
    for ((at, _), part) in filled.zip(&mut parts) {
        let lines = weights.total.lines.iter().filter(|line| line.at.part == at);
        for (line, (_, shows)) in lines.zip(&mut part.lines) {
            if weights.below_scale.contains(&line.at) {
                *shows = format::mass(line.weighed, options);
            }
        }
    }
    parts
}

/// Says where the class's loaf does not suit the tin.
#[must_use]
pub fn tin_difference((tin, loaf): (Mass, Mass), options: FormatOptions) -> String {
    let (tin_takes, own) = (format::mass(tin, options), format::mass(loaf, options));
    if loaf < tin {
        tr!(
            "The tin takes {tin}, the class’s loaves have {loaf}. Oven times are for loaves of {loaf} in smaller tins that suit them.",
            tin = tin_takes,
            loaf = own
        )
    } else {
        tr!(
            "The tin takes {tin}, the class’s loaves have {loaf}.",
            tin = tin_takes,
            loaf = own
        )
    }
}

/// What is weighed at one place; what another makes is left out.
fn weighed_only(rounded: &Rounded, options: FormatOptions) -> Vec<PartWeights> {
    let made = |at: usize| {
        let lines = rounded.lines.iter().filter(|line| line.at.part == at);
        lines.map(|line| line.exact).sum::<Mass>() > Mass::ZERO
    };
    let filled = |at: &usize| {
        let part = rounded.formula.parts.get(*at);
        part.is_some_and(|part| !part.lines.is_empty())
    };
    let places = (0..rounded.formula.parts.len()).filter(filled);
    let all = places.zip(part_weights(rounded, options));
    all.filter(|(at, _)| made(*at))
        .map(|(_, part)| part)
        .collect()
}

fn part_name(weights: &ClassWeights, part: usize) -> String {
    let own = weights.class.total.parts.get(part);
    own.map(|part| name::part(part).to_owned())
        .unwrap_or_default()
}

fn portions(weights: &ClassWeights, bench: usize, options: FormatOptions) -> Vec<(String, String)> {
    let all = weights.portions.iter();
    all.filter_map(|portion| {
        let each = *portion.each.get(bench)?;
        let shows = format::mass_weighed(each, weights.total.weighing.main, options);
        Some((part_name(weights, portion.part), shows))
    })
    .collect()
}

/// What stays in the teacher's bowl.
fn left(weights: &ClassWeights, options: FormatOptions) -> Vec<(String, String)> {
    let all = weights.portions.iter();
    all.map(|portion| {
        let left = format::mass(portion.left, options);
        let name = part_name(weights, portion.part);
        (tr!("{name}, stays in the bowl", name = name), left)
    })
    .collect()
}

/// Says where the class's loaf is not the batch's.
#[must_use]
pub fn loaf_difference((made, loaf): (Mass, Mass), options: FormatOptions) -> String {
    tr!(
        "The batch makes loaves of {first}, the class loaves of {second}: make the batch the whole class’s, or change one of them.",
        first = format::mass(made, options),
        second = format::mass(loaf, options)
    )
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
    let students = counted(
        bench.students.into(),
        [tr!("student"), tr!("students")],
        options,
    );
    let count = bench.count.get();
    if count == 1 {
        return tr!(
            "One bench with {students}, {loaves}",
            students = students,
            loaves = loaves
        );
    }
    tr!(
        "Each of {count} benches with {students}, {loaves}",
        count = format::count(count, options),
        students = students,
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
            third = name::part(part)
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

/// Loads that could hold more are evened out.
fn evened(oven: &OvenPlan, options: FormatOptions) -> Option<String> {
    oven.is_evened().then(|| {
        tr!(
            "{places} fit in at once; the loaves are shared out evenly, so that no load is nearly empty and all bake alike.",
            places = format::count(oven.oven.places.get(), options)
        )
    })
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
