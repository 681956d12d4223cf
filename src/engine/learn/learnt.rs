//! Learnt: friction, losses, rises and oven, each from the bakes that noted it.

use super::evidence::{Before, Entry, Evidence, MeanKind, NINE_IN_TEN};
use super::measured::{self, FoundFriction};
use super::observation::{MeasuredDuration, Observation};
use crate::engine::numerics::{RobustMean, float_from_usize, robust_mean};
use crate::engine::quantity::{Factor, Minutes, Share, WarmingRate};
use crate::engine::rise::{ReferenceBasis, ReferenceRise};
use crate::engine::working::WorkingLine;

/// A warming rate that was learnt.
#[derive(Clone, Debug, PartialEq)]
pub struct LearntRate {
    /// The rate.
    pub rate: WarmingRate,
    /// How far the true one of the next dough may lie above or below it, nine times in ten.
    pub spread: WarmingRate,
    /// What it rests on.
    pub rests: Evidence,
}

/// A friction that is not believed: by what was measured, mixing does not warm a dough.
#[derive(Clone, Debug, PartialEq)]
pub struct DoubtedRate {
    /// The mean, K/min.
    mean: f64,
    /// What it rests on.
    pub rests: Evidence,
}

/// A share that was learnt.
#[derive(Clone, Debug, PartialEq)]
pub struct LearntShare {
    /// The share.
    pub share: Share,
    /// What it rests on.
    pub rests: Evidence,
}

/// A factor that was learnt: how many times as long as expected.
#[derive(Clone, Debug, PartialEq)]
pub struct LearntFactor {
    /// The factor.
    pub factor: Factor,
    /// What it rests on.
    pub rests: Evidence,
}

/// Everything that was learnt; nothing where no bake noted it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Learnt {
    /// How fast the mixer warms a dough.
    pub friction: Option<LearntRate>,
    /// A friction that is left out, since it is none.
    pub doubted: Option<DoubtedRate>,
    /// What stays in bowls and on hands, of the dough.
    pub residue: Option<LearntShare>,
    /// What the oven takes, of the dough that goes in.
    pub oven_loss: Option<LearntShare>,
    /// The rise in one piece.
    pub bulk: Option<LearntFactor>,
    /// The rise in the tin.
    pub proof: Option<LearntFactor>,
    /// The bake.
    pub bake: Option<LearntFactor>,
    /// The steam a paste loses.
    pub steam: Option<LearntFactor>,
    /// The heat that passes from a paste or preferment to the air of room and fridge.
    pub transfer: Option<LearntFactor>,
}

/// The most bakes that are looked at, the newest: a kitchen changes with the year.
const NEWEST: usize = 12;
/// From so many entries on they stand without what was believed before.
const ENOUGH: usize = 3;
/// A single entry is an outlier when it is more than so many times the usual, or less.
const FAR: f64 = 2.5;
/// What entries scatter at the least: 5 %, or two thousandths of a weight.
const LEAST_FACTOR: f64 = 0.05;
const LEAST_SHARE: f64 = 0.002;
/// What is believed of the scatter before anything is noted, as so many entries.
const BELIEF: f64 = 4.0;
/// Nine of ten of a scatter found from some eight entries lie within so many (Student's t).
const NINE_IN_TEN_OF_FEW: f64 = 1.860;

/// What the bakes teach, oldest first. `usual` is the friction that holds until then.
///
/// Each figure is the mean over at most the twelve newest bakes that noted it, outliers left
/// aside; of one or two bakes only, what was believed before counts as one more. Friction, steam and
/// the passing of heat are measured as small differences: each counts by its precision, beside what
/// was believed before.
#[must_use]
pub fn learn(bakes: &[Observation], usual: WarmingRate) -> Learnt {
    let times = |took: Option<MeasuredDuration>| took.and_then(|took| took.times());
    let of = |(factor, rests)| LearntFactor { factor, rests };
    let (friction, doubted) = match measured::friction(&newest(bakes, Observation::warmed), usual) {
        Some(FoundFriction::Believed(rate, spread, rests)) => (
            Some(LearntRate {
                rate,
                spread,
                rests,
            }),
            None,
        ),
        Some(FoundFriction::Doubted(mean, rests)) => (None, Some(DoubtedRate { mean, rests })),
        None => (None, None),
    };
    Learnt {
        friction,
        doubted,
        residue: share(&newest(bakes, |bake| Some(bake.bowl?.lost()?.fraction()))),
        oven_loss: share(&newest(bakes, |bake| {
            Some(bake.oven_loss?.lost()?.fraction())
        })),
        bulk: factor(&newest(bakes, |bake| times(bake.bulk))),
        proof: factor(&newest(bakes, |bake| times(bake.proof))),
        bake: factor(&newest(bakes, |bake| times(bake.bake))),
        steam: measured::steam(&newest(bakes, |bake| bake.steam)).map(of),
        transfer: measured::transfer(&newest(bakes, |bake| bake.cooling)).map(of),
    }
}

