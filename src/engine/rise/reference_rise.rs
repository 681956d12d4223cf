//! `ReferenceRise`: a rise that is known, from which all others are scaled.

use crate::engine::quantity::{Minutes, Share, Temperature};

/// What a known rise rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReferenceBasis {
    /// A usual dough, to which this one is compared.
    Usual,
    /// What the formula says of itself.
    Stated,
    /// So many bakes of the log.
    Bakes(u16),
}

/// A rise that is known: so long at such a temperature of the dough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReferenceRise {
    /// How long.
    pub time: Minutes,
    /// The mean temperature of the dough.
    pub at: Temperature,
    /// What it rests on.
    pub basis: ReferenceBasis,
    /// How far such rises scatter: nine of ten lie between the time over and times one and this.
    pub spread: Share,
}

impl ReferenceRise {
    /// How far rises scatter where no bake has been noted yet. Common practice.
    pub const SPREAD: Share = Share::in_hundred(20.0);

    /// How far printed recipes of like doughs scatter: a quarter to a half. Common practice.
    pub const USUAL_SPREAD: Share = Share::in_hundred(35.0);

    /// A rise of a usual dough, to which this one is compared.
    #[must_use]
    pub const fn usual(time: Minutes, at: Temperature) -> Self {
        Self {
            time,
            at,
            basis: ReferenceBasis::Usual,
            spread: Self::USUAL_SPREAD,
        }
    }

    /// What a formula says of itself.
    #[must_use]
    pub const fn stated(time: Minutes, at: Temperature) -> Self {
        Self {
            time,
            at,
            basis: ReferenceBasis::Stated,
            spread: Self::SPREAD,
        }
    }
}
