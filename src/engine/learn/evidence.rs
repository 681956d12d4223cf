//! What something learnt rests on: which bakes, which were left aside, how they scatter.

use crate::engine::numerics::saturating_u16;
use crate::engine::quantity::Share;
use crate::engine::working::{Given, WorkingLine, given};

/// Nine of ten lie within so many standard deviations of a normal scatter that is known.
pub(super) const NINE_IN_TEN: f64 = 1.645;

/// One bake's entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// Which bake of the list.
    pub bake: usize,
    /// Whether it was kept; an outlier is left aside.
    pub kept: bool,
    value: f64,
    weight: f64,
}

impl Entry {
    /// An entry that counts as much as any other.
    pub(super) const fn new(bake: usize, kept: bool, value: f64) -> Self {
        Self::weighed(bake, kept, (value, 1.0))
    }

    /// An entry that counts by its weight.
    pub(super) const fn weighed(bake: usize, kept: bool, (value, weight): (f64, f64)) -> Self {
        Self {
            bake,
            kept,
            value,
            weight,
        }
    }
}

/// Which mean is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum MeanKind {
    /// The sum over the count.
    Plain,
    /// Of factors, that of their logarithms.
    Geometric,
    /// Each by its weight: one over the square of its standard deviation.
    Weighted,
    /// Of factors, that of their logarithms, each by its weight.
    WeightedGeometric,
}

/// What something learnt rests on.
#[derive(Clone, Debug, PartialEq)]
pub struct Evidence {
    /// The entries looked at, oldest first.
    pub entries: Vec<Entry>,
    /// What was believed before, where it still counts as one entry.
    pub before: Option<Before>,
    /// The next one lies within so much of what was learnt, over or under, nine times in ten.
    pub spread: Share,
    pub(super) unit: &'static str,
    /// The least that may come of it, where the mean lies below.
    pub(super) held_at: Option<f64>,
    /// Which mean of them was taken.
    pub(super) mean: MeanKind,
}

/// What was believed before anything was noted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Before {
    value: f64,
    weight: f64,
}

impl Before {
    pub(super) const fn new(value: f64) -> Self {
        Self::weighed(value, 1.0)
    }

    pub(super) const fn weighed(value: f64, weight: f64) -> Self {
        Self { value, weight }
    }
}

impl Evidence {
    /// How many bakes it rests on.
    #[must_use]
    pub fn bakes(&self) -> u16 {
        let kept = self.entries.iter().filter(|entry| entry.kept);
        saturating_u16(kept.count())
    }

    /// Which bakes were left aside.
    pub fn left_aside(&self) -> impl Iterator<Item = usize> {
        let left = self.entries.iter().filter(|entry| !entry.kept);
        left.map(|entry| entry.bake)
    }

    /// The mean, as it came about.
    pub(super) fn working(&self, of: &'static str, value: f64) -> Vec<WorkingLine> {
        let mut sum = Terms::of(self.mean);
        for entry in self.entries.iter().filter(|entry| entry.kept) {
            let letter = format!("{}", sum.terms.len() + 1);
            let value = given(format!("x{letter}"), "noted", entry.value, self.unit);
            sum.push(value, (format!("w{letter}"), entry.weight));
        }
        if let Some(before) = self.before {
            let value = given("u", "usual", before.value, self.unit);
            sum.push(value, ("v".to_owned(), before.weight));
        }
        if let Some(least) = self.held_at {
            sum.least = Some(given("z", "least", least, self.unit));
        }
        vec![sum.line(given("y", of, value, self.unit))]
    }
}

/// The terms of a mean as its working shows them.
struct Terms {
    mean: MeanKind,
    terms: Vec<String>,
    weights: Vec<String>,
    with: Vec<Given>,
    least: Option<Given>,
}

impl Terms {
    const fn of(mean: MeanKind) -> Self {
        Self {
            mean,
            terms: Vec::new(),
            weights: Vec::new(),
            with: Vec::new(),
            least: None,
        }
    }

    fn push(&mut self, value: Given, (weight, weighs): (String, f64)) {
        let letter = &value.letter;
        self.terms.push(match self.mean {
            MeanKind::Plain => letter.to_string(),
            MeanKind::Geometric => format!("ln({letter})"),
            MeanKind::Weighted => format!("{weight} × {letter}"),
            MeanKind::WeightedGeometric => format!("{weight} × ln({letter})"),
        });
        self.with.push(value);
        if matches!(self.mean, MeanKind::Weighted | MeanKind::WeightedGeometric) {
            self.with.push(given(weight.clone(), "weight", weighs, ""));
            self.weights.push(weight);
        }
    }

    fn line(mut self, result: Given) -> WorkingLine {
        let sum = self.terms.join(" + ");
        let mean = if self.weights.is_empty() {
            format!("({sum}) / {}", self.terms.len())
        } else {
            format!("({sum}) / ({})", self.weights.join(" + "))
        };
        let mean = match self.least {
            Some(least) => {
                self.with.push(least);
                ["max(", &mean, ", z)"].concat()
            }
            None => mean,
        };
        let source = if self.weights.is_empty() {
            "mean of the entries that are not wild; Hampel 1974, J. Am. Stat. Assoc. 69:383-393"
        } else {
            "mean of the entries that are not wild, each by its precision, with what was usual \
             before; Particle Data Group, Review of Particle Physics, 5.2.2; Hampel 1974, J. Am. \
             Stat. Assoc. 69:383-393"
        };
        WorkingLine {
            rule: match self.mean {
                MeanKind::Plain | MeanKind::Weighted => mean.into(),
                MeanKind::Geometric | MeanKind::WeightedGeometric => format!("exp({mean})").into(),
            },
            with: self.with,
            result,
            source: source.into(),
        }
    }
}
