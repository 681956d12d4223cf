//! The dough off the mixer, measured or worked out, held against what is wanted.

use crate::engine::quantity::Temperature;
use crate::results::run::{DoughBasis, Run};

/// How a dough stands to the temperature that is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoughFit {
    /// It is what is wanted, as far as can be told.
    Fits,
    /// It is colder.
    TooCold,
    /// It is warmer.
    TooWarm,
}

/// The dough as it comes off the mixer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoughOffMixer {
    /// Its temperature, as the rises take it.
    pub temperature: Temperature,
    /// Between what it lies; the same as that where it was measured.
    pub between: [Temperature; 2],
    /// What is wanted.
    pub wanted: Temperature,
    /// Whether it was measured at the bench.
    pub is_measured: bool,
}

/// What a dough may be off before it is told, K: rises hardly differ, and no thermometer in dough
/// tells less. Common practice.
const TELLS: f64 = 1.0;

impl DoughOffMixer {
    /// The dough of a run; `None` where the wished temperature stands in for it.
    #[must_use]
    pub fn of(run: &Run, wanted: Temperature) -> Option<Self> {
        let is_measured = match run.dough_basis {
            DoughBasis::Measured => true,
            DoughBasis::Predicted => false,
            DoughBasis::Wished => return None,
        };
        let predicted = run.mixing.as_ref().ok().filter(|_| !is_measured);
        let between = predicted.map_or([run.dough; 2], |mixing| {
            [mixing.dough.low, mixing.dough.high]
        });
        Some(Self {
            temperature: run.dough,
            between,
            wanted,
            is_measured,
        })
    }

    /// How it stands to what is wanted.
    #[must_use]
    pub fn fit(&self) -> DoughFit {
        let off = (self.temperature - self.wanted).kelvin();
        if off.abs() <= TELLS {
            DoughFit::Fits
        } else if off < 0.0 {
            DoughFit::TooCold
        } else {
            DoughFit::TooWarm
        }
    }
}