/// The newest entries of those bakes that have one, oldest first.
fn newest<T>(bakes: &[Observation], of: impl Fn(&Observation) -> Option<T>) -> Vec<(usize, T)> {
    let numbered = bakes.iter().enumerate();
    let mut found: Vec<(usize, T)> = numbered
        .filter_map(|(place, bake)| Some((place, of(bake)?)))
        .collect();
    found.split_off(found.len().saturating_sub(NEWEST))
}

fn factor(entries: &[(usize, f64)]) -> Option<LearntFactor> {
    let (value, rests) = by_factor(entries)?;
    let factor = Factor::from_number(value).ok()?;
    Some(LearntFactor { factor, rests })
}

/// Entries that are factors, with no change at all as one of them while they are few; a single one
/// that is more than so many times, or less, is an outlier.
fn by_factor(entries: &[(usize, f64)]) -> Option<(f64, Evidence)> {
    let few = entries.len() < ENOUGH;
    let mut logs: Vec<f64> = entries.iter().map(|(_, value)| libm::log(*value)).collect();
    let alone = logs.first().copied().filter(|_| logs.len() == 1);
    if let Some(only) = alone
        && few
        && only.abs() > libm::log(FAR)
    {
        return None;
    }
    if few {
        logs.push(0.0);
    }
    let centre = robust_mean(&logs, LEAST_FACTOR)?;
    let kept = centre.kept.iter().copied();
    let before = few && centre.kept.last() == Some(&true);
    let mut rests = rests(entries, kept, spread(&centre)?);
    rests.mean = MeanKind::Geometric;
    rests.before = before.then(|| Before::new(1.0));
    (rests.bakes() > 0).then(|| (libm::exp(centre.mean), rests))
}

fn share(entries: &[(usize, f64)]) -> Option<LearntShare> {
    let values: Vec<f64> = entries.iter().map(|(_, value)| *value).collect();
    let centre = robust_mean(&values, LEAST_SHARE)?;
    let rests = rests(entries, centre.kept.iter().copied(), Share::NONE);
    let share = Share::from_fraction(centre.mean.max(0.0)).ok()?;
    Some(LearntShare { share, rests })
}

fn rests(entries: &[(usize, f64)], kept: impl Iterator<Item = bool>, spread: Share) -> Evidence {
    let pairs = entries.iter().zip(kept);
    Evidence {
        entries: pairs
            .map(|((bake, value), kept)| Entry::new(*bake, kept, *value))
            .collect(),
        before: None,
        spread,
        unit: "",
        held_at: None,
        mean: MeanKind::Plain,
    }
}

/// How far the next one may lie, over or under, nine times in ten.
///
/// The scatter of the kept entries, with what was believed before (a fifth, nine times in ten)
/// weighed in as four entries, and the doubt of the mean itself added.
fn spread(centre: &RobustMean) -> Option<Share> {
    let kept = centre.kept.iter().filter(|kept| **kept);
    let count = float_from_usize(kept.count());
    let believed = libm::log1p(ReferenceRise::SPREAD.fraction()) / NINE_IN_TEN;
    let squares = BELIEF * believed * believed + centre.squares;
    let deviation = libm::sqrt(squares / (BELIEF + (count - 1.0)) * (1.0 + 1.0 / count));
    Share::from_fraction(libm::expm1(NINE_IN_TEN_OF_FEW * deviation)).ok()
}

impl Learnt {
    /// The working of everything that was learnt, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = Vec::new();
        lines.extend(self.friction.iter().flat_map(LearntRate::working));
        for share in [&self.residue, &self.oven_loss] {
            lines.extend(share.iter().flat_map(LearntShare::working));
        }
        for factor in [&self.bulk, &self.proof, &self.bake] {
            lines.extend(factor.iter().flat_map(LearntFactor::working));
        }
        lines
    }
}

impl LearntFactor {
    /// A stated rise as this kitchen has it.
    #[must_use]
    pub fn anchor(&self, stated: ReferenceRise) -> ReferenceRise {
        let minutes = stated.time.minutes() * self.factor.number();
        let time = Minutes::from_minutes(minutes.min(*Minutes::RANGE.end()));
        ReferenceRise {
            time: time.unwrap_or(stated.time),
            at: stated.at,
            basis: ReferenceBasis::Bakes(self.rests.bakes()),
            spread: self.rests.spread,
        }
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let of = "times as long as expected";
        self.rests.working(of, self.factor.number())
    }
}

impl LearntRate {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        self.rests.working("mixer", self.rate.kelvin_per_minute())
    }
}

impl DoubtedRate {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        self.rests.working("mixer", self.mean)
    }
}

impl LearntShare {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        self.rests.working("lost", self.share.fraction())
    }
}
