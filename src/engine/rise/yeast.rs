//! Yeast: the kinds that are sold, against each other by their dry matter.

use crate::engine::quantity::{Mass, Share};

/// A kind of yeast as it is sold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum YeastKind {
    /// Compressed.
    Fresh,
    /// Dried grains that are stirred into water first.
    ActiveDry,
    /// Fine dried grains that go in with the flour.
    Instant,
}

impl YeastKind {
    /// Every kind, in the order lists are shown.
    pub const ALL: [Self; 3] = [Self::Fresh, Self::ActiveDry, Self::Instant];

    /// How much of it is dry matter.
    ///
    /// Source: AACC, *Approved Methods of Analysis*, method 89-01.01: about 30, 92 and 95 %.
    #[must_use]
    pub const fn dry_matter(self) -> Share {
        Share::in_hundred(match self {
            Self::Fresh => 30.0,
            Self::ActiveDry => 92.0,
            Self::Instant => 95.0,
        })
    }

    /// As much of `other` as has the same dry matter as `mass` of this.
    ///
    /// Bakers' rules of thumb give somewhat more active dry yeast (0.4 of the fresh), because some
    /// of its cells do not survive drying; by dry matter it is 0.33.
    #[must_use]
    pub fn as_other(self, mass: Mass, other: Self) -> Mass {
        let ratio = self.dry_matter().fraction() / other.dry_matter().fraction();
        Share::from_fraction(ratio).map_or(mass, |ratio| mass.component(ratio))
    }
}
