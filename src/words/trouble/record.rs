//! What is wrong with a file or with what was kept, in words.

use super::Trouble;
use super::told::number_outside;
use crate::sheet::record::{RecordError, RecordFault, Wanted};
use crate::words::{manner::Manner, say};

impl Trouble for RecordError {
    fn sentence(&self, manner: Manner) -> String {
        let fault = self.fault.sentence(manner);
        if self.path.is_empty() {
            fault
        } else {
            say!("{fault} It stands at “{}”.", fault, self.path)
        }
    }
}

/// What to do about a file that someone has changed.
fn mend() -> &'static str {
    say!("Mend that place in the file, or open an untouched copy.")
}

impl Trouble for RecordFault {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::TooLarge { bytes, most } => too_large(*bytes, *most, manner),
            Self::Empty => say!("There is nothing in the file. Choose another.").to_owned(),
            Self::Damaged { line, column } => say!(
                "The file was cut short or changed: it makes sense up to line {line}, column \
                 {column}, and no further. Open another copy of it.",
                line,
                column
            ),
            Self::NotOurs => say!(
                "This file holds no formula of this app. Choose a file that was \
                              saved here."
            )
            .to_owned(),
            Self::OtherKind { found } => say!(
                "This file holds something else than was asked for (“{found}”). Choose another, \
                 or open it where that belongs.",
                found
            ),
            Self::Newer { version } => say!(
                "This was saved by a newer release of the app (form {version}). It is left as it \
                 is. Bring the app up to date and open it again.",
                version
            ),
            Self::NoSuchVersion => {
                say!("The form number in this file was never used. Open an untouched copy.")
                    .to_owned()
            }
            Self::Missing => say!("A field is missing. {mend}", mend()),
            Self::UnknownField => say!("There is a field that is not known here. {mend}", mend()),
            Self::Twice => say!("The same field is there twice. {mend}", mend()),
            Self::WrongType { wanted } => {
                say!("{} was expected. {mend}", expected(*wanted), mend())
            }
            Self::OutOfRange(out) => {
                format!(
                    "{} {}",
                    number_outside(say!("The file"), out, manner),
                    mend()
                )
            }
            Self::Label(_) => say!(
                "The label of this ingredient cannot be true. {mend}",
                mend()
            ),
            Self::Division(_) => say!("No scale here has such a division. {mend}", mend()),
            Self::NoRoom => say!(
                "The tube of this ring tin is as wide as the tin. {mend}",
                mend()
            ),
            Self::NoYeast => say!(
                "A dough that is known to rise has yeast in it. {mend}",
                mend()
            ),
            Self::NotAPhoto => say!("This is no small picture, so it was left out.").to_owned(),
            Self::NotWhole { .. } => say!("A whole number was expected. {mend}", mend()),
            Self::TooLong { most } => {
                say!(
                    "A text is longer than the {most} characters it may have. Shorten it.",
                    most
                )
            }
            Self::TooMany { most } => {
                say!(
                    "A list is longer than the {most} lines it may have. Shorten it.",
                    most
                )
            }
            Self::UnknownIngredient { number, name } => say!(
                "The ingredient “{name}” (number {number}) is not known to this release. Bring \
                 the app up to date and open the file again.",
                name,
                number
            ),
            Self::UnknownWord { word } => {
                say!("The word “{word}” is not known here. {mend}", word, mend())
            }
            Self::BadId => say!(
                "A formula’s key is not one that this app makes. {mend}",
                mend()
            ),
        }
    }
}

fn too_large(bytes: usize, most: usize, manner: Manner) -> String {
    say!(
        "The file is too large: {}, where {} is the most. Nothing of it was opened. Choose a file \
         that was saved here.",
        super::told::megabytes(bytes, manner),
        super::told::megabytes(most, manner)
    )
}

fn expected(wanted: Wanted) -> &'static str {
    match wanted {
        Wanted::Number => say!("A number"),
        Wanted::Text => say!("A text"),
        Wanted::List => say!("A list"),
        Wanted::Truth => say!("Yes or no (true or false)"),
        Wanted::Fields => say!("A group of fields"),
    }
}
