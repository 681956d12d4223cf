//! What a part of a formula weighs and is made of, as heat takes it.

use crate::engine::formula::{Form, Formula, Line, Part};
use crate::engine::heat::{HeatError, HeatPart, Matter, ThermalMaterial};
use crate::engine::quantity::{Mass, Temperature};

/// The part at a place of the formula.
///
/// # Errors
/// [`HeatError::NoPart`] when there is none.
pub(super) fn part_at(formula: &Formula, part: usize) -> Result<&Part, HeatError> {
    formula.parts.get(part).ok_or(HeatError::NoPart)
}

/// What a part weighs and is made of once it is made: its losses and its steam are taken off.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when nothing is left of it; [`HeatError::UnknownFood`] for a food whose
/// composition is empty; [`HeatError::OffScale`] for a tonne or more.
pub fn part_matter(part: &Part) -> Result<(Mass, Matter), HeatError> {
    let mut foods = Vec::with_capacity(part.lines.len());
    for line in part.lines.iter().filter(|line| weighs(line)) {
        foods.push((
            Form::AsMade.mass(line),
            Matter::of(&line.food.composition())?,
        ));
    }
    let mass = foods
        .iter()
        .map(|(mass, _)| *mass)
        .sum::<Mass>()
        .unsaturated()?;
    let matter = Matter::blend(&foods)?.dried(mass, part.steam)?;
    Ok((mass.less(part.steam), matter))
}

/// Whether anything of a line goes in.
pub(super) fn weighs(line: &Line) -> bool {
    Form::AsMade.mass(line) > Mass::ZERO
}

/// A line as one thing that shares its heat.
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food whose composition is empty.
pub(super) fn heat_part(line: &Line, temperature: Temperature) -> Result<HeatPart, HeatError> {
    Ok(HeatPart {
        of: line.food.name().to_owned().into(),
        mass: Form::AsMade.mass(line),
        stuff: ThermalMaterial::Food(Matter::of(&line.food.composition())?),
        temperature,
    })
}
