//! A formula sheet: one formula as stored, with its batch, heat settings and note.

use std::num::NonZeroU16;

use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Bread, Formula};
use crate::engine::quantity::Temperature;
use crate::sheet::HeatSettings;
use crate::sheet::TinUse;

/// The batch of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// The target.
    pub wanted: BatchTarget,
    /// Losses.
    pub losses: Losses,
    /// The number of pieces of the formula made once.
    pub pieces: NonZeroU16,
    /// Temperature of the syrup at use.
    pub syrup_at: Temperature,
    /// The tins and the layout of the dough in them; `None` without a tin.
    pub tin: Option<TinUse>,
}

/// One formula as stored.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// The user's name for it; at most [`Sheet::NAME_LENGTH`] characters.
    pub name: String,
    /// The kind of bread.
    pub bread: Bread,
    /// The formula.
    pub formula: Formula,
    /// The batch.
    pub batch: Batch,
    /// Heat settings.
    pub heat: HeatSettings,
    /// The user's note; at most [`Sheet::NOTE_LENGTH`] characters.
    pub note: String,
}

impl Sheet {
    /// Most characters of a name.
    pub const NAME_LENGTH: usize = 80;
    /// Most characters of a note.
    pub const NOTE_LENGTH: usize = 2000;
    /// Most characters of a part's name.
    pub const PART_NAME_LENGTH: usize = 60;

    /// This sheet with another formula; the replaced one is not copied.
    #[must_use]
    pub fn with_formula(&self, formula: Formula) -> Self {
        Self {
            name: self.name.clone(),
            bread: self.bread,
            formula,
            batch: self.batch.clone(),
            heat: self.heat.clone(),
            note: self.note.clone(),
        }
    }
}
