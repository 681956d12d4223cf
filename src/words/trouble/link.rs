//! What is wrong with a link, in words.

use super::Trouble;
use super::told::number_outside;
use crate::sheet::link::LinkError;
use crate::words::{manner::Manner, say};

impl Trouble for LinkError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::Empty => {
                say!("The link holds no formula. Ask for it to be sent again.").to_owned()
            }
            Self::NotALink => say!(
                "This is not a link to a formula. Check that it was copied whole, \
                               from the first letter to the last."
            )
            .to_owned(),
            Self::TooLong { characters, most } => say!(
                "The formula does not fit into a link: {characters} characters, where {most} are \
                 the most. Hand it out as a file, or shorten the note.",
                characters,
                most
            ),
            Self::Damaged => say!(
                "The link was cut short or changed on its way, so its formula cannot \
                              be trusted. Ask for it to be sent again, or use the square code or \
                              the file."
            )
            .to_owned(),
            Self::Newer { version } => say!(
                "The link was made by a newer release of the app (form {version}). Bring the app \
                 up to date and open the link again.",
                version
            ),
            Self::UnknownIngredient { number } => say!(
                "The link names an ingredient (number {number}) that this release does not know. \
                 Bring the app up to date and open the link again.",
                number
            ),
            Self::OutOfRange(out) => say!(
                "{} Ask for the link to be made again.",
                number_outside(say!("The link"), out, manner)
            ),
            Self::Label(_) => say!(
                "The link holds an ingredient whose label cannot be true. Ask for \
                               the link to be made again."
            )
            .to_owned(),
            Self::TooMany => say!(
                "The formula has more streams or lines than one may have. Split it \
                              into two formulas."
            )
            .to_owned(),
        }
    }
}
