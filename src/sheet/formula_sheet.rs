//! A sheet: one formula as it is kept, with the batch that is wanted of it.

use std::num::NonZeroU16;

use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Bread, Formula};
use crate::engine::kitchen::HeatSettings;
use crate::engine::quantity::Temperature;
use crate::sheet::TinUse;

/// What is wanted of a formula this time.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// How much.
    pub wanted: BatchTarget,
    /// What is lost on the way.
    pub losses: Losses,
    /// The pieces that the formula, made once, is divided into.
    pub pieces: NonZeroU16,
    /// How warm the syrup is when it is used.
    pub syrup_at: Temperature,
    /// The tins it is made in, and how it lies in them; none where it is made without.
    pub tin: Option<TinUse>,
}

/// One formula as it is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// As the user calls it; at most [`Sheet::NAME_LENGTH`] characters.
    pub name: String,
    /// The kind of bread.
    pub bread: Bread,
    /// The formula.
    pub formula: Formula,
    /// What is wanted of it.
    pub batch: Batch,
    /// What it asks of heat.
    pub heat: HeatSettings,
    /// The user's own words; at most [`Sheet::NOTE_LENGTH`] characters.
    pub note: String,
}

impl Sheet {
    /// The most characters a name may have.
    pub const NAME_LENGTH: usize = 80;
    /// The most characters a note may have.
    pub const NOTE_LENGTH: usize = 2000;
    /// The most characters a part's name may have.
    pub const PART_NAME_LENGTH: usize = 60;
}
