//! What batch targets are called.

use crate::engine::batch::TargetKind;
use crate::text::tr;

/// What a kind of target is called.
#[must_use]
pub fn target_kind(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Times => tr!("Multiply by"),
        TargetKind::Dough => tr!("Weight of dough"),
        TargetKind::Pieces => tr!("Pieces"),
        TargetKind::FlourOnHand => tr!("Flour on hand"),
        TargetKind::OnHand => tr!("One ingredient on hand"),
        TargetKind::Class => tr!("A class"),
    }
}
