//! Division: the smallest step a scale shows.

use super::Mass;
use crate::engine::numerics::whole;

/// The smallest step a scale shows. Held in whole hundredths of a gram, one of [`Division::ALL`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Division(u16);

/// No scale of ours has this division.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("no scale divides by {mass:?}")]
pub struct NoSuchDivision {
    /// What was asked for.
    pub mass: Mass,
}

impl Division {
    /// Every division there is, finest first: 0.01 g to 10 g.
    pub const ALL: [Self; 10] = [
        Self(1),
        Self(2),
        Self(5),
        Self(10),
        Self(20),
        Self(50),
        Self(100),
        Self(200),
        Self(500),
        Self(1000),
    ];

    /// A kitchen scale that shows whole grams.
    pub const ONE_GRAM: Self = Self(100);

    /// Takes a mass that is one of the divisions, to within a millionth of a gram.
    ///
    /// # Errors
    /// [`NoSuchDivision`] when it is none of [`Division::ALL`].
    pub fn from_mass(mass: Mass) -> Result<Self, NoSuchDivision> {
        Self::ALL
            .into_iter()
            .find(|division| (division.grams() - mass.grams()).abs() < 1e-6)
            .ok_or(NoSuchDivision { mass })
    }

    /// Gives grams.
    #[must_use]
    pub fn grams(self) -> f64 {
        f64::from(self.0) / 100.0
    }

    /// Gives the division as a mass.
    #[must_use]
    pub fn mass(self) -> Mass {
        self.times(1)
    }

    /// So many divisions, as a mass: 7 divisions of 0.05 g are 0.35 g. Held to a tonne.
    #[must_use]
    pub fn times(self, count: u32) -> Mass {
        let grams = f64::from(count) * f64::from(self.0) / 100.0;
        Mass::from_grams(grams.min(*Mass::RANGE.end())).unwrap_or_default()
    }

    /// How many whole divisions lie in `mass`; what is within a millionth of the next counts.
    #[must_use]
    pub fn whole_in(self, mass: Mass) -> u32 {
        whole(mass.grams() * 100.0 / f64::from(self.0) + 1e-6)
    }

    /// The nearest mass the scale can show; a half goes up.
    #[must_use]
    pub fn nearest(self, mass: Mass) -> Mass {
        self.times(whole(mass.grams() * 100.0 / f64::from(self.0) + 0.5 + 1e-9))
    }
}
