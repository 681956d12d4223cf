//! Sheets made from another: a batch become the formula, an empty one, a copy.

use std::num::NonZeroU16;

use super::{Sheet, plain};
use crate::engine::batch::{BatchError, BatchTarget, Scaled};
use crate::engine::formula::{Formula, Part, PartKind};
use crate::engine::quantity::{Factor, Mass};

impl Sheet {
    /// The sheet whose formula, made once, is this batch. What is wanted stays; where it was so
    /// many times the formula, it is once.
    ///
    /// # Errors
    /// As [`Scaled::as_formula`].
    pub fn made_from(&self, scaled: &Scaled) -> Result<Self, BatchError> {
        let mut made = self.clone();
        made.formula = scaled.as_formula(&self.formula)?;
        made.batch.pieces = scaled.pieces.count.try_into().unwrap_or(NonZeroU16::MAX);
        if let BatchTarget::Times(times) = &mut made.batch.wanted {
            *times = Factor::ONE;
        }
        Ok(made)
    }

    /// A new sheet for the same kitchen habits: one final dough with nothing in it.
    #[must_use]
    pub fn emptied(&self) -> Self {
        let part = Part {
            kind: PartKind::Final,
            name: "Final dough".to_owned(),
            lines: Vec::new(),
            steam: Mass::ZERO,
            temperature: None,
        };
        let mut new = self.clone();
        new.name = "New formula".to_owned();
        new.note = String::new();
        new.formula = Formula { parts: vec![part] };
        new.batch.wanted = BatchTarget::default();
        new
    }

    /// The same sheet under another name, cut to what a name may have.
    #[must_use]
    pub fn copied(&self, name: &str) -> Self {
        let mut copy = self.clone();
        copy.name = plain::name(name, Self::NAME_LENGTH);
        copy
    }
}
