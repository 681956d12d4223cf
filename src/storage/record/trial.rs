//! A trial as a record: the formula it began from, and the formula as it is tried.

use serde::{Deserialize, Serialize};

use crate::sheet::{Sheet, Trial};

use super::Record;
use super::read::described;

/// The stored part of a trial: without its steps.
#[derive(Clone, Debug, Deserialize, PartialEq, Serialize)]
#[serde(remote = "Self", deny_unknown_fields)]
pub struct SavedTrial {
    /// The formula it began from.
    pub base: Sheet,
    /// The formula as it is tried.
    pub tried: Sheet,
}

impl SavedTrial {
    /// The stored part of `trial`.
    #[must_use]
    pub fn of(trial: &Trial) -> Self {
        Self {
            base: trial.base.clone(),
            tried: trial.steps.now().clone(),
        }
    }
}

described! { SavedTrial: SavedTrial; }

impl Record for SavedTrial {
    const KIND: &'static str = "trial";
}
