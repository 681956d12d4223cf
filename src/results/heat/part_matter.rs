//! The mass and thermal composition of a part of a formula.

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

/// The mass and composition of a finished part, less its losses and its steam.
///
/// ```
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::part_matter;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let (mass, _) = part_matter(&sheet.formula.parts[0])?;
/// assert!(mass > Mass::ZERO);
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
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

/// Whether a line has any mass.
pub(super) fn weighs(line: &Line) -> bool {
    Form::AsMade.mass(line) > Mass::ZERO
}

/// A line as one thing that shares its heat; ice melts.
///
/// # Errors
/// [`HeatError::UnknownFood`] for a food whose composition is empty.
pub(super) fn heat_part(line: &Line, temperature: Temperature) -> Result<HeatPart, HeatError> {
    Ok(HeatPart {
        of: line.food.name().to_owned().into(),
        mass: Form::AsMade.mass(line),
        stuff: if line.food.is_ice() {
            ThermalMaterial::Ice
        } else {
            ThermalMaterial::Food(Matter::of(&line.food.composition())?)
        },
        temperature,
    })
}
