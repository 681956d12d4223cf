//! Loaf bodies: how the middle of a loaf or bun follows the oven, and afterwards the room.

use std::ops::RangeInclusive;

use super::error::HeatError;
use crate::engine::numerics::first_true;
use crate::engine::quantity::{Length, Minutes, Temperature};

/// The shape in which bread bakes and cools.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LoafBody {
    /// A loaf in a tin, or pieces that touch and bake as one: length, width, height.
    Bar {
        /// Length.
        long: Length,
        /// Width.
        wide: Length,
        /// Height.
        high: Length,
    },
    /// A bun by itself, a round loaf, what fills a cup: a short cylinder.
    Round {
        /// Across.
        across: Length,
        /// Height.
        high: Length,
    },
}

/// How a crumb passes heat on, and takes it from the air round it.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Crumb {
    /// Diffusivity, m²/s.
    diffusivity: f64,
    /// Surface coefficient over conductivity, 1/m.
    coefficient: f64,
}

/// In the oven. The diffusivity is that of crumb at a porosity of about 90 %, and the coefficient
/// 10 W/(m²·K) over 0.24 W/(m·K): with them a tin loaf of 794 g takes the printed 30 to 35 min, and
/// its middle passes 56 and 60 °C at the printed shares of the bake. Crust and evaporation are
/// within these two numbers.
///
/// Source: Zanoni, Peri and Gianotti 1995, *J. Food Eng.* 26:497–510 (4.8 to 5.9·10⁻⁷ m²/s); the
/// American Society of Baking's thermal profiles; US Armed Forces recipe D 009 00.
const BAKING: Crumb = Crumb {
    diffusivity: 5.8e-7,
    coefficient: 40.0,
};

/// On a rack in the room: crumb at a porosity of 75 %, 10 W/(m²·K) in still air with radiation.
///
/// Source: Zanoni, Peri and Gianotti 1995; conductivity 0.24 W/(m·K).
const COOLING: Crumb = Crumb {
    diffusivity: 5.0e-7,
    coefficient: 41.7,
};

/// Terms of each series: the sixth is below 10⁻⁹ when a middle has changed by a hundredth.
const TERMS: u8 = 8;
/// The longest time looked for, min: no bread bakes or cools for longer than a day.
const LONGEST: f64 = 1440.0;
/// Halvings of that: 10⁻⁹ min.
const HALVINGS: u32 = 42;

/// One direction of a body: the share of the first difference left in the middle is a sum of
/// `weight·exp(−rate·t)`, t in seconds.
type Series = Vec<(f64, f64)>;

impl LoafBody {
    /// How long the middle takes from `dough` to `core` in an oven of this temperature.
    ///
    /// Conduction with a coefficient at the surface, by the product of one-dimensional series; the
    /// even temperature of a still oven with heat from all sides.
    ///
    /// Source: Carslaw and Jaeger, *Conduction of Heat in Solids*, §1.15 (product of solutions).
    ///
    /// # Errors
    /// [`HeatError::OvenTooCool`] where the oven is not hotter than the core is to be.
    pub fn bakes_in(
        &self,
        oven: Temperature,
        dough: Temperature,
        core: Temperature,
    ) -> Result<Minutes, HeatError> {
        let too_cool = HeatError::OvenTooCool { oven, core };
        self.time(BAKING, oven, dough, core).ok_or(too_cool)
    }

    /// How long the middle takes from `core` to `target` in a room.
    ///
    /// # Errors
    /// [`HeatError::NeverReached`] where the room is not cooler than that.
    pub fn cools_in(
        &self,
        room: Temperature,
        core: Temperature,
        target: Temperature,
    ) -> Result<Minutes, HeatError> {
        let never = HeatError::NeverReached {
            target,
            surroundings: room,
        };
        self.time(COOLING, room, core, target).ok_or(never)
    }

    /// How warm the middle is after a time in an oven.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] never: it lies between dough and oven.
    pub fn middle_in_oven(
        &self,
        oven: Temperature,
        dough: Temperature,
        time: Minutes,
    ) -> Result<Temperature, HeatError> {
        let left = left(&self.series(BAKING, TERMS), time.minutes() * 60.0);
        let celsius = oven.celsius() + left * (dough.celsius() - oven.celsius());
        Ok(Temperature::from_celsius(celsius)?)
    }

    /// In an oven: the share of the first difference that each direction leaves in the middle after a
    /// time; their product is what is left of it.
    pub(super) fn left_by_direction(&self, time: Minutes) -> Vec<f64> {
        let series = self.series(BAKING, TERMS);
        let seconds = time.minutes() * 60.0;
        series
            .iter()
            .map(|terms| left_one_way(terms, seconds))
            .collect()
    }

