//! Benches: what each weighs, and the total.

use std::num::{NonZeroU16, NonZeroU32};

use super::error::ClassError;
use super::settings::{Ahead, ClassSettings};
use super::sum::sum;
use super::teacher_bowl::{teacher_bowl, weighed_at_bench};
use crate::engine::batch::{BatchTarget, Losses, Scaled, scale};
use crate::engine::formula::Formula;
use crate::engine::quantity::Mass;

/// Benches that weigh the same.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchBatch {
    /// How many of them.
    pub count: NonZeroU32,
    /// Students at each; none at the teacher's.
    pub students: u16,
    /// Loaves each of them makes.
    pub loaves: NonZeroU32,
    /// What each of them makes.
    pub batch: Scaled,
    /// What each of them weighs out: without what it takes from the teacher's bowl.
    pub weighs: Formula,
}

/// A class: its benches, and everything together.
#[derive(Clone, Debug, PartialEq)]
pub struct Class {
    /// The settings.
    pub settings: ClassSettings,
    /// Benches, the full ones first, then one with fewer students, then the teacher's.
    pub benches: Vec<BenchBatch>,
    /// How many benches of students.
    pub stations: u32,
    /// All loaves, the teacher's included.
    pub loaves: u32,
    /// What the teacher weighs out for all, where the teacher makes it ahead.
    pub bowl: Option<Formula>,
    /// All benches and the teacher's bowl together, line by line as in the formula.
    pub total: Formula,
    /// All dough ready for the tins.
    pub dough: Mass,
}

/// Shares a formula out among the benches of a class.
///
/// Each bench weighs out its own dough and loses its own residue in bowls, so the whole is more
/// than one large batch would be. Where students do not come out even, one bench has fewer.
/// Where the teacher makes pastes and preferments ahead, one bowl holds all that the benches need
/// and the fixed residue once more, since some of it stays in that bowl.
///
/// Source: by definition; losses as in a batch.
///
/// # Errors
/// [`ClassError::Batch`] when a bench's batch has no answer; [`ClassError::OffScale`] when the
/// whole passes a tonne.
pub fn class(
    formula: &Formula,
    settings: ClassSettings,
    losses: Losses,
    pieces: NonZeroU16,
) -> Result<Class, ClassError> {
    let asked = kinds(settings);
    let mut benches = Vec::new();
    for (count, students, loaves) in asked {
        let (Some(count), Some(loaves)) = (NonZeroU32::new(count), NonZeroU32::new(loaves)) else {
            continue;
        };
        let dough = Mass::from_grams(settings.loaf.grams() * f64::from(loaves.get()))?;
        let batch = scale(formula, BatchTarget::Dough(dough), losses, pieces)?;
        benches.push(BenchBatch {
            count,
            students,
            loaves,
            weighs: weighed_at_bench(&batch.formula, settings.ahead),
            batch,
        });
    }
    let made = benches
        .iter()
        .map(|bench| bench.count.get() * bench.loaves.get());
    let loaves: u32 = made.sum();
    let bowl = match settings.ahead {
        Ahead::EachBench => None,
        Ahead::TeacherBowl => Some(bowl_for(formula, &benches, losses.residue)?),
    };
    Ok(Class {
        stations: asked.iter().take(2).map(|(count, ..)| count).sum(),
        loaves,
        total: total(formula, &benches, bowl.as_ref())?,
        bowl,
        dough: Mass::from_grams(settings.loaf.grams() * f64::from(loaves))?,
        settings,
        benches,
    })
}

/// The kinds of bench as count, students and loaves of each: full ones, one with fewer students, and
/// the teacher's.
fn kinds(settings: ClassSettings) -> [(u32, u16, u32); 3] {
    let (students, at_bench) = (settings.students.get(), settings.at_bench.get());
    let full = students.checked_div(at_bench).unwrap_or_default();
    let over = students.checked_rem(at_bench).unwrap_or_default();
    let loaves_of = |people: u16| u32::from(people) * u32::from(settings.loaves.get());
    [
        (u32::from(full), at_bench, loaves_of(at_bench)),
        (u32::from(over > 0), over, loaves_of(over)),
        (u32::from(settings.shown > 0), 0, u32::from(settings.shown)),
    ]
}

/// All benches and the teacher's bowl together, line by line.
fn total(
    formula: &Formula,
    benches: &[BenchBatch],
    bowl: Option<&Formula>,
) -> Result<Formula, ClassError> {
    let weighed = benches
        .iter()
        .map(|bench| (bench.count.get(), &bench.weighs));
    let all: Vec<(u32, &Formula)> = weighed.chain(bowl.map(|bowl| (1, bowl))).collect();
    sum(formula, &all)
}

fn bowl_for(
    formula: &Formula,
    benches: &[BenchBatch],
    residue: Mass,
) -> Result<Formula, ClassError> {
    let all = benches.iter();
    let all = all.map(|bench| (bench.count.get(), &bench.batch.formula));
    teacher_bowl(formula, &all.collect::<Vec<_>>(), residue)
}
