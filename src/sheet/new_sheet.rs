//! A new sheet from another: an empty one with the same settings.

use super::Sheet;
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
}
