//! `PiecePosition`: where a piece lies in its tin.

use crate::engine::quantity::Share;

/// Where a piece lies: its middle, as a share of the outline's length and width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PiecePosition {
    /// Along the length.
    pub along: Share,
    /// Along the width.
    pub across: Share,
}

/// A spot from fractions of one.
pub(super) fn spot(along: f64, across: f64) -> PiecePosition {
    let share = |component: f64| Share::from_fraction(component).unwrap_or(Share::NONE);
    PiecePosition {
        along: share(along),
        across: share(across),
    }
}
