//! Two formulas side by side: their lines aligned, and every figure old, new and difference.

use super::{Figure, Figures, Form, Formula, LineAt, PartKind};
use crate::engine::quantity::{Mass, MassChange, Share, ShareChange};

/// One weight with its share of the flour, in the old formula and in the new.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sides {
    /// Its weight in the old formula; nothing where it was not there.
    pub old: Mass,
    /// Its weight in the new formula; nothing where it is not there.
    pub new: Mass,
    /// Its share of the old formula's flour, where that has flour.
    pub old_share: Option<Share>,
    /// Its share of the new formula's flour, where that has flour.
    pub new_share: Option<Share>,
}

impl Sides {
    /// By how much the weight changed.
    #[must_use]
    pub fn change(&self) -> MassChange {
        self.new - self.old
    }

    /// By how much the share changed, where both formulas have flour.
    #[must_use]
    pub fn share_change(&self) -> Option<ShareChange> {
        Some(self.new_share? - self.old_share?)
    }
}

/// One ingredient of one part, in the old formula and in the new.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LinePair {
    /// What becomes of its part.
    pub kind: PartKind,
    /// Where it stands in the old formula, if it does.
    pub old_at: Option<LineAt>,
    /// Where it stands in the new formula, if it does.
    pub new_at: Option<LineAt>,
    /// Its weights and shares.
    pub sides: Sides,
}

/// Two formulas side by side.
#[derive(Clone, Debug, PartialEq)]
pub struct Compared {
    /// Their lines, in the new formula's order; those that are gone follow in the old one's.
    pub lines: Vec<LinePair>,
    /// Every figure of [`Figure::ALL`], in that order.
    pub figures: [(Figure, Sides); Figure::COUNT],
}

impl Compared {
    /// Lays two formulas side by side, in the same form.
    ///
    /// The first paste stands beside the first paste, the second beside the second, and so on for
    /// each kind of part; in a pair of parts a line stands beside the first line of the same
    /// ingredient that has none yet.
    #[must_use]
    pub fn of(old: &Formula, new: &Formula, form: Form) -> Self {
        let (old_figures, new_figures) = (Figures::of(old, form), Figures::of(new, form));
        let sides = |old: Mass, new: Mass| Sides {
            old,
            new,
            old_share: old.share_of(old_figures.mass(Figure::Flour)),
            new_share: new.share_of(new_figures.mass(Figure::Flour)),
        };
        let lines = pairs(old, new)
            .into_iter()
            .map(|(kind, old_at, new_at)| LinePair {
                kind,
                old_at,
                new_at,
                sides: sides(mass_at(old, old_at, form), mass_at(new, new_at, form)),
            })
            .collect();
        let figures = Figure::ALL.map(|figure| {
            let (was, is) = (old_figures.mass(figure), new_figures.mass(figure));
            (figure, sides(was, is))
        });
        Self { lines, figures }
    }
}

fn mass_at(formula: &Formula, at: Option<LineAt>, form: Form) -> Mass {
    at.and_then(|at| formula.line(at))
        .map_or(Mass::ZERO, |line| form.mass(line))
}

type Pair = (PartKind, Option<LineAt>, Option<LineAt>);

fn pairs(old: &Formula, new: &Formula) -> Vec<Pair> {
    let mut unpaired = places(old);
    let mut pairs = Vec::new();
    for (new_at, kind, nth) in places(new) {
        let food = new.line(new_at).map(|line| &line.food);
        let beside = unpaired.iter().position(|(old_at, old_kind, old_nth)| {
            (*old_kind, *old_nth) == (kind, nth) && old.line(*old_at).map(|line| &line.food) == food
        });
        let old_at = beside.map(|place| unpaired.remove(place).0);
        pairs.push((kind, old_at, Some(new_at)));
    }
    pairs.extend(
        unpaired
            .into_iter()
            .map(|(at, kind, _)| (kind, Some(at), None)),
    );
    pairs
}

/// Where each line stands, and the how-manieth part of its kind that is.
fn places(formula: &Formula) -> Vec<(LineAt, PartKind, usize)> {
    let mut places = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        let before = formula.parts.iter().take(part);
        let nth = before.filter(|one| one.kind == own.kind).count();
        for (line, _) in own.lines.iter().enumerate() {
            places.push((LineAt { part, line }, own.kind, nth));
        }
    }
    places
}
