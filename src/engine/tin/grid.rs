//! Grid: how many rows of how many pieces.

use std::num::NonZeroU16;

use super::shape::Across;

/// The most pieces that are laid out and drawn.
pub const MOST_PIECES: u16 = 200;

/// Rows along the width, columns along the length: 2 × 4 is two rows of four.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Grid {
    /// Rows.
    pub rows: NonZeroU16,
    /// Pieces in a full row.
    pub columns: NonZeroU16,
}

impl Grid {
    /// So many rows for so many pieces; the last row may be shorter.
    #[must_use]
    pub fn in_rows(pieces: NonZeroU16, rows: NonZeroU16) -> Self {
        let rows = rows.min(pieces);
        let columns = NonZeroU16::new(pieces.get().div_ceil(rows.get()));
        Self {
            rows,
            columns: columns.unwrap_or(NonZeroU16::MIN),
        }
    }

    /// Places that stay empty.
    #[must_use]
    pub fn empty(self, pieces: NonZeroU16) -> u32 {
        let places = u32::from(self.rows.get()) * u32::from(self.columns.get());
        places.saturating_sub(u32::from(pieces.get()))
    }
}

/// Every grid that holds the pieces with no row to spare, fewest rows first.
pub fn grids(pieces: NonZeroU16) -> impl Iterator<Item = Grid> {
    (1..=pieces.get().min(MOST_PIECES))
        .filter_map(NonZeroU16::new)
        .map(move |rows| Grid::in_rows(pieces, rows))
        .filter(move |grid| grid.empty(pieces) < u32::from(grid.columns.get()))
}

/// The grid whose places are most nearly square; an empty place counts as a third longer.
pub(super) fn best(pieces: NonZeroU16, across: Across) -> Grid {
    let uneven = |grid: &Grid| {
        let long = across.long.metres() / f64::from(grid.columns.get());
        let wide = across.wide.metres() / f64::from(grid.rows.get());
        libm::log(long / wide).abs() + 0.3 * f64::from(grid.empty(pieces))
    };
    grids(pieces)
        .min_by(|one, other| uneven(one).total_cmp(&uneven(other)))
        .unwrap_or(Grid {
            rows: NonZeroU16::MIN,
            columns: pieces,
        })
}
