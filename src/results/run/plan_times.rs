//! How long a plan has each paste and preferment on the bench, in the fridge and standing out.

use crate::engine::quantity::Minutes;

/// How long a paste or preferment is on the bench and in the fridge by a plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartTimes {
    /// The place of its part in the formula.
    pub part: usize,
    /// How long it is out of the fridge before it goes in.
    pub standing: Minutes,
    /// How long it is in the fridge.
    pub chilling: Minutes,
}

/// The times by which a plan has what a dough is mixed from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PlanTimes {
    /// Each paste and preferment that the plan has.
    pub parts: Vec<PartTimes>,
    /// How long they stand out before they are mixed in; `None` where that is as wished.
    pub standing_out: Option<Minutes>,
}

impl PlanTimes {
    /// The times of one part; `None` where the plan does not have it.
    #[must_use]
    pub fn part(&self, part: usize) -> Option<&PartTimes> {
        self.parts.iter().find(|one| one.part == part)
    }
}
