//! `SyrupParts`: the two sides of a syrup, mixed in any ratio, and the least liquid that will do.

use super::blend::Blend;
use super::suspension::{MixConditions, Suspension};
use crate::engine::numerics::first_true;

/// The two sides of a syrup, ready to be mixed in any ratio without allocating.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct SyrupParts {
    pub(super) chocolate: Blend,
    /// One gram of the liquids, in their own ratio.
    pub(super) liquid: Blend,
    pub(super) conditions: MixConditions,
    /// The mixture as the syrup has it.
    pub(super) now: Suspension,
}

/// The most liquid that is tried, in multiples of the chocolate.
const MOST: f64 = 20.0;
/// The first amount that is tried, in multiples of the chocolate.
const LEAST: f64 = 1e-3;
/// Steps of the first search, each a little larger than the one before: 120 of them reach [`MOST`].
const STEPS: u32 = 120;
/// Halvings after it: as many as `f64` can tell apart.
const HALVINGS: u32 = 60;

impl SyrupParts {
    /// The mixture with so many grams of liquid.
    pub(super) fn with(&self, liquid: f64) -> Suspension {
        Suspension::of(&self.chocolate.plus(liquid, &self.liquid), &self.conditions)
    }

    /// The growing amounts of liquid that the first search tries, in grams.
    fn tried(&self) -> impl Iterator<Item = f64> {
        let growth = libm::pow(MOST / LEAST, 1.0 / f64::from(STEPS));
        let first = LEAST * self.chocolate.total;
        let amounts = std::iter::successors(Some(first), move |grams| Some(grams * growth));
        amounts.zip(0..=STEPS).map(|(grams, _)| grams)
    }

    /// Grams of the least liquid for which `fits` holds; `None` when it never does within the
    /// search.
    ///
    /// Tries growing amounts first, because a thick liquid may thin the chocolate and then thicken
    /// it, then bisects between the last two.
    pub(super) fn least(&self, fits: impl Fn(&Suspension) -> bool) -> Option<f64> {
        let fits = |grams: f64| fits(&self.with(grams));
        if fits(0.0) {
            return Some(0.0);
        }
        let mut below = 0.0;
        for above in self.tried() {
            if fits(above) {
                return first_true(below..=above, HALVINGS, fits);
            }
            below = above;
        }
        None
    }

    /// Grams of the least liquid with which the chocolate flows.
    pub(super) fn least_liquid(&self) -> Option<f64> {
        self.least(|mix| mix.flows(&self.conditions))
    }

    /// The thinnest that the search meets: grams of liquid and Pa·s.
    pub(super) fn thinnest(&self) -> Option<(f64, f64)> {
        let thickness = |grams| Some((grams, self.with(grams).pascal_seconds(&self.conditions)?));
        let found = self.tried().filter_map(thickness);
        found.min_by(|one, other| one.1.total_cmp(&other.1))
    }
}
