//! Wishes: what a formula says of its own rises.

use super::reference_rise::ReferenceRise;
use super::yeast_activity::YeastActivity;
use crate::engine::quantity::{Factor, Minutes, Temperature};

/// So long at such a temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stated {
    /// How long.
    pub time: Minutes,
    /// How warm the dough is meanwhile.
    pub at: Temperature,
}

/// What a formula says of its own rises.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiseSettings {
    /// The dough in one piece.
    pub bulk: Stated,
    /// The pieces between rounding and shaping.
    pub rest: Minutes,
    /// The shaped pieces in the tin.
    pub proof: Stated,
    /// What was in the dough of those rises; `None` for a usual dough,
    /// [`YeastActivity::usual`].
    pub dough: Option<YeastActivity>,
    /// How warm it is where the dough rises; `None` leaves it in the room.
    pub bulk_place: Option<Temperature>,
    /// How warm it is where they proof; `None` leaves them in the room.
    pub proof_place: Option<Temperature>,
    /// How long a preferment stands before it goes into the fridge.
    pub bench: Minutes,
    /// How long it then stays there.
    pub fridge: Minutes,
    /// How many times its volume the dough comes to.
    pub volume: Factor,
}

impl Default for RiseSettings {
    /// An hour at 26 °C, a quarter of an hour's rest, an hour at 28 °C; a preferment stands for 40
    /// minutes and spends the night cold. Common practice for soft enriched doughs.
    fn default() -> Self {
        Self {
            bulk: Stated {
                time: Minutes::known(60.0),
                at: Temperature::known(26.0),
            },
            rest: Minutes::known(15.0),
            proof: Stated {
                time: Minutes::known(60.0),
                at: Temperature::known(28.0),
            },
            dough: None,
            bulk_place: None,
            proof_place: None,
            bench: Minutes::known(40.0),
            fridge: Minutes::known(720.0),
            volume: Factor::TWO,
        }
    }
}

impl RiseSettings {
    /// Whether one of the two known rises is another than in `before`.
    #[must_use]
    pub fn states_other_rises_than(&self, before: &Self) -> bool {
        self.bulk != before.bulk || self.proof != before.proof
    }
}

impl Stated {
    /// The reference rise that it states.
    #[must_use]
    pub const fn reference(self) -> ReferenceRise {
        ReferenceRise::stated(self.time, self.at)
    }
}
