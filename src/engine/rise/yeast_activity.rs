//! `YeastActivity`: what is in a dough for its yeast and against it, so that two doughs can be compared.

use super::error::RiseError;
use crate::engine::formula::{Figure, Figures, Form, Formula};
use crate::engine::numerics::interpolate;
use crate::engine::quantity::{Factor, Share};

/// What is in a dough for its yeast and against it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YeastActivity {
    /// Yeast as fresh yeast of the same dry matter, on the flour.
    pub yeast: Share,
    /// Sugars, honey and syrups as weighed, on the flour.
    pub sugar: Share,
    /// Salt, on the flour.
    pub salt: Share,
    /// What the sugar leaves of the speed.
    pub sugar_leaves: Share,
    /// What the salt leaves of it.
    pub salt_leaves: Share,
}

/// Sugar on the flour in percent, and what it leaves of the speed.
const SUGAR: [(f64, f64); 6] = [
    (0.0, 1.0),
    (5.0, 1.0),
    (10.0, 0.8),
    (20.0, 0.5),
    (30.0, 0.3),
    (45.0, 0.15),
];

/// Fresh yeast on the flour, in percent, at which each gram works half as fast as in a trace of it.
///
/// Source: a table of gas from plain doughs (*Applied and Environmental Microbiology*, strain V1):
/// 5 % of fresh yeast gave 1.5 times the gas of 2.8 %. `y/(1 + y/8.75)` meets that.
pub(super) const HALF_SPEED: f64 = 8.75;

/// What each percent of salt on the flour takes away. Common practice: 2 % costs about an eighth.
const SALT_TAKES: f64 = 0.06;

/// What so much sugar on the flour leaves of the speed of a rise.
///
/// Nothing is lost up to 5 %; at 20 % a dough takes twice the yeast or twice the time. Straight
/// lines between. Strains differ more than this: a lean strain kept 29 % of its gas at 10 % of
/// sucrose, one with 5 % of glucose 80 %, strains for sweet doughs nearly all. As a formula is
/// compared with itself, the factor only matters where its sugar is changed.
///
/// Source: Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307 (gas falls above 5 %); the rest is
/// common practice.
#[must_use]
pub fn sugar_factor(sugar: Share) -> Share {
    let left = interpolate(SUGAR, sugar.percent());
    Share::from_fraction(left.unwrap_or(1.0)).unwrap_or_default()
}

/// What so much salt on the flour leaves of the speed of a rise; never less than a tenth.
///
/// Source: Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307 (salt lowers gas); how much is
/// common practice.
#[must_use]
pub fn salt_factor(salt: Share) -> Share {
    let left = 1.0 - SALT_TAKES * salt.percent();
    Share::from_fraction(left.max(0.1)).unwrap_or_default()
}

/// The `yeast_activity` of a formula's dough; the yeast of preferments counts as if weighed in.
///
/// # Errors
/// [`RiseError::NoYeast`] without any; [`RiseError::Formula`] without flour.
pub fn yeast_activity(formula: &Formula, form: Form) -> Result<YeastActivity, RiseError> {
    let figures = Figures::of(formula, form);
    let share = |figure| figures.share(figure);
    YeastActivity::of(
        share(Figure::FreshYeast)?,
        share(Figure::Sugar)?,
        share(Figure::Salt)?,
    )
}

impl YeastActivity {
    /// Takes yeast as fresh, sugar and salt, all on the flour.
    ///
    /// # Errors
    /// [`RiseError::NoYeast`] without any.
    pub fn of(yeast: Share, sugar: Share, salt: Share) -> Result<Self, RiseError> {
        if yeast <= Share::NONE {
            return Err(RiseError::NoYeast);
        }
        Ok(Self {
            yeast,
            sugar,
            salt,
            sugar_leaves: sugar_factor(sugar),
            salt_leaves: salt_factor(salt),
        })
    }

    /// The dough of the usual reference rise: 1 % of instant yeast, 10 % of sugar, 1.8 % of salt.
    /// Common practice for soft enriched doughs.
    ///
    /// # Errors
    /// [`RiseError::NoYeast`] never.
    pub fn usual() -> Result<Self, RiseError> {
        Self::of(
            Share::in_hundred(3.06),
            Share::in_hundred(10.0),
            Share::in_hundred(1.8),
        )
    }

    /// How many times as fast as `other`: what the yeast does, times what sugar and salt leave.
    ///
    /// `v = y/(1 + y/8.75)·s·n` with y in percent: much yeast brings less than its share.
    ///
    /// # Errors
    /// [`RiseError::OffScale`] where one of the two has next to no yeast.
    pub fn against(&self, other: &Self) -> Result<Factor, RiseError> {
        Ok(Factor::from_number(self.product() / other.product())?)
    }

    pub(super) fn product(&self) -> f64 {
        let yeast = self.yeast.percent();
        let does = yeast / (1.0 + yeast / HALF_SPEED) / 100.0;
        does * self.sugar_leaves.fraction() * self.salt_leaves.fraction()
    }
}
