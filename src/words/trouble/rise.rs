//! What stands in the way of an answer about a rise, in words.

use super::Trouble;
use super::told::off_scale;
use crate::engine::rise::RiseError;
use crate::words::{manner::Manner, say, write};

impl Trouble for RiseError {
    fn sentence(&self, manner: Manner) -> String {
        let degrees = |at| write::temperature(at, manner);
        match self {
            Self::NoYeast => {
                say!("There is no yeast in this dough. Add some, or it will not rise.").to_owned()
            }
            Self::NotCardinal { least, best, most } => say!(
                "Least {}, best {} and most {} make no curve. Put them in rising order, the best \
                 nearer to the most.",
                degrees(*least),
                degrees(*best),
                degrees(*most)
            ),
            Self::AnchorAtRest { at } => say!(
                "At {} yeast does not work, so a rise at that temperature says nothing. Give the \
                 temperature the dough really had.",
                degrees(*at)
            ),
            Self::AnchorOfNoTime => {
                say!("A rise of no minutes says nothing. Give the time it takes.").to_owned()
            }
            Self::NotInTime { followed, reached } => say!(
                "After {} only {} of the rise would be done. Give it a warmer place, or more yeast.",
                write::minutes(*followed, manner),
                write::share(*reached, manner)
            ),
            Self::Heat(error) => error.sentence(manner),
            Self::Formula(error) => error.sentence(manner),
            Self::OffScale(_) => off_scale(),
        }
    }
}
