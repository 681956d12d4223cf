//! What keeps a recipe from being read and a code from being drawn, in words.

use super::Trouble;
use super::told::megabytes;
use crate::sheet::interchange::{RecipeError, SquareCodeError, Unread};
use crate::words::{manner::Manner, name, say, write};

impl Trouble for RecipeError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::TooLarge { bytes, most } => say!(
                "That is {}; more than {} is not read. Take the recipe alone, not the whole page.",
                megabytes(*bytes, manner),
                megabytes(*most, manner)
            ),
            Self::NotJson { line, column } => say!(
                "This is no recipe in the form that is read here: it makes sense up to line \
                 {line}, column {column}. Save the page itself, or its recipe data, and open that.",
                line,
                column
            ),
            Self::NoRecipe => say!(
                "There is no recipe in it that a program could read. Many pages \
                               have one inside; save the whole page and open it here."
            )
            .to_owned(),
            Self::NoIngredients => {
                say!("The recipe lists no ingredients. Take them over by hand.").to_owned()
            }
            Self::NothingUnderstood => say!(
                "None of its ingredients could be understood. Take them \
                                        over by hand."
            )
            .to_owned(),
        }
    }
}

impl Trouble for SquareCodeError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::TooLong { bytes, most } => say!(
                "The link has {} characters, and a code that phones still read holds {}.",
                write::count(u32::try_from(*bytes).unwrap_or(u32::MAX), manner),
                write::count(u32::try_from(*most).unwrap_or(u32::MAX), manner)
            ),
            Self::Empty => say!("There is nothing to draw a code of.").to_owned(),
        }
    }
}

impl Trouble for Unread {
    fn sentence(&self, _: Manner) -> String {
        match self {
            Self::NoAmount => say!("It gives no amount, so it was left out.").to_owned(),
            Self::NoFood => say!("It names no ingredient, so it was left out.").to_owned(),
            Self::NoWeight { unit, food } => say!(
                "Nothing published says what one {} of “{food}” weighs. Weigh it and add it.",
                name::measure(*unit).0,
                food
            ),
            Self::OffScale => {
                say!("It weighs more than any kitchen holds, so it was left out.").to_owned()
            }
            Self::TooMany => say!("The formula has no room for one more line.").to_owned(),
        }
    }
}
