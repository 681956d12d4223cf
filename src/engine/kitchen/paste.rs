//! The paste of a formula in this kitchen: its boil, its bowl, what is lost on the way.

use super::place::Kitchen;
use super::settings::PasteSettings;
use crate::engine::formula::Formula;
use crate::engine::heat::{HeatError, Paste, paste_of};

/// A part as a paste: its water and other liquids are poured boiling on the rest; `None` where it
/// has no liquid or no flour.
///
/// # Errors
/// [`HeatError::UnknownFood`] where nothing is known of an ingredient.
pub fn paste(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &PasteSettings,
) -> Result<Option<Paste>, HeatError> {
    let Some(own) = formula.parts.get(part) else {
        return Ok(None);
    };
    let stores = kitchen.stores(formula);
    let boils = kitchen.boiling()?.temperature;
    let vessel = kitchen.vessel(kitchen.paste_bowl, settings.bowl)?;
    let paste = paste_of(own, part, &stores, boils, vessel)?;
    Ok(paste.map(|paste| Paste {
        drop: settings.drop,
        ..paste
    }))
}
