//! Records: stored data, as JSON with its kind and version, with a unit in the name
//! of every number (`mass_g`, `at_c`; a `…_share` is a fraction of one).
//!
//! A record struct describes the keys, by serde's derives; leaves are read through the same
//! constructors as typing, and a failure names the way to it.

mod bake;
mod batch;
mod bench;
mod class;
mod day;
mod each;
mod edit;
mod error;
mod file;
mod formula;
mod head;
mod heat;
mod kitchen;
mod log;
mod log_file;
mod mixer;
mod number;
mod observation;
mod own;
mod pantry;
mod read;
mod refused;
mod rises;
mod settings;
mod sheet;
mod shelf;
mod text;
mod tin;
mod trial;
mod upgrade;
mod write;

use serde::Serialize;

pub use error::{Expected, RecordError, RecordFault};
pub use file::{FormulaFile, FormulaInFile};
pub use log_file::{LogFile, Photo};
pub use tin::SavedTins;
pub use trial::SavedTrial;
pub use upgrade::Upgrade;

pub(super) use write::json;

use read::InBraces;

/// The most bytes one record may have.
pub const RECORD_LIMIT: usize = 5_000_000;

/// The most bytes a file of formulas may have: all that a browser's storage can hold.
pub const FILE_LIMIT: usize = 12_000_000;

/// Data that is stored or sent as a text of its own.
#[allow(private_bounds, reason = "how fields are taken is this module's own")]
pub trait Record: for<'t> InBraces<'t> + Serialize {
    /// Its word, which is first in its text.
    const KIND: &'static str;

    /// The version this release writes.
    const VERSION: u32 = 1;

    /// The most bytes that are read.
    const LIMIT: usize = RECORD_LIMIT;

    /// From each earlier version to the next, beginning with version 1. A change of form adds one
    /// here, and a frozen sample to the tests.
    const UPGRADES: &'static [Upgrade] = &[];

    /// Reads it from JSON.
    ///
    /// # Errors
    /// [`RecordError`] with the way to what is wrong.
    fn read(text: &str) -> Result<Self, RecordError> {
        let head = head::head(text, Self::LIMIT)?;
        upgrade::known(&head, Self::VERSION)?;
        upgrade::is_a(&head, Self::KIND)?;
        upgrade::read(&head, Self::UPGRADES)
    }

    /// Writes it down as JSON.
    fn write(&self) -> String {
        write::record(Self::KIND, Self::VERSION, self)
    }
}

/// Whether the stored text is of a newer release than the record to be written in its place: that is
/// never overwritten.
///
/// Reads only the start of the texts, so that it is cheap enough before each save; every release
/// writes kind and version first.
#[must_use]
pub fn is_newer(stored: &str, written: &str) -> bool {
    let written = upgrade::version_of(written);
    // A text without a version is no record, and takes the place of anything.
    written > 0 && upgrade::version_of(stored) > written
}
