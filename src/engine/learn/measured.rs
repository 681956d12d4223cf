//! Learnt from small differences: friction, steam and the passing of heat, each by its precision.

use super::evidence::{Before, Entry, Evidence, MeanKind, NINE_IN_TEN};
use super::observation::{MeasuredCooling, MeasuredSteam};
use crate::engine::heat::{CoolingFactors, Dough};
use crate::engine::numerics::{Weighed, WeightedMean, weighted_mean};
use crate::engine::quantity::{Factor, Share, WarmingRate};

/// What a kitchen thermometer in a dough or paste is out by, K, as a standard deviation. Common
/// practice: 0.5 to 1 K with the place it is put in.
const THERMOMETER: f64 = 0.7;
/// What a weighing before and after leaves open, g, as a standard deviation: a scale that shows
/// whole grams, and what sticks to the spoon. Common practice.
const WEIGHING: f64 = 1.0;
/// What differs from dough to dough, as a share of what is usual. Common practice.
const DOUGH_TO_DOUGH: f64 = 0.15;
/// What differs from paste to paste: how long it is stirred and how wide the bowl is.
const PASTE_TO_PASTE: f64 = 0.25;
/// What differs from one cooling to the next: where it stands, and how full the fridge is.
const DAY_TO_DAY: f64 = 0.10;
/// The least that may come of a factor: a tenth.
const LEAST: f64 = 0.1;

/// A friction less than this is none, K/min: it would be shown as nought, and mixing warms every
/// dough. Common practice: 0.05 by hand to 1 in a fast mixer.
const LEAST_FRICTION: f64 = 0.01;

/// What the log says of friction.
pub(super) enum FoundFriction {
    /// The friction, how far that of the next dough may lie from it, and what it rests on.
    Believed(WarmingRate, WarmingRate, Evidence),
    /// A mean that says mixing does not warm a dough, K/min, and what it rests on.
    Doubted(f64, Evidence),
}

/// Friction and how far that of the next dough may lie from it, from what mixing added in K and the
/// minutes it is from.
///
/// `r = (u/σ₀² + Σ (Δᵢ/τᵢ)/σᵢ²) / (1/σ₀² + Σ 1/σᵢ²)` with `σᵢ² = (0.7 K/τᵢ)² + (0.15·u)²`, in
/// K/min. A ratio would not do: a thermometer is out by as much as a gentle mixer warms, and of
/// ratios near zero a geometric mean is too low. One below zero counts for the same reason; a mean
/// that is not above zero is not believed.
pub(super) fn friction(
    entries: &[(usize, (f64, f64))],
    usual: WarmingRate,
) -> Option<FoundFriction> {
    let usual = usual.kelvin_per_minute();
    let day = DOUGH_TO_DOUGH * usual;
    let values = entries.iter().map(|(bake, (rise, minutes))| {
        let deviation = hypotenuse(THERMOMETER / minutes, day);
        (*bake, (rise / minutes, deviation))
    });
    let values: Vec<_> = values.collect();
    let before = (
        usual,
        Dough::FRICTION_SPREAD.kelvin_per_minute() / NINE_IN_TEN,
    );
    let found = Found::of(&values, before)?;
    let rate = found.mean.mean;
    let spread = found.next(day);
    let within = Share::from_fraction(spread / rate.max(spread)).ok()?;
    let held = spread.min(*WarmingRate::RANGE.end());
    let rests = found.rests((MeanKind::Weighted, None), "K/min", within);
    Some(if rate < LEAST_FRICTION {
        FoundFriction::Doubted(rate, rests)
    } else {
        FoundFriction::Believed(
            WarmingRate::from_kelvin_per_minute(rate).ok()?,
            WarmingRate::from_kelvin_per_minute(held).ok()?,
            rests,
        )
    })
}

