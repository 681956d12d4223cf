//! Messages for errors of a rise.

use super::ErrorText;
use super::reported::off_scale;
use crate::engine::rise::RiseError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for RiseError {
    fn sentence(&self, options: FormatOptions) -> String {
        let degrees = |at| format::temperature(at, options);
        match self {
            Self::NoYeast => {
                tr!("There is no yeast in this dough. Add some, or it will not rise.").to_owned()
            }
            Self::NotCardinal { least, best, most } => tr!(
                "Least {first}, best {second} and most {third} make no curve. Put them in rising order, the best \
                 nearer to the most.",
                first = degrees(*least),
                second = degrees(*best),
                third = degrees(*most)
            ),
            Self::AnchorAtRest { at } => tr!(
                "At {value} yeast does not work, so a rise at that temperature says nothing. Give the \
                 temperature the dough really had.",
                value = degrees(*at)
            ),
            Self::AnchorOfNoTime => {
                tr!("A rise of no minutes says nothing. Give the time it takes.").to_owned()
            }
            Self::NotInTime { followed, reached } => tr!(
                "After {first} only {second} of the rise would be done. Give it a warmer place, or more yeast.",
                first = format::minutes(*followed, options),
                second = format::share(*reached, options)
            ),
            Self::Heat(error) => error.sentence(options),
            Self::Formula(error) => error.sentence(options),
            Self::OffScale(_) => off_scale(),
        }
    }
}
