//! The paste of a formula in this kitchen: its boil, its bowl, what is lost on the way.

use super::place::Kitchen;
use super::wishes::PasteWishes;
use crate::engine::formula::Formula;
use crate::engine::heat::{HeatError, Paste, paste_of};

/// A stream as a paste: its water and other liquids are poured boiling on the rest; `None` where it
/// has no liquid or no flour.
///
/// # Errors
/// [`HeatError::UnknownFood`] where nothing is known of an ingredient.
pub fn paste(
    formula: &Formula,
    stream: usize,
    kitchen: &Kitchen,
    wishes: &PasteWishes,
) -> Result<Option<Paste>, HeatError> {
    let Some(own) = formula.streams.get(stream) else {
        return Ok(None);
    };
    let stores = kitchen.stores(formula);
    let boils = kitchen.boiling()?.temperature;
    let vessel = kitchen.vessel(kitchen.paste_bowl, wishes.bowl)?;
    let paste = paste_of(own, stream, &stores, boils, vessel)?;
    Ok(paste.map(|paste| Paste {
        drop: wishes.drop,
        ..paste
    }))
}
