//! The heading of what the bench shows: where its top is, and the focus goes.

use crate::app::browser::focus;

/// The id of the heading.
pub const STEP_HEADING: &str = "bench-step";

/// Shows the top of the bench, and moves the focus there.
pub fn to_its_top() {
    focus::to_the_top();
    focus::move_to(STEP_HEADING);
}
