//! A bake that was removed from the log, kept as long as the page is open.

use crate::sheet::day::Bake;

/// A bake that was removed from the log, with its photo.
#[derive(Clone, Debug, PartialEq)]
pub struct RemovedBake {
    /// The bake.
    pub bake: Bake,
    /// Its photo.
    pub photo: Option<String>,
}
