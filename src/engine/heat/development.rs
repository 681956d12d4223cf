//! Development: how long a dough is mixed until its gluten is developed, by its temperature.

use super::dough::DoughTemperature;
use crate::engine::quantity::{Minutes, Temperature};
use crate::engine::working::{WorkingLine, given};

/// How long a dough is mixed until it is developed. Until it is *warm* is another question: see
/// [`super::dough_temperature`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Development {
    /// How long a dough of [`Development::USUAL_AT`] is mixed.
    pub usual: Minutes,
    /// The temperature of this dough.
    pub dough: Temperature,
    /// How long this dough is mixed, to half a minute.
    pub minutes: Minutes,
    /// The soonest it may be developed, to half a minute.
    pub soonest: Minutes,
    /// The latest it may be developed, to half a minute.
    pub latest: Minutes,
    /// Whether it would take longer than a dough is ever to be mixed: it needs warmth instead.
    pub too_cold: bool,
    /// Whether the dough is colder or warmer than those of the measurements.
    pub beyond_measured: bool,
}

/// Minutes that a dough develops later for each kelvin it is colder.
///
/// Source: Hlynka 1962, *Cereal Chem.* 39:286-303, recording mixer, flour and water, 20 to 35 °C.
const LATER: f64 = 0.39;
/// The same in a bakery: 2 to 3 min for 8 to 10 K. Common practice.
const LATER_AT_LEAST: f64 = 0.2;
/// The temperatures of the measurements, °C.
const MEASURED: (f64, f64) = (20.0, 35.0);
/// Mixing is never advised beyond so many times the usual, nor cut below so much of it.
const MOST: f64 = 1.5;
const LEAST: f64 = 0.5;

impl Development {
    /// The temperature of the dough that the usual mixing belongs to.
    pub const USUAL_AT: Temperature = Temperature::known(26.0);

    /// The longest that mixing is advised: one and a half times the usual, to half a minute.
    /// Common practice: more overworks a dough.
    #[must_use]
    pub fn longest(usual: Minutes) -> Minutes {
        at_most(libm::floor(2.0 * MOST * usual.minutes()) / 2.0)
    }

    /// The shortest that mixing is advised: half the usual, to half a minute. Common practice: less
    /// makes no dough.
    #[must_use]
    pub fn shortest(usual: Minutes) -> Minutes {
        at_most(libm::ceil(2.0 * LEAST * usual.minutes()) / 2.0)
    }

    /// How long a dough is mixed until it is developed: `u + a·(26 − T)`, a = 0.39 min/K, between
    /// half and one and a half times the usual minutes u.
    ///
    /// The range takes the bakery's smaller figure and the range of the dough's temperature.
    ///
    /// Source: Hlynka 1962, *Cereal Chem.* 39:286-303.
    #[must_use]
    pub fn of(usual: Minutes, dough: &DoughTemperature) -> Self {
        let at =
            |later: f64, t: Temperature| usual.minutes() + later * (Self::USUAL_AT - t).kelvin();
        let ends =
            [LATER, LATER_AT_LEAST].map(|later| [at(later, dough.low), at(later, dough.high)]);
        let ends = ends.into_iter().flatten();
        let soonest = ends.clone().fold(f64::INFINITY, f64::min);
        let latest = ends.fold(0.0, f64::max);
        let t = dough.temperature.celsius();
        let wanted = at(LATER, dough.temperature);
        Self {
            usual,
            dough: dough.temperature,
            minutes: advised(wanted, usual),
            soonest: advised(soonest, usual),
            latest: advised(latest, usual),
            too_cold: wanted > MOST * usual.minutes(),
            beyond_measured: t < MEASURED.0 || t > MEASURED.1,
        }
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "round(2 × min(max(u + a × (W − T), l), m)) / 2".into(),
            with: vec![
                given("u", "usual mixing", self.usual.minutes(), "min"),
                given("a", "later for each kelvin", LATER, "min/K"),
                given("W", "of a dough of", Self::USUAL_AT.celsius(), "°C"),
                given("T", "dough", self.dough.celsius(), "°C"),
                given("l", "at least", Self::shortest(self.usual).minutes(), "min"),
                given("m", "at most", Self::longest(self.usual).minutes(), "min"),
            ],
            result: given("D", "mixed until developed", self.minutes.minutes(), "min"),
            source: "Hlynka 1962, Cereal Chem. 39:286-303".into(),
        }]
    }
}

/// Between the least and the most that is advised, to half a minute.
fn advised(minutes: f64, usual: Minutes) -> Minutes {
    let (least, most) = (Development::shortest(usual), Development::longest(usual));
    let within = minutes.max(least.minutes()).min(most.minutes());
    at_most(libm::round(2.0 * within) / 2.0)
}

fn at_most(minutes: f64) -> Minutes {
    let most = Minutes::known(*Minutes::RANGE.end());
    Minutes::from_minutes(minutes).unwrap_or(most)
}
