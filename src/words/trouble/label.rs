//! What keeps an ingredient of the user's own from being taken, in words.

use super::Trouble;
use crate::engine::larder::{LabelError, OwnFood};
use crate::words::{manner::Manner, name, say, write};

impl Trouble for LabelError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        let share = |share| write::share(share, manner);
        match self {
            Self::NameEmpty => say!("An ingredient needs a name. Type one.").to_owned(),
            Self::NameTooLong { length } => say!(
                "This name has {length} characters; {} fit. Shorten it.",
                length,
                OwnFood::NAME_LENGTH
            ),
            Self::NameUnprintable { character } => say!(
                "The name holds a mark that cannot be shown (U+{number}). Type the name anew.",
                format!("{:04X}", u32::from(*character))
            ),
            Self::LineAboveWhole { line, share: says } => say!(
                "“{}” says {}, more than the whole packet. Look at the label again.",
                name::label_line(*line),
                share(*says)
            ),
            Self::SaturatesAboveFat { saturates, fat } => say!(
                "Saturates ({}) are a part of fat ({}) and cannot be more. Look at the label \
                 again.",
                share(*saturates),
                share(*fat)
            ),
            Self::SugarsAboveCarbohydrate {
                sugars,
                carbohydrate,
            } => say!(
                "Sugars ({}) are a part of carbohydrate ({}) and cannot be more. Look at the \
                 label again.",
                share(*sugars),
                share(*carbohydrate)
            ),
            Self::CocoaAndSugarsAboveWhole { cocoa, sugars } => say!(
                "Cocoa ({}) and sugars ({}) together are more than the whole packet. Look at the \
                 label again.",
                share(*cocoa),
                share(*sugars)
            ),
            Self::SumAboveWhole { sum } => say!(
                "These lines add up to {}, more than the whole packet. Look for one that was \
                 typed too large.",
                share(*sum)
            ),
        }
    }
}
