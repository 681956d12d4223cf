//! Cardinal temperatures: how fast yeast works at a temperature, against its best.

use super::error::RiseError;
use crate::engine::quantity::{Share, Temperature};

/// The three temperatures that make the curve: nothing below the first or above the last, the
/// most at the middle one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cardinal {
    least: Temperature,
    best: Temperature,
    most: Temperature,
}

impl Cardinal {
    /// Gas from a dough: least 1.3, best 36, most 45.4 °C. The default.
    ///
    /// Growth of yeast and gas from a dough are two things. Growth measured in broth is best near
    /// 30 to 32 °C and hardly changes from 26 to 34; bakers see a dough double twice as fast for
    /// each 9.4 K, or 10 % faster for each kelvin, up to 32 to 40 °C. Growth is no measure here:
    /// in two hours the cells of a dough do not multiply. So the best temperature is the middle of
    /// the range printed for gas (32 to 40 °C). The two ends are those of growth, as nothing else
    /// is published: the least of the genus (1.3 °C), because dough in a fridge still creeps, and
    /// the most of the species (45.4 °C). From 20 to 30 °C the rate then grows 1.97-fold, between
    /// growth's 1.43 and the bakers' 2.1 to 2.6; `tests/published/rise.rs` lays them side by side.
    ///
    /// Source: Salvadó et al. 2011, *Applied and Environmental Microbiology* 77:2292–2302 (the
    /// ends); "The science of fermentation", *Bake Magazine* (32 to 40 °C); the choice is ours.
    pub const DOUGH: Self = Self {
        least: Temperature::known(1.3),
        best: Temperature::known(36.0),
        most: Temperature::known(45.4),
    };

    /// Growth of a baker's strain in broth, for comparison: 5.04, 30.00, 45.48 °C.
    ///
    /// Source: Salvadó et al. 2011, strain PE35M.
    pub const GROWTH: Self = Self {
        least: Temperature::known(5.04),
        best: Temperature::known(30.0),
        most: Temperature::known(45.48),
    };

    /// Takes three temperatures in rising order, the best nearer to the most than to the least.
    ///
    /// # Errors
    /// [`RiseError::NotCardinal`] otherwise: the curve would have a pole or two humps.
    pub fn new(
        least: Temperature,
        best: Temperature,
        most: Temperature,
    ) -> Result<Self, RiseError> {
        let middle = least.celsius().midpoint(most.celsius());
        if least < best && best < most && best.celsius() > middle {
            Ok(Self { least, best, most })
        } else {
            Err(RiseError::NotCardinal { least, best, most })
        }
    }

    /// Below this nothing happens.
    #[must_use]
    pub const fn least(self) -> Temperature {
        self.least
    }

    /// Here it is fastest.
    #[must_use]
    pub const fn best(self) -> Temperature {
        self.best
    }

    /// Above this nothing happens.
    #[must_use]
    pub const fn most(self) -> Temperature {
        self.most
    }

    /// How fast at a temperature, as a share of the fastest.
    ///
    /// `(T − X)·(T − N)² / ((O − N)·((O − N)·(T − O) − (O − X)·(O + N − 2·T)))` with N the least,
    /// O the best, X the most; nothing outside N to X.
    ///
    /// Source: Rosso, Lobry and Flandrois 1993, *Journal of Theoretical Biology* 162:447–463.
    #[must_use]
    pub fn rate(self, at: Temperature) -> Share {
        Share::from_fraction(self.fraction(at)).unwrap_or_default()
    }

    pub(super) fn fraction(self, at: Temperature) -> f64 {
        if at <= self.least || at >= self.most {
            return 0.0;
        }
        let t = at.celsius();
        let (n, o, x) = (
            self.least.celsius(),
            self.best.celsius(),
            self.most.celsius(),
        );
        let above = (t - x) * (t - n) * (t - n);
        // Never nothing between the two ends: it is a straight line in t, below zero at both.
        let below = (o - n) * ((o - n) * (t - o) - (o - x) * (o + n - 2.0 * t));
        (above / below).clamp(0.0, 1.0)
    }
}

impl Default for Cardinal {
    fn default() -> Self {
        Self::DOUGH
    }
}
