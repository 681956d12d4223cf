//! Ways of asking: the same batch asked for in another way.

use super::scale::Scaled;
use super::target::BatchTarget;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::Mass;

/// A way of asking for a batch.
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
    /// Every way there is.
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
    /// The way this is asked for.
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
    /// The same batch asked for in another way, so that changing the way changes nothing else.
    ///
    /// Where so many pieces or students cannot be named, or there is none of an ingredient, the
    /// nearest that can be asked for stands in.
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

    /// The same batch asked for by all there is of the ingredient of one line.
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

/// Where the heaviest line stands that is no flour: flour on hand is a way of its own.
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
