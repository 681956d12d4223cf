//! Kinds of batch target, and the target of another kind for the same batch.

use super::scale::Scaled;
use super::target::BatchTarget;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::Mass;

/// A kind of batch target.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TargetKind {
    /// So many times the formula.
    #[default]
    Times,
    /// So much dough.
    Dough,
    /// So many pieces of such a weight.
    Pieces,
    /// All of the flour there is.
    FlourOnHand,
    /// All there is of one ingredient.
    OnHand,
    /// So many students with so many loaves.
    Class,
}

impl TargetKind {
    /// Every kind, in the order lists are shown.
    pub const ALL: [Self; 6] = [
        Self::Times,
        Self::Dough,
        Self::Pieces,
        Self::FlourOnHand,
        Self::OnHand,
        Self::Class,
    ];

    /// Whether the target itself says how many pieces there are.
    #[must_use]
    pub const fn counts_pieces(self) -> bool {
        matches!(self, Self::Pieces | Self::Class)
    }
}

impl BatchTarget {
    /// Its kind.
    #[must_use]
    pub const fn kind(&self) -> TargetKind {
        match self {
            Self::Times(_) => TargetKind::Times,
            Self::Dough(_) => TargetKind::Dough,
            Self::Pieces { .. } => TargetKind::Pieces,
            Self::FlourOnHand(_) => TargetKind::FlourOnHand,
            Self::OnHand { .. } => TargetKind::OnHand,
            Self::Class { .. } => TargetKind::Class,
        }
    }
}

impl Scaled {
    /// The target of a kind that asks for this batch.
    ///
    /// Counts are cut to 65 535; without an ingredient that weighs something, the first line is
    /// named.
    #[must_use]
    pub fn target_of_kind(&self, kind: TargetKind) -> BatchTarget {
        match kind {
            TargetKind::Times => BatchTarget::Times(self.factor),
            TargetKind::Dough => BatchTarget::Dough(self.needed),
            TargetKind::Pieces => BatchTarget::Pieces {
                count: self.count(),
                each: self.pieces.each,
            },
            TargetKind::FlourOnHand => BatchTarget::FlourOnHand(self.formula.flour()),
            TargetKind::OnHand => self.target_by_ingredient(heaviest(&self.formula)),
            TargetKind::Class => BatchTarget::Class {
                students: self.count(),
                loaves: std::num::NonZeroU16::MIN,
                loaf: self.pieces.each,
            },
        }
    }

    /// The target that asks for this batch by all there is of the ingredient of a line.
    #[must_use]
    pub fn target_by_ingredient(&self, at: LineAt) -> BatchTarget {
        let food = self.formula.line(at).map(|line| &line.food);
        let lines = self.formula.parts.iter().flat_map(|part| &part.lines);
        let mass: Mass = lines
            .filter(|line| Some(&line.food) == food)
            .map(|line| line.mass)
            .sum();
        BatchTarget::OnHand { at, mass }
    }

    fn count(&self) -> std::num::NonZeroU16 {
        self.pieces
            .count
            .try_into()
            .unwrap_or(std::num::NonZeroU16::MAX)
    }
}

/// The heaviest line that is no flour: flour on hand is a kind of its own.
fn heaviest(formula: &Formula) -> LineAt {
    let mut found = (LineAt { part: 0, line: 0 }, Mass::ZERO);
    for (part, own) in formula.parts.iter().enumerate() {
        for (line, one) in own.lines.iter().enumerate() {
            if one.mass > found.1 && !one.is_flour() {
                found = (LineAt { part, line }, one.mass);
            }
        }
    }
    found.0
}
