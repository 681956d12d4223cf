//! What a bake noted, as far as something can be learnt from it.

use crate::engine::quantity::{Factor, Mass, Minutes, Share, Temperature, WarmingRate};

/// How long something took, beside what was expected before anything was learnt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredDuration {
    /// What the formula's own statement gave for that day.
    pub expected: Minutes,
    /// What it really took.
    pub minutes: Minutes,
}

/// What something weighed before and after.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighedLoss {
    /// Before.
    pub before: Mass,
    /// After.
    pub after: Mass,
}

/// What a paste lost as steam, beside what was expected before anything was learnt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredSteam {
    /// What the printed figures gave for that paste.
    pub expected: Mass,
    /// What was stirred in, and what it weighed afterwards.
    pub weighed: WeighedLoss,
}

/// How warm a paste or preferment was at a known time, beside what was expected before anything was
/// learnt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredCooling {
    /// What the printed figures gave for that time.
    pub expected: Temperature,
    /// What the thermometer showed.
    pub found: Temperature,
    /// How many times as much heat must pass for that.
    pub factor: Factor,
    /// How far that moves with a thermometer that is 1 K out, up or down.
    pub within: Share,
}

/// What a bake noted. Nothing of it need be there.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Observation {
    /// How warm the dough would have been after mixing without friction, by that day's balance.
    pub unmixed: Option<Temperature>,
    /// The minutes of friction that were left in the dough, by that day's balance; all that were
    /// mixed where this is not known.
    pub warmed_for: Option<Minutes>,
    /// How warm it really was.
    pub dough: Option<Temperature>,
    /// How long it was mixed.
    pub mixing: Option<Minutes>,
    /// The dough: what went in, and what lay on the bench to be divided.
    pub bowl: Option<WeighedLoss>,
    /// The bread: the dough that went into the oven, and the bread that came out.
    pub oven_loss: Option<WeighedLoss>,
    /// The rise in one piece.
    pub bulk: Option<MeasuredDuration>,
    /// The rise in the tin.
    pub proof: Option<MeasuredDuration>,
    /// The bake, until the middle was hot enough.
    pub bake: Option<MeasuredDuration>,
    /// The steam a paste lost.
    pub steam: Option<MeasuredSteam>,
    /// How a paste or preferment cooled.
    pub cooling: Option<MeasuredCooling>,
}

impl Observation {
    /// How fast friction warmed the dough; `None` where it was not noted or makes no sense.
    #[must_use]
    pub fn friction(&self) -> Option<WarmingRate> {
        let (rise, minutes) = self.warmed()?;
        (rise > 0.0)
            .then(|| WarmingRate::from_kelvin_per_minute(rise / minutes).ok())
            .flatten()
    }

    /// What mixing added, K, below zero where the thermometer was out by more than that, and the
    /// minutes of friction it is from.
    pub(super) fn warmed(&self) -> Option<(f64, f64)> {
        let rise = self.dough? - self.unmixed?;
        let minutes = self.warmed_for.or(self.mixing)?.minutes();
        (minutes > 0.0).then(|| (rise.kelvin(), minutes))
    }
}

impl MeasuredSteam {
    /// What it really lost, g; below zero where the scale was out by more than that.
    pub(super) fn lost_grams(&self) -> f64 {
        self.weighed.before.grams() - self.weighed.after.grams()
    }
}

impl WeighedLoss {
    /// What was lost, as a share of what there was; none where it gained.
    #[must_use]
    pub fn lost(&self) -> Option<Share> {
        let lost = self.before.less(self.after).share_of(self.before);
        lost.filter(|_| self.after <= self.before)
    }
}

impl MeasuredDuration {
    /// How many times as long as expected.
    pub(super) fn times(&self) -> Option<f64> {
        let (took, expected) = (self.minutes.minutes(), self.expected.minutes());
        (took > 0.0 && expected > 0.0).then(|| took / expected)
    }
}
