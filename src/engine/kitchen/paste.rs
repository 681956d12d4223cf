//! The paste of a formula: what is poured, what it is poured on, and in which bowl.

use super::place::Kitchen;
use super::starts::{name, part, starts_at};
use super::wishes::PasteWishes;
use crate::engine::formula::{Line, Stream};
use crate::engine::heat::{Grain, HeatError, Matter, Paste, Scalded};
use crate::engine::larder::Role;
use crate::engine::quantity::Mass;

/// A stream as a paste: its water and other liquids are poured boiling on the rest.
///
/// # Errors
/// [`HeatError::UnknownFood`] where nothing is known of an ingredient; [`HeatError::NoLiquid`]
/// where there is nothing to pour.
pub fn paste(stream: &Stream, kitchen: &Kitchen, wishes: &PasteWishes) -> Result<Paste, HeatError> {
    let there = || stream.lines.iter().filter(|line| line.mass > Mass::ZERO);
    let mut liquids = Vec::new();
    let (mut flours, mut others) = (Vec::new(), Vec::new());
    for line in there() {
        if is_poured(line) {
            liquids.push((line.mass, Matter::of(&line.food.composition())?));
        } else if line.is_flour() {
            flours.push(scalded(line, kitchen)?);
        } else {
            others.push(part(line, starts_at(line, kitchen))?);
        }
    }
    if liquids.is_empty() {
        return Err(HeatError::NoLiquid);
    }
    Ok(Paste {
        flours,
        others,
        liquid: liquids.iter().map(|(mass, _)| *mass).sum(),
        liquid_matter: Matter::blend(&liquids)?,
        boils: kitchen.boiling()?.temperature,
        drop: wishes.drop,
        vessel: kitchen.vessel(kitchen.paste_bowl, wishes.bowl)?,
    })
}

fn is_poured(line: &Line) -> bool {
    !line.is_flour() && matches!(line.food.role(), Role::Water | Role::Liquid)
}

fn scalded(line: &Line, kitchen: &Kitchen) -> Result<Scalded, HeatError> {
    let composition = line.food.composition();
    Ok(Scalded {
        of: name(&line.food),
        mass: line.mass,
        matter: Matter::of(&composition)?,
        starch: composition.starch,
        grain: Grain::of(&line.food),
        temperature: starts_at(line, kitchen),
    })
}
