//! Messages for links that cannot be opened.

use super::ErrorText;
use super::reported::number_outside;
use crate::storage::link::LinkError;
use crate::text::{format_options::FormatOptions, tr};

impl ErrorText for LinkError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::Empty => {
                tr!("The link holds no formula. Ask for it to be sent again.").to_owned()
            }
            Self::NotALink => tr!(
                "This is not a link to a formula. Check that it was copied whole, \
                               from the first letter to the last."
            )
            .to_owned(),
            Self::TooLong { characters, most } => tr!(
                "The formula does not fit into a link: {characters} characters, where {most} are the most. Share it as a file, or shorten the note.",
                characters = characters,
                most = most
            ),
            Self::Damaged => tr!(
                "The link was cut short or changed on its way, so its formula cannot \
                              be trusted. Ask for it to be sent again, or use the square code or \
                              the file."
            )
            .to_owned(),
            Self::Newer { version } => tr!(
                "The link was made by a newer release of the app (form {version}). Bring the app \
                 up to date and open the link again.",
                version = version
            ),
            Self::UnknownIngredient { number } => tr!(
                "The link names an ingredient (number {number}) that this release does not know. \
                 Bring the app up to date and open the link again.",
                number = number
            ),
            Self::OutOfRange(out) => tr!(
                "{value} Ask for the link to be made again.",
                value = number_outside(tr!("The link"), out, options)
            ),
            Self::Label(_) => tr!(
                "The link holds an ingredient whose label cannot be true. Ask for \
                               the link to be made again."
            )
            .to_owned(),
            Self::TooMany => tr!(
                "The formula has more parts or lines than one may have. Split it into two formulas."
            )
            .to_owned(),
        }
    }
}