    fn time(
        &self,
        crumb: Crumb,
        air: Temperature,
        from: Temperature,
        to: Temperature,
    ) -> Option<Minutes> {
        let share = (to - air).kelvin() / (from - air).kelvin();
        if share >= 1.0 {
            return Some(Minutes::ZERO);
        }
        if share.is_nan() || share <= 0.0 {
            return None;
        }
        let series = self.series(crumb, TERMS);
        let reached = |minutes: f64| left(&series, minutes * 60.0) <= share;
        let minutes = first_true(0.0..=LONGEST, HALVINGS, reached)?;
        Minutes::from_minutes(minutes).ok()
    }

    fn series(&self, crumb: Crumb, terms: u8) -> Vec<Series> {
        match self {
            Self::Bar { long, wide, high } => [long, wide, high]
                .map(|side| slab(side.metres() / 2.0, crumb, terms))
                .into(),
            Self::Round { across, high } => vec![
                cylinder(across.metres() / 2.0, crumb, terms),
                slab(high.metres() / 2.0, crumb, terms),
            ],
        }
    }
}

/// The share of the first difference that is left in the middle after so many seconds.
fn left(series: &[Series], seconds: f64) -> f64 {
    let directions = series.iter().map(|terms| left_one_way(terms, seconds));
    directions.product()
}

/// The same, by one direction alone.
fn left_one_way(terms: &[(f64, f64)], seconds: f64) -> f64 {
    let sum: f64 = terms
        .iter()
        .map(|(weight, rate)| weight * libm::exp(-rate * seconds))
        .sum();
    // At the very beginning the terms left out would make up the difference.
    sum.clamp(0.0, 1.0)
}

/// Halvings before Newton's steps: they begin within 0.007 of the root.
const NARROWED: u32 = 8;
/// Newton's steps: each squares what is left.
const STEPS: u8 = 4;

/// A root of a function that changes its sign once in `range`; `function` gives value and slope.
///
/// Halved first, then Newton's steps, which stay within what was halved.
fn rising_root(function: impl Fn(f64) -> (f64, f64), range: RangeInclusive<f64>) -> Option<f64> {
    let falls = function(*range.start()).0 > 0.0;
    let width = range.end() - range.start();
    let start = *range.start();
    let passed = |z: f64| (function(z).0 >= 0.0) != falls;
    let high = first_true(range, NARROWED, passed)?;
    let low = (high - width * libm::exp2(-f64::from(NARROWED))).max(start);
    let mut z = low.midpoint(high);
    for _ in 0..STEPS {
        let (value, slope) = function(z);
        let next = z - value / slope;
        z = if next.is_finite() {
            next.clamp(low, high)
        } else {
            z
        };
    }
    Some(z)
}

/// The middle of a slab: `Cₙ = 4·sin z / (2·z + sin 2z)`, z·tan z = Bi.
fn slab(half: f64, crumb: Crumb, terms: u8) -> Series {
    let biot = crumb.coefficient * half;
    let pi = std::f64::consts::PI;
    let function = |z: f64| {
        let (sin, cos) = (libm::sin(z), libm::cos(z));
        (z * sin - biot * cos, sin + z * cos + biot * sin)
    };
    let terms = (0..terms).filter_map(|n| {
        let first = f64::from(n) * pi;
        let z = rising_root(function, first..=first + pi / 2.0)?;
        let weight = 4.0 * libm::sin(z) / (2.0 * z + libm::sin(2.0 * z));
        Some((weight, crumb.diffusivity * z * z / (half * half)))
    });
    terms.collect()
}

/// The zeros of the Bessel functions J₀ and J₁ between which the roots of a cylinder lie.
///
/// Source: Abramowitz and Stegun, table 9.5.
const ZEROS: [(f64, f64); 8] = [
    (0.0, 2.404_825_557_7),
    (3.831_705_970_2, 5.520_078_110_3),
    (7.015_586_669_8, 8.653_727_912_9),
    (10.173_468_135_1, 11.791_534_439_0),
    (13.323_691_936_3, 14.930_917_708_5),
    (16.470_630_050_9, 18.071_063_967_9),
    (19.615_858_510_5, 21.211_636_629_9),
    (22.760_084_380_6, 24.352_471_530_7),
];

/// The middle of a cylinder: `Cₙ = 2·J₁(z) / (z·(J₀²(z) + J₁²(z)))`, z·J₁(z) = Bi·J₀(z).
fn cylinder(radius: f64, crumb: Crumb, terms: u8) -> Series {
    let biot = crumb.coefficient * radius;
    let function = |z: f64| {
        let (j0, j1) = (libm::j0(z), libm::j1(z));
        (z * j1 - biot * j0, z * j0 + biot * j1)
    };
    let terms = ZEROS
        .iter()
        .take(usize::from(terms))
        .filter_map(|(from, to)| {
            let z = rising_root(function, *from..=*to)?;
            let (j0, j1) = (libm::j0(z), libm::j1(z));
            let weight = 2.0 * j1 / (z * (j0 * j0 + j1 * j1));
            Some((weight, crumb.diffusivity * z * z / (radius * radius)))
        });
    terms.collect()
}
