//! The chocolate of a part about to be melted by its liquid.

use super::place::Kitchen;
use super::settings::MeltSettings;
use crate::engine::chocolate::Melting;
use crate::engine::formula::Part;
use crate::engine::heat::{HeatError, Matter};
use crate::engine::ingredients::Role;
use crate::engine::quantity::Mass;

/// A topping's or filling's chocolate with all that is poured on it.
///
/// # Errors
/// [`HeatError::EmptyBowl`] when there is no chocolate; [`HeatError::NoLiquid`] when nothing is
/// poured; [`HeatError::UnknownFood`] where nothing is known of an ingredient.
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
    let liquid: Mass = liquids.iter().map(|(mass, _)| *mass).sum();
    if liquid <= Mass::ZERO {
        return Err(HeatError::NoLiquid);
    }
    let off_the_boil = kitchen.off_the_boil()?;
    Ok(Melting {
        chocolate,
        fat: fat.share_of(chocolate).ok_or(HeatError::EmptyBowl)?,
        chocolate_at: settings.chocolate.unwrap_or(kitchen.room),
        pieces: Some(settings.pieces),
        liquid,
        liquid_matter: Matter::blend(&liquids)?,
        liquid_at: settings.liquid.unwrap_or(off_the_boil),
        liquid_at_most: off_the_boil,
        vessel: kitchen.vessel(kitchen.paste_bowl, settings.bowl)?,
    })
}
