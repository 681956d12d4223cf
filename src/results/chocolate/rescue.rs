//! A rescue for a syrup that is thick or lumpy now.

use super::ChocolateResults;
use crate::engine::chocolate::{AddWater, BathTime, Syrup, SyrupLook, add_water, bath_time};
use crate::engine::working::WorkingLine;
use crate::results::batch::BatchResults;
use crate::sheet::Sheet;

/// What helps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rescue {
    /// Hot water, stirred in.
    AddWater(AddWater),
    /// A warm bath.
    Bath(BathTime),
}

/// What helps the batch's syrup by what is seen of it; `None` where there is no syrup or nothing
/// helps.
///
/// ```
/// use softcrumb::engine::chocolate::SyrupLook;
/// use softcrumb::results::{batch, chocolate};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let kitchen = Kitchen::default();
/// let batch = batch::of(&sheet, kitchen.scales);
/// let results = chocolate::of(&sheet, &kitchen, &batch);
/// let rescue = chocolate::rescue(&sheet, &batch, &results, SyrupLook::TooThick);
/// assert!(matches!(rescue, Some(chocolate::Rescue::AddWater(_))));
/// ```
#[must_use]
pub fn rescue(
    sheet: &Sheet,
    batch: &BatchResults,
    found: &ChocolateResults,
    look: SyrupLook,
) -> Option<Rescue> {
    if look == SyrupLook::Lumpy {
        let melt = found.melt.as_ref()?.as_ref().ok()?;
        let bath = bath_time(&melt.melting, &melt.melted).ok()??;
        return Some(Rescue::Bath(bath));
    }
    let part = batch.formula.parts.get(found.syrup_part?)?;
    let syrup = Syrup::of(part, sheet.batch.syrup_at).ok()?;
    Some(Rescue::AddWater(add_water(&syrup, look).ok()??))
}

impl Rescue {
    /// Returns the steps that lead to the amounts of the rescue, in g, or to its bath in °C and
    /// minutes.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        match self {
            Self::AddWater(water) => water.working(),
            Self::Bath(bath) => bath.working(),
        }
    }
}
