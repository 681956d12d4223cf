//! Remedies for a dough's temperature: worked out after the frame, from a question that is cheap
//! to compare.

use super::mixer_load::MixerLoad;
use crate::engine::heat::{
    Dough, DoughRemedy, DoughStep, LiquidAnswer, Surroundings, dough_remedies, ice_for,
};
use crate::engine::quantity::Temperature;
use crate::engine::working::WorkingLine;
use crate::sheet::Kitchen;

/// A dough that may miss its temperature, and what surrounds it.
#[derive(Clone, Debug, PartialEq)]
pub struct DoughQuestion {
    /// The dough.
    pub dough: Dough,
    /// The temperature wanted off the mixer.
    pub wanted: Temperature,
    /// Room, fridge and freezer.
    pub surroundings: Surroundings,
}

impl DoughQuestion {
    /// Returns the dough whose remedies are searched, with its liquid at its present temperature.
    #[must_use]
    pub fn as_it_is(load: &MixerLoad, wanted: Temperature, kitchen: &Kitchen) -> Self {
        Self {
            dough: load.dough.clone(),
            wanted,
            surroundings: kitchen.surroundings(),
        }
    }

    /// Returns the dough whose remedies are searched, with its liquid at the nearest end of its
    /// range; `None` where a liquid reaches what is wanted.
    #[must_use]
    pub fn at_best(
        load: &MixerLoad,
        liquid: &LiquidAnswer,
        wanted: Temperature,
        kitchen: &Kitchen,
    ) -> Option<Self> {
        match liquid {
            LiquidAnswer::OutOfReach(out) => Some(Self {
                dough: load.dough.poured_at(out.best),
                wanted,
                surroundings: kitchen.surroundings(),
            }),
            LiquidAnswer::At { .. } => None,
        }
    }

    /// Searches the remedies for the dough; `None` where its temperature cannot be worked out.
    #[must_use]
    pub fn remedies(&self) -> Option<Vec<DoughRemedy>> {
        dough_remedies(&self.dough, self.wanted, &self.surroundings).ok()
    }

    /// Returns the step that leads to the ice of a remedy, in g; none where it asks for none, or
    /// for ice in a dough that something else has changed before.
    #[must_use]
    pub fn ice_working(&self, remedy: &DoughRemedy) -> Vec<WorkingLine> {
        let found = ice_for(&self.dough, self.wanted, self.surroundings.freezer);
        let found = found.ok().filter(|found| {
            let ice = DoughStep::Ice { ice: found.ice };
            remedy.step == ice && remedy.steps().count() == 1
        });
        found.map_or_else(Vec::new, |found| found.working())
    }
}

/// A wish met within this needs nothing more, K: no thermometer in a dough tells it more closely.
/// Common practice.
const MET: f64 = 0.5;

/// Whether a dough comes off as warm as is wanted.
///
/// ```
/// use softcrumb::engine::quantity::Temperature;
/// use softcrumb::results::heat::is_met;
///
/// let at = Temperature::from_celsius;
/// assert!(is_met(at(24.6)?, at(25.0)?) && !is_met(at(24.0)?, at(25.0)?));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn is_met(dough: Temperature, wanted: Temperature) -> bool {
    (dough - wanted).kelvin().abs() <= MET
}

/// The remedies with the fewest things to do first; of as many, the one that comes nearest.
///
/// ```
/// use softcrumb::engine::quantity::Temperature;
/// use softcrumb::results::heat::simplest_first;
///
/// let wanted = Temperature::from_celsius(25.0)?;
/// assert!(simplest_first(Vec::new(), wanted).is_empty());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn simplest_first(mut remedies: Vec<DoughRemedy>, wanted: Temperature) -> Vec<DoughRemedy> {
    let away = |remedy: &DoughRemedy| (remedy.reaches - wanted).kelvin().abs();
    remedies.sort_by(|one, other| {
        let number = one.steps().count().cmp(&other.steps().count());
        number.then(away(one).total_cmp(&away(other)))
    });
    remedies
}

/// How many remedies are named or offered at once.
const SHOWN: usize = 2;

/// The remedies that are named to the baker.
#[derive(Clone, Debug, PartialEq)]
pub enum NamedRemedies {
    /// Each of them is enough by itself.
    Enough(Vec<DoughRemedy>),
    /// None is enough by itself.
    Together(Vec<DoughRemedy>),
    /// There is none.
    None,
}

/// Chooses the remedies to name: the first that are enough, else the first of all.
///
/// ```
/// use softcrumb::results::heat::{NamedRemedies, named_remedies};
///
/// assert_eq!(named_remedies(&[]), NamedRemedies::None);
/// ```
#[must_use]
pub fn named_remedies(all: &[DoughRemedy]) -> NamedRemedies {
    let enough = all.iter().filter(|remedy| remedy.enough);
    let enough: Vec<DoughRemedy> = enough.take(SHOWN).copied().collect();
    if !enough.is_empty() {
        return NamedRemedies::Enough(enough);
    }
    // A remedy of several steps is shown alone.
    let several = all
        .first()
        .is_some_and(|first| first.steps().nth(1).is_some());
    let shown = if several { 1 } else { SHOWN };
    let together: Vec<DoughRemedy> = all.iter().take(shown).copied().collect();
    if together.is_empty() {
        NamedRemedies::None
    } else {
        NamedRemedies::Together(together)
    }
}

/// Chooses the remedies that the page offers to apply.
///
/// ```
/// use softcrumb::results::heat::offered_remedies;
///
/// assert!(offered_remedies(&[]).is_empty());
/// ```
#[must_use]
pub fn offered_remedies(all: &[DoughRemedy]) -> Vec<DoughRemedy> {
    all.iter().take(SHOWN).copied().collect()
}
