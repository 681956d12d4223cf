//! What keeps a formula from answering, in words.

use super::Trouble;
use crate::engine::formula::FormulaError;
use crate::words::{manner::Manner, say, write};

impl Trouble for FormulaError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::NoFlour => say!(
                "The dough holds no flour, so nothing can be a percentage of it. Add \
                              a flour, or mark an ingredient as flour."
            )
            .to_owned(),
            Self::NoFlourIn { .. } => say!(
                "This stream holds no flour of its own. Give it some, or \
                                       show percentages of all flour."
            )
            .to_owned(),
            Self::NoSuchStream { .. } => {
                say!("That stream is no longer in the formula. Choose another.").to_owned()
            }
            Self::NoSuchLine { .. } => {
                say!("That ingredient is no longer in the formula. Choose another.").to_owned()
            }
            Self::NotMadeAhead { .. } => say!(
                "Only a paste or a preferment has a share of the flour \
                                          that can be set. Choose one of these."
            )
            .to_owned(),
            Self::NoFinalDough => say!(
                "There is no final dough to take from or to give back to. Add \
                                   one first."
            )
            .to_owned(),
            Self::NothingIn { .. } => say!(
                "This stream is empty, so there is nothing to make more or less of. Add an \
                 ingredient first."
            )
            .to_owned(),
            Self::NothingGivesWay => say!(
                "Nothing in the dough can give way for this. Add water or \
                                      another liquid, or a paste, first."
            )
            .to_owned(),
            Self::BelowZero { food, short } => say!(
                "{food} would have to be {} less than nothing. Ask for a smaller change, or let \
                 another ingredient give way.",
                food,
                write::mass(*short, manner)
            ),
            Self::CannotMove { food } => say!(
                "{food} cannot bring this figure there, whatever it weighs. Let another \
                 ingredient give way.",
                food
            ),
            Self::TooManyLines => say!(
                "The formula has as many lines as it can hold. Take one out \
                                   first."
            )
            .to_owned(),
            Self::OffScale(_) => super::told::off_scale(),
        }
    }
}
