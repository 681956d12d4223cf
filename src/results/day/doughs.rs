//! The dough of the day and that of the reference rises.

use crate::engine::rise::YeastActivity;

/// The dough of the day and the dough of the reference rises.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doughs {
    /// The dough as it is weighed now.
    pub now: YeastActivity,
    /// The dough of the reference rises.
    pub reference: YeastActivity,
}
