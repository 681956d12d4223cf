//! Messages for errors of an own ingredient's label.

use super::ErrorText;
use crate::engine::ingredients::{LabelError, OwnFood};
use crate::text::{format, format_options::FormatOptions, name, tr};

impl ErrorText for LabelError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        let share = |share| format::share(share, options);
        match self {
            Self::NameEmpty => tr!("An ingredient needs a name. Type one.").to_owned(),
            Self::NameTooLong { length } => tr!(
                "This name has {length} characters; {value} fit. Shorten it.",
                length = length,
                value = OwnFood::NAME_LENGTH
            ),
            Self::NameUnprintable { character } => tr!(
                "The name holds a mark that cannot be shown (U+{number}). Type the name anew.",
                number = format!("{:04X}", u32::from(*character))
            ),
            Self::LineAboveWhole { line, share: says } => tr!(
                "“{first}” says {second}, more than the whole packet. Look at the label again.",
                first = name::label_line(*line),
                second = share(*says)
            ),
            Self::SaturatesAboveFat { saturates, fat } => tr!(
                "Saturates ({first}) are a part of fat ({second}) and cannot be more. Look at the label \
                 again.",
                first = share(*saturates),
                second = share(*fat)
            ),
            Self::SugarsAboveCarbohydrate {
                sugars,
                carbohydrate,
            } => tr!(
                "Sugars ({first}) are a part of carbohydrate ({second}) and cannot be more. Look at the \
                 label again.",
                first = share(*sugars),
                second = share(*carbohydrate)
            ),
            Self::CocoaAndSugarsAboveWhole { cocoa, sugars } => tr!(
                "Cocoa ({first}) and sugars ({second}) together are more than the whole packet. Look at the \
                 label again.",
                first = share(*cocoa),
                second = share(*sugars)
            ),
            Self::SumAboveWhole { sum } => tr!(
                "These lines add up to {value}, more than the whole packet. Look for one that was \
                 typed too large.",
                value = share(*sum)
            ),
        }
    }
}
