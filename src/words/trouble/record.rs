//! What is wrong with a file or with what was kept, in words.

use super::Trouble;
use super::told::number_outside;
use crate::sheet::record::{RecordError, RecordFault, Wanted};
use crate::words::manner::Manner;

impl Trouble for RecordError {
    fn sentence(&self, manner: Manner) -> String {
        let fault = self.fault.sentence(manner);
        if self.path.is_empty() {
            fault
        } else {
            format!("{fault} It stands at “{}”.", self.path)
        }
    }
}

/// What to do about a file that someone has changed.
const MEND: &str = "Mend that place in the file, or open an untouched copy.";

impl Trouble for RecordFault {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::TooLarge { bytes, most } => too_large(*bytes, *most, manner),
            Self::Empty => "There is nothing in the file. Choose another.".to_owned(),
            Self::Damaged { line, column } => format!(
                "The file was cut short or changed: it makes sense up to line {line}, column \
                 {column}, and no further. Open another copy of it."
            ),
            Self::NotOurs => "This file holds no formula of this app. Choose a file that was \
                              saved here."
                .to_owned(),
            Self::OtherKind { found } => format!(
                "This file holds something else than was asked for (“{found}”). Choose another, \
                 or open it where that belongs."
            ),
            Self::Newer { version } => format!(
                "This was saved by a newer release of the app (form {version}). It is left as it \
                 is. Bring the app up to date and open it again."
            ),
            Self::NoSuchVersion => {
                "The form number in this file was never used. Open an untouched copy.".to_owned()
            }
            Self::Missing => format!("A field is missing. {MEND}"),
            Self::UnknownField => format!("There is a field that is not known here. {MEND}"),
            Self::Twice => format!("The same field is there twice. {MEND}"),
            Self::WrongType { wanted } => format!("{} was expected. {MEND}", expected(*wanted)),
            Self::OutOfRange(out) => {
                format!("{} {MEND}", number_outside("The file", out, manner))
            }
            Self::Label(_) => format!("The label of this ingredient cannot be true. {MEND}"),
            Self::Division(_) => format!("No scale here has such a division. {MEND}"),
            Self::NoRoom => format!("The tube of this ring tin is as wide as the tin. {MEND}"),
            Self::NoYeast => format!("A dough that is known to rise has yeast in it. {MEND}"),
            Self::NotWhole { .. } => format!("A whole number was expected. {MEND}"),
            Self::TooLong { most } => {
                format!("A text is longer than the {most} characters it may have. Shorten it.")
            }
            Self::TooMany { most } => {
                format!("A list is longer than the {most} lines it may have. Shorten it.")
            }
            Self::UnknownIngredient { number, name } => format!(
                "The ingredient “{name}” (number {number}) is not known to this release. Bring \
                 the app up to date and open the file again."
            ),
            Self::UnknownWord { word } => {
                format!("The word “{word}” is not known here. {MEND}")
            }
            Self::BadId => format!("A formula’s key is not one that this app makes. {MEND}"),
        }
    }
}

fn too_large(bytes: usize, most: usize, manner: Manner) -> String {
    format!(
        "The file is too large: {}, where {} is the most. Nothing of it was opened. Choose a file \
         that was saved here.",
        super::told::megabytes(bytes, manner),
        super::told::megabytes(most, manner)
    )
}

const fn expected(wanted: Wanted) -> &'static str {
    match wanted {
        Wanted::Number => "A number",
        Wanted::Text => "A text",
        Wanted::List => "A list",
        Wanted::Truth => "Yes or no (true or false)",
        Wanted::Fields => "A group of fields",
    }
}
