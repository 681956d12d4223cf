//! The last target of each kind, so that choosing another kind loses nothing that was typed.

use std::collections::BTreeMap;

use crate::engine::batch::{BatchTarget, TargetKind};
use crate::sheet::Id;

/// Texts that cannot be read, by box, with the error.
type InvalidInputs = BTreeMap<String, (String, String)>;

/// The last target of each kind.
#[derive(Clone, Default)]
pub struct PreviousTargets {
    /// The formula they were typed for.
    formula: Option<Id>,
    targets: BTreeMap<TargetKind, BatchTarget>,
    invalid_inputs: BTreeMap<TargetKind, InvalidInputs>,
}

impl PreviousTargets {
    /// Forgets what was typed for another formula than this.
    pub fn keep_only(&mut self, formula: Option<Id>) {
        if self.formula != formula {
            *self = Self {
                formula,
                ..Self::default()
            };
        }
    }

    /// Stores a target.
    pub fn store(&mut self, target: BatchTarget) {
        self.targets.insert(target.kind(), target);
    }

    /// Stores the texts that cannot be read in the boxes of a kind.
    pub fn store_invalid_inputs(&mut self, kind: TargetKind, inputs: InvalidInputs) {
        self.invalid_inputs.insert(kind, inputs);
    }

    /// The last target of a kind.
    pub fn target(&self, kind: TargetKind) -> Option<BatchTarget> {
        self.targets.get(&kind).copied()
    }

    /// Takes out the texts that could not be read in the boxes of a kind.
    pub fn take_invalid_inputs(&mut self, kind: TargetKind) -> InvalidInputs {
        self.invalid_inputs.remove(&kind).unwrap_or_default()
    }
}
