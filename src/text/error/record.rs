//! Messages for errors of files and records.

use super::ErrorText;
use super::reported::number_outside;
use crate::storage::record::{Expected, RecordError, RecordFault};
use crate::text::{format_options::FormatOptions, tr};

impl ErrorText for RecordError {
    fn sentence(&self, options: FormatOptions) -> String {
        let fault = self.fault.sentence(options);
        if self.path.is_empty() {
            fault
        } else {
            tr!(
                "{fault} It stands at “{value}”.",
                fault = fault,
                value = self.path
            )
        }
    }
}

/// What to do about a file that someone has changed.
fn mend() -> &'static str {
    tr!("Mend that place in the file, or open an untouched copy.")
}

impl ErrorText for RecordFault {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::TooLarge { bytes, most } => too_large(*bytes, *most, options),
            Self::Empty => tr!("There is nothing in the file. Choose another.").to_owned(),
            Self::Damaged { line, column } => tr!(
                "The file was cut short or changed: it makes sense up to line {line}, column \
                 {column}, and no further. Open another copy of it.",
                line = line,
                column = column
            ),
            Self::NotOurs => tr!(
                "This file holds no formula of this app. Choose a file that was \
                              saved here."
            )
            .to_owned(),
            Self::OtherKind { found } => tr!(
                "This file holds something else than was asked for (“{found}”). Choose another, \
                 or open it where that belongs.",
                found = found
            ),
            Self::Newer { version } => tr!(
                "This was saved by a newer release of the app (form {version}). It is left as it \
                 is. Bring the app up to date and open it again.",
                version = version
            ),
            Self::NoSuchVersion => {
                tr!("The form number in this file was never used. Open an untouched copy.")
                    .to_owned()
            }
            Self::Missing => tr!("A field is missing. {mend}", mend = mend()),
            Self::UnknownField => tr!(
                "There is a field that is not known here. {mend}",
                mend = mend()
            ),
            Self::Twice => tr!("The same field is there twice. {mend}", mend = mend()),
            Self::WrongType { wanted } => {
                tr!(
                    "{value} was expected. {mend}",
                    value = expected(*wanted),
                    mend = mend()
                )
            }
            Self::OutOfRange(out) => {
                format!(
                    "{} {}",
                    number_outside(tr!("The file"), out, options),
                    mend()
                )
            }
            Self::Label(_) => tr!(
                "The label of this ingredient cannot be true. {mend}",
                mend = mend()
            ),
            Self::Division(_) => tr!("No scale here has such a division. {mend}", mend = mend()),
            Self::NoRoom => tr!(
                "The tube of this ring tin is as wide as the tin. {mend}",
                mend = mend()
            ),
            Self::NoYeast => tr!(
                "A dough that is known to rise has yeast in it. {mend}",
                mend = mend()
            ),
            Self::NotAPhoto => tr!("This is no small picture, so it was left out.").to_owned(),
            Self::NotWhole { .. } => tr!("A whole number was expected. {mend}", mend = mend()),
            Self::TooLong { most } => {
                tr!(
                    "A text is longer than the {most} characters it may have. Shorten it.",
                    most = most
                )
            }
            Self::TooMany { most } => {
                tr!(
                    "A list is longer than the {most} lines it may have. Shorten it.",
                    most = most
                )
            }
            Self::UnknownIngredient { number, name } => tr!(
                "The ingredient “{name}” (number {number}) is not known to this release. Bring \
                 the app up to date and open the file again.",
                name = name,
                number = number
            ),
            Self::UnknownWord { word } => {
                tr!(
                    "The word “{word}” is not known here. {mend}",
                    word = word,
                    mend = mend()
                )
            }
            Self::BadId => tr!(
                "A formula’s key is not one that this app makes. {mend}",
                mend = mend()
            ),
        }
    }
}

fn too_large(bytes: usize, most: usize, options: FormatOptions) -> String {
    tr!(
        "The file is too large: {first}, where {second} is the most. Nothing of it was opened. Choose a file \
         that was saved here.",
        first = super::reported::megabytes(bytes, options),
        second = super::reported::megabytes(most, options)
    )
}

fn expected(wanted: Expected) -> &'static str {
    match wanted {
        Expected::Number => tr!("A number"),
        Expected::Text => tr!("A text"),
        Expected::List => tr!("A list"),
        Expected::Truth => tr!("Yes or no (true or false)"),
        Expected::Fields => tr!("A group of fields"),
    }
}
