//! What something learnt rests on: which bakes, which were left aside, how they scatter.

use crate::engine::numerics::saturating_u16;
use crate::engine::quantity::Share;
use crate::engine::working::{Line, given};

/// One bake's entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// Which bake of the list.
    pub bake: usize,
    /// Whether it was kept; an outlier is left aside.
    pub kept: bool,
    value: f64,
}

impl Entry {
    pub(super) const fn new(bake: usize, kept: bool, value: f64) -> Self {
        Self { bake, kept, value }
    }
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
    /// Whether entries are factors, whose mean is the geometric one.
    pub(super) by_factor: bool,
}

/// What was believed before anything was noted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Before {
    value: f64,
}

impl Before {
    pub(super) const fn new(value: f64) -> Self {
        Self { value }
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
    pub(super) fn working(&self, of: &'static str, value: f64) -> Vec<Line> {
        let (mut rule, mut with) = (Vec::new(), Vec::new());
        let term = |letter: &str| {
            if self.by_factor {
                format!("ln({letter})")
            } else {
                letter.to_owned()
            }
        };
        for entry in self.entries.iter().filter(|entry| entry.kept) {
            let letter = format!("x{}", rule.len() + 1);
            rule.push(term(&letter));
            with.push(given(letter, "noted", entry.value, self.unit));
        }
        if let Some(before) = self.before {
            rule.push(term("u"));
            with.push(given("u", "usual", before.value, self.unit));
        }
        let mean = format!("({}) / {}", rule.join(" + "), rule.len());
        vec![Line {
            rule: if self.by_factor {
                format!("exp({mean})").into()
            } else {
                mean.into()
            },
            with,
            gives: given("y", of, value, self.unit),
            source: "mean of the entries that are not wild; Hampel 1974, J. Am. Stat. Assoc. \
                     69:383-393"
                .into(),
        }]
    }
}
