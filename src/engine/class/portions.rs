//! Portions: what each bench takes from the teacher's bowl, and what stays in it.

use super::bench::Class;
use super::error::ClassError;
use super::teacher_bowl::{is_ahead, made};
use crate::engine::batch::ScaleSettings;
use crate::engine::formula::Formula;
use crate::engine::quantity::{Division, Mass};

/// What the benches take of one part from the teacher's bowl.
#[derive(Clone, Debug, PartialEq)]
pub struct BowlPortion {
    /// Which part of the formula.
    pub part: usize,
    /// Each bench's portion as the scale shows it, in the order of [`Class::benches`].
    pub each: Vec<Mass>,
    /// What each kind of bench needs, and how many there are of it, in the same order.
    pub needs: Vec<(Mass, u32)>,
    /// What all benches need and what stays in the bowl, exact.
    pub planned: Mass,
    /// The division of the scale.
    pub division: Division,
    /// What the bowl holds once it is made.
    pub holds: Mass,
    /// What stays in the bowl.
    pub left: Mass,
}

/// The portions that the benches take from the teacher's bowl as it was weighed.
///
/// The bowl is shared out by what each bench needs of what all need, less what stays in it, and each
/// portion is rounded down to the scale's division: so the bowl is never short. Portions and what is
/// left add up to what it holds.
///
/// Source: by definition.
///
/// # Errors
/// [`ClassError::OffScale`] when a mass passes a tonne.
pub fn portions(
    class: &Class,
    weighed: &Formula,
    scales: ScaleSettings,
) -> Result<Vec<BowlPortion>, ClassError> {
    let mut found = Vec::new();
    for (at, own) in weighed.parts.iter().enumerate() {
        let holds = made(own);
        if is_ahead(own.kind) && holds > Mass::ZERO {
            found.push(portion(class, at, holds, scales.main)?);
        }
    }
    Ok(found)
}

fn portion(
    class: &Class,
    part: usize,
    holds: Mass,
    division: Division,
) -> Result<BowlPortion, ClassError> {
    let bowl = class.bowl.as_ref().and_then(|bowl| bowl.parts.get(part));
    let exact = bowl.map_or(Mass::ZERO, made);
    let (mut each, mut need) = (Vec::new(), Vec::new());
    let mut taken = 0.0;
    for bench in &class.benches {
        let needs = bench.batch.formula.parts.get(part);
        let needs = needs.map_or(Mass::ZERO, made);
        let share = needs.share_of(exact).unwrap_or_default();
        let own = down(holds.try_component(share)?, division);
        taken += own.grams() * f64::from(bench.count.get());
        each.push(own);
        need.push((needs, bench.count.get()));
    }
    Ok(BowlPortion {
        part,
        each,
        needs: need,
        planned: exact,
        division,
        holds,
        left: holds.less(Mass::from_grams(taken)?),
    })
}

/// The most that the scale can show of a mass without passing it.
fn down(mass: Mass, division: Division) -> Mass {
    let nearest = division.nearest(mass);
    // A millionth of a gram is the last binary place of a sum, not a shortage.
    if nearest.grams() - mass.grams() > 1e-6 {
        nearest.less(division.mass())
    } else {
        nearest
    }
}
