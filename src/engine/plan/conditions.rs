//! The conditions of a plan: sleep, the present, finished steps, hands.

use crate::engine::quantity::Instant;

/// From one point in time to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// From then.
    pub from: Instant,
    /// Until then.
    pub until: Instant,
}

/// When a step really was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Done {
    /// Which step of the plan's list.
    pub step: usize,
    /// When it began.
    pub began: Instant,
    /// When it ended; `None` while it is under way.
    pub ended: Option<Instant>,
}

/// What surrounds a plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Around {
    /// When the baker sleeps: no work then, but dough may wait.
    pub nights: Vec<Span>,
    /// Now: what is not begun cannot begin before; `None` for a plan that is only thought of.
    pub now: Option<Instant>,
    /// What has really been done.
    pub done: Vec<Done>,
    /// Whether there is but one pair of hands.
    pub one_pair_of_hands: bool,
}