/// The factor on the steam a paste loses, by what it lost beside what was expected.
///
/// As [`friction`], with `x = lost / expected` and `σ² = (1 g / expected)² + 0.25²`, shrunk towards
/// 1 as far as the prediction leaves open.
pub(super) fn steam(entries: &[(usize, MeasuredSteam)]) -> Option<(Factor, Evidence)> {
    let values = entries.iter().filter_map(|(bake, noted)| {
        let expected = noted.expected.grams();
        let deviation = hypotenuse(WEIGHING / expected, PASTE_TO_PASTE);
        (expected > 0.0).then(|| (*bake, (noted.lost_grams() / expected, deviation)))
    });
    let values: Vec<_> = values.collect();
    let open = CoolingFactors::STEAM_SPREAD.fraction() / NINE_IN_TEN;
    let found = Found::of(&values, (1.0, open))?;
    let factor = found.mean.mean.max(LEAST);
    let spread = Share::from_fraction(found.next(PASTE_TO_PASTE) / factor).ok()?;
    Some((
        Factor::from_number(factor).ok()?,
        found.rests((MeanKind::Weighted, Some(LEAST)), "", spread),
    ))
}

/// The factor on the heat that passes to the air, by the factors that single coolings ask for.
///
/// Their logarithms are averaged, with `σ² = ln(1 + w)² + 0.10²`, where `w` is what a thermometer
/// moves a factor, shrunk towards 1 as far as the prediction leaves open.
pub(super) fn transfer(entries: &[(usize, MeasuredCooling)]) -> Option<(Factor, Evidence)> {
    let values = entries.iter().map(|(bake, noted)| {
        let moves = THERMOMETER * libm::log1p(noted.within.fraction());
        let deviation = hypotenuse(moves, DAY_TO_DAY);
        (*bake, (libm::log(noted.factor.number()), deviation))
    });
    let values: Vec<_> = values.collect();
    let open = libm::log1p(CoolingFactors::TRANSFER_SPREAD.fraction()) / NINE_IN_TEN;
    let found = Found::of(&values, (0.0, open))?;
    let spread = Share::from_fraction(libm::expm1(found.next(DAY_TO_DAY))).ok()?;
    Some((
        Factor::from_number(libm::exp(found.mean.mean)).ok()?,
        found.rests((MeanKind::WeightedGeometric, None), "", spread),
    ))
}

/// A mean with what it came from.
struct Found<'v> {
    values: &'v [(usize, Weighed)],
    before: f64,
    mean: WeightedMean,
}

impl<'v> Found<'v> {
    /// The mean; nothing where no value was kept.
    fn of(values: &'v [(usize, Weighed)], before: Weighed) -> Option<Self> {
        let weighed: Vec<Weighed> = values.iter().map(|(_, value)| *value).collect();
        let mean = weighted_mean(&weighed, before)?;
        mean.kept.contains(&true).then_some(Self {
            values,
            before: before.0,
            mean,
        })
    }

    /// How far the next one may lie from the mean, nine times in ten, where the days differ by so
    /// much: the doubt of the mean itself added.
    fn next(&self, day: f64) -> f64 {
        NINE_IN_TEN * hypotenuse(self.mean.deviation, self.mean.scatter * day)
    }

    fn rests(
        &self,
        (mean, least): (MeanKind, Option<f64>),
        unit: &'static str,
        spread: Share,
    ) -> Evidence {
        let shown = |value: f64| match mean {
            MeanKind::WeightedGeometric => libm::exp(value),
            MeanKind::Plain | MeanKind::Geometric | MeanKind::Weighted => value,
        };
        let weight = |deviation: f64| 1.0 / (deviation * deviation);
        let pairs = self.values.iter().zip(&self.mean.kept);
        let entries = pairs.map(|((bake, (value, deviation)), kept)| {
            Entry::weighed(*bake, *kept, (shown(*value), weight(*deviation)))
        });
        let (value, deviation) = (self.before, self.mean.before_deviation);
        Evidence {
            entries: entries.collect(),
            before: Some(Before::weighed(shown(value), weight(deviation))),
            spread,
            unit,
            held_at: least.filter(|least| self.mean.mean < *least),
            mean,
        }
    }
}

fn hypotenuse(one: f64, other: f64) -> f64 {
    libm::sqrt(one * one + other * other)
}
