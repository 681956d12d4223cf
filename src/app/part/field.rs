//! Field: the description of one number box, and the data that the number belongs to.

use crate::sheet::Kitchen;
use crate::text::{ErrorText, FormatOptions, read::ReadError, tr};

/// A number of `T`: its label and unit, how it is written for a box, how a typed text is stored.
#[derive(Debug)]
pub struct Field<T: 'static> {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for, marked by `tr_noop!`.
    pub label: &'static str,
    /// Its unit; empty for a count.
    pub unit: fn(FormatOptions) -> &'static str,
    /// Writes the number for its box: the kitchen's where `T` leaves it to the kitchen, nothing
    /// where there is none.
    pub get: fn(&T, &Kitchen, FormatOptions) -> String,
    /// Reads a text and stores the number in `T`.
    pub set: fn(&mut T, &str, FormatOptions) -> Result<(), ReadError>,
}

impl<T> Clone for Field<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Field<T> {}

/// Data with fields: where it is stored, and how it is changed.
pub trait FieldData: Sized + 'static {
    /// What the data is reached through, such as the state of the page.
    type Source: Copy + Send + Sync + 'static;

    /// Why a changed `Self` is not accepted.
    type Error: ErrorText;

    /// The source, looked up where the box is drawn.
    fn source() -> Self::Source;

    /// Reads the current data and follows it; empty where there is none.
    fn read(source: Self::Source, get: &dyn Fn(&Self) -> String) -> String;

    /// Reads the saved data while a trial is on, so that a box can show what the trial changed.
    fn read_saved(_: Self::Source, _: &dyn Fn(&Self) -> String) -> Option<String> {
        None
    }

    /// Changes the data, as typed into the box `from`.
    ///
    /// # Errors
    /// [`FieldError::Read`] from `set`, [`FieldError::Rejected`] when the changed data is
    /// impossible; then nothing is changed.
    fn change(
        source: Self::Source,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<Self::Error>>;
}

/// Why a typed text was not stored.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FieldError<E> {
    /// The text could not be read.
    Read(ReadError),
    /// The data would be impossible with it.
    Rejected(E),
}

impl<E> From<ReadError> for FieldError<E> {
    fn from(error: ReadError) -> Self {
        Self::Read(error)
    }
}

impl<E: ErrorText> ErrorText for FieldError<E> {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::Read(error) => error.sentence(options),
            Self::Rejected(error) => error.sentence(options),
        }
    }
}

/// The unit of weights on this device.
pub fn of_mass(options: FormatOptions) -> &'static str {
    options.units.mass.symbol()
}

/// The unit of temperatures on this device.
pub fn degrees(options: FormatOptions) -> &'static str {
    options.units.temperature.symbol()
}

/// The unit of times.
pub fn minutes(_: FormatOptions) -> &'static str {
    tr!("min")
}

/// No unit: a count.
pub const fn no_unit(_: FormatOptions) -> &'static str {
    ""
}
