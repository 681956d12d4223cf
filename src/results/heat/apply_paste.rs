//! Applying the advice on a paste: a warm bowl, more liquid.

use super::part_matter::part_at;
use crate::engine::formula::{Formula, Line};
use crate::engine::heat::{HeatError, PasteRemedy};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Mass, Temperature};
use crate::sheet::HeatSettings;

/// What a tap sets to mend a paste.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PasteChange {
    /// Its bowl, warmed beforehand.
    Bowl(Temperature),
    /// So much more of its boiling liquid, of the batch as it is made.
    Liquid(Mass),
}

/// Returns what a remedy sets, rounded up so that it is enough: to half a degree, to a gram; `None` for
/// the stove, which is used while the paste is made.
///
/// ```
/// use softcrumb::engine::heat::PasteRemedy;
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::{PasteChange, paste_change};
///
/// let remedy = PasteRemedy::MoreHeat { liquid: Mass::from_grams(11.2)? };
/// assert_eq!(paste_change(&remedy), Some(PasteChange::Liquid(Mass::from_grams(12.0)?)));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn paste_change(remedy: &PasteRemedy) -> Option<PasteChange> {
    match *remedy {
        PasteRemedy::WarmBowl { to } => Some(PasteChange::Bowl(to.up_to_half_degree())),
        PasteRemedy::MoreHeat { liquid } | PasteRemedy::MoreWater { liquid } => {
            let whole = Mass::from_grams(libm::ceil(liquid.grams())).unwrap_or(liquid);
            Some(PasteChange::Liquid(whole))
        }
        PasteRemedy::Stove { .. } => None,
    }
}

/// Applies a change to a part on which so much liquid is `poured` in the batch as it is made: its
/// liquids grow by the same share each.
///
/// # Errors
/// [`HeatError::NoPart`] for a part that is not there; [`HeatError::NoPaste`] where nothing is poured.
pub fn apply_paste_change(
    formula: &mut Formula,
    settings: &mut HeatSettings,
    (part, poured): (usize, Mass),
    change: PasteChange,
) -> Result<(), HeatError> {
    part_at(formula, part)?;
    match change {
        PasteChange::Bowl(to) => settings.paste.bowl = Some(to),
        PasteChange::Liquid(more) => {
            if poured <= Mass::ZERO {
                return Err(HeatError::NoPaste);
            }
            let times = 1.0 + more.grams() / poured.grams();
            let own = formula.parts.get_mut(part).ok_or(HeatError::NoPart)?;
            for line in own.lines.iter_mut().filter(|line| is_poured(line)) {
                line.mass = Mass::from_grams(times * line.mass.grams())?;
                line.poured = line
                    .poured
                    .and_then(|mass| Mass::from_grams(times * mass.grams()).ok());
            }
        }
    }
    Ok(())
}

/// As a paste takes its liquid.
fn is_poured(line: &Line) -> bool {
    !line.is_flour() && matches!(line.food.role(), Role::Water | Role::Liquid)
}
