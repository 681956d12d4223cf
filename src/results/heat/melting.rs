//! The chocolate of a part about to be melted by its liquid.

use crate::engine::chocolate::Melting;
use crate::engine::formula::Part;
use crate::engine::heat::{HeatError, Matter};
use crate::engine::ingredients::Role;
use crate::engine::quantity::Mass;
use crate::sheet::{Kitchen, MeltSettings};

/// Returns the chocolate of a topping or filling with all that is poured on it, ready for
/// [`melt`](crate::engine::chocolate::melt).
///
/// # Errors
/// [`HeatError::NoChocolate`] when there is none; [`HeatError::NothingPoured`] when there is no
/// liquid; [`HeatError::UnknownFood`] for a food whose composition is empty.
pub fn melting(
    part: &Part,
    kitchen: &Kitchen,
    settings: &MeltSettings,
) -> Result<Melting, HeatError> {
    let there = || part.lines.iter().filter(|line| line.mass > Mass::ZERO);
    let (mut chocolate, mut fat) = (Mass::ZERO, Mass::ZERO);
    let mut liquids = Vec::new();
    for line in there() {
        let composition = line.food.composition();
        if line.food.role() == Role::Chocolate {
            chocolate = chocolate + line.mass;
            fat = fat + line.mass.component(composition.fat);
        } else {
            liquids.push((line.mass, Matter::of(&composition)?));
        }
    }
    let chocolate = chocolate.unsaturated()?;
    let liquid = liquids
        .iter()
        .map(|(mass, _)| *mass)
        .sum::<Mass>()
        .unsaturated()?;
    if liquid <= Mass::ZERO {
        return Err(HeatError::NothingPoured);
    }
    let off_the_boil = kitchen.off_the_boil()?;
    Ok(Melting {
        chocolate,
        fat: fat.share_of(chocolate).ok_or(HeatError::NoChocolate)?,
        chocolate_at: settings.chocolate.unwrap_or(kitchen.room),
        pieces: Some(settings.pieces),
        liquid,
        liquid_matter: Matter::blend(&liquids)?,
        liquid_at: settings.liquid.unwrap_or(off_the_boil),
        liquid_at_most: off_the_boil,
        vessel: kitchen.vessel(kitchen.paste_bowl, settings.bowl)?,
    })
}
