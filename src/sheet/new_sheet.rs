//! New sheets from another: an empty one with the same settings, and a copy under another name.

use super::{Sheet, plain};
use crate::engine::batch::BatchTarget;
use crate::engine::formula::{Formula, Part, PartKind};
use crate::engine::quantity::Mass;

impl Sheet {
    /// A sheet with the same settings and one empty final dough.
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

    /// The same sheet under another name, cut to [`Sheet::NAME_LENGTH`].
    #[must_use]
    pub fn copied(&self, name: &str) -> Self {
        let mut copy = self.clone();
        copy.name = plain::name(name, Self::NAME_LENGTH);
        copy
    }
}
