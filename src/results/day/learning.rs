//! Learning: estimates from the log for this kitchen and formula, and applying them.

use crate::engine::batch::Losses;
use crate::engine::heat::{CoolingFactors, Dough, KitchenFactor};
use crate::engine::learn::{Learnt, LearntFactor, learn};
use crate::engine::quantity::Mass;
use crate::sheet::Id;
use crate::sheet::Kitchen;
use crate::sheet::day::Log;

/// A factor nearer to one than this is not worth a sentence.
const NEGLIGIBLE: f64 = 0.01;

/// What the log teaches of a kitchen; of rises, only for the formula that is open.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::learnt;
/// use softcrumb::sheet::{Kitchen, day::Log};
///
/// // An empty log teaches nothing.
/// assert_eq!(learnt(&Log::default(), &Kitchen::default(), None), Learnt::default());
/// ```
#[must_use]
pub fn learnt(log: &Log, kitchen: &Kitchen, formula: Option<&Id>) -> Learnt {
    let mixer = kitchen.mixer;
    // A friction that was learnt from the log is not counted a second time.
    let usual = if mixer.friction_spread == Dough::FRICTION_SPREAD {
        mixer.friction
    } else {
        Dough::FRICTION
    };
    learn(&log.noted(&kitchen.name, formula), usual)
}

/// Returns the kitchen with the factors that the log has taught of its steam and of the heat passed
/// to air and fridge; the printed figures where it has taught nothing.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::taught_kitchen;
/// use softcrumb::sheet::Kitchen;
///
/// let kitchen = Kitchen::default();
/// assert_eq!(taught_kitchen(&kitchen, &Learnt::default()), kitchen);
/// ```
#[must_use]
pub fn taught_kitchen(kitchen: &Kitchen, learnt: &Learnt) -> Kitchen {
    let factor = |learnt: &Option<LearntFactor>| {
        learnt.as_ref().map(|learnt| KitchenFactor {
            likely: learnt.factor,
            spread: learnt.rests.spread,
        })
    };
    Kitchen {
        cooling: CoolingFactors {
            steam: factor(&learnt.steam),
            transfer: factor(&learnt.transfer),
        },
        ..kitchen.clone()
    }
}

/// The factor of the bake, where it differs from the programme by a hundredth or more.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::learnt_oven;
///
/// assert!(learnt_oven(&Learnt::default()).is_none());
/// ```
#[must_use]
pub fn learnt_oven(learnt: &Learnt) -> Option<&LearntFactor> {
    let bake = learnt.bake.as_ref();
    bake.filter(|bake| (bake.factor.number() - 1.0).abs() >= NEGLIGIBLE)
}

/// So many doughs teach a friction that is taken over. Common practice: one dough is no pattern.
const DOUGHS: usize = 2;

/// The kitchen with the friction that was learnt; `None` where none was, of one dough only, or where the
/// kitchen has it.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::with_learnt_friction;
/// use softcrumb::sheet::Kitchen;
///
/// let taught = with_learnt_friction(&Kitchen::default(), &Learnt::default());
/// assert!(taught.is_none());
/// ```
#[must_use]
pub fn with_learnt_friction(kitchen: &Kitchen, learnt: &Learnt) -> Option<Kitchen> {
    let mut taught = kitchen.clone();
    let friction = learnt.friction.as_ref()?;
    if friction.rests.entries.len() < DOUGHS {
        return None;
    }
    taught.mixer.friction = friction.rate;
    taught.mixer.friction_spread = friction.spread;
    (taught != *kitchen).then_some(taught)
}

/// Returns the batch's losses, as shares of the dough, with those that were learnt; `None` where
/// none were.
///
/// A learnt residue is all that is lost, however large the batch: it replaces the fixed one.
///
/// ```
/// use softcrumb::engine::learn::Learnt;
/// use softcrumb::results::day::with_learnt_losses;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// assert_eq!(with_learnt_losses(sheet.batch.losses, &Learnt::default()), None);
/// ```
#[must_use]
pub fn with_learnt_losses(losses: Losses, learnt: &Learnt) -> Option<Losses> {
    if learnt.residue.is_none() && learnt.oven_loss.is_none() {
        return None;
    }
    let mut losses = losses;
    if let Some(residue) = &learnt.residue {
        losses.residue = Mass::ZERO;
        losses.residue_share = residue.share;
    }
    if let Some(oven) = &learnt.oven_loss {
        losses.bake = oven.share;
    }
    Some(losses)
}
