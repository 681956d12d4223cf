//! What keeps a formula from answering, in words.

use super::ErrorText;
use crate::engine::formula::FormulaError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for FormulaError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::NoFlour => tr!(
                "The dough holds no flour, so nothing can be a percentage of it. Add \
                              a flour, or mark an ingredient as flour."
            )
            .to_owned(),
            Self::NoFlourIn { .. } => {
                tr!("This part holds no flour of its own. Give it some, or show percentages of all flour.")
                .to_owned()
            }
            Self::NoSuchPart { .. } => {
                tr!("That part is no longer in the formula. Choose another.").to_owned()
            }
            Self::NoSuchLine { .. } => {
                tr!("That ingredient is no longer in the formula. Choose another.").to_owned()
            }
            Self::NotMadeAhead { .. } => {
                tr!("Only a paste or a preferment has a share of the flour \
                                          that can be set. Choose one of these.")
                .to_owned()
            }
            Self::NoFinalDough => tr!(
                "There is no final dough to take from or to give back to. Add \
                                   one first."
            )
            .to_owned(),
            Self::NothingIn { .. } => tr!(
                "This part is empty, so there is nothing to make more or less of. Add an ingredient first."
            )
            .to_owned(),
            Self::NothingGivesWay => {
                tr!("Nothing in the dough can be adjusted for this. Add water or another liquid, or a paste, first.")
                .to_owned()
            }
            Self::BelowZero { food, short } => tr!(
                "{food} would have to be {value} less than nothing. Ask for a smaller change, or adjust another ingredient.",
                food = food,
                value = format::mass(*short, options)
            ),
            Self::CannotMove { food } => tr!(
                "{food} cannot bring this figure there, whatever it weighs. Adjust another ingredient.",
                food = food
            ),
            Self::TooManyLines => tr!(
                "The formula has as many lines as it can hold. Remove one first."
            )
            .to_owned(),
            Self::OffScale(_) => super::reported::off_scale(),
        }
    }
}
