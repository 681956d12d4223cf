//! What a run follows from: formula, kitchen, settings, log, oven, what was measured.

use super::plan_times::PlanTimes;
use crate::engine::formula::Formula;
use crate::engine::learn::Learnt;
use crate::engine::quantity::Temperature;
use crate::engine::rise::RiseSettings;
use crate::results::heat::InOven;
use crate::sheet::{HeatSettings, Kitchen};

/// What a run follows from.
#[derive(Clone, Copy, Debug)]
pub struct RunInput<'i> {
    /// The formula, as large as it is made.
    pub formula: &'i Formula,
    /// The kitchen.
    pub kitchen: &'i Kitchen,
    /// The settings of heat.
    pub heat: &'i HeatSettings,
    /// The settings of the rises, with the places of the bake under way.
    pub rises: &'i RiseSettings,
    /// How many pieces the dough is divided into.
    pub pieces: u16,
    /// What the log has taught.
    pub learnt: &'i Learnt,
    /// The content of the oven; the run sets its temperature.
    pub in_oven: InOven,
    /// The temperature of the dough off the mixer, where it was measured.
    pub measured_dough: Option<Temperature>,
    /// The times of its plan; the wished ones where there is none yet.
    pub planned: Option<&'i PlanTimes>,
}

/// Where the temperature of the dough off the mixer is from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoughBasis {
    /// It was measured.
    Measured,
    /// It was worked out from what goes into the mixer.
    Predicted,
    /// It could not be worked out; the wished one is used instead.
    Wished,
}
