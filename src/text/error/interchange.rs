//! Messages for recipes that cannot be imported and codes that cannot be drawn.

use super::ErrorText;
use super::reported::megabytes;
use crate::engine::numerics::saturating_u32;
use crate::storage::interchange::{RecipeError, SquareCodeError, Unread};
use crate::text::{format, format_options::FormatOptions, name, tr};

impl ErrorText for RecipeError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::TooLarge { bytes, most } => tr!(
                "That is {first}; more than {second} is not read. Take the recipe alone, not the whole page.",
                first = megabytes(*bytes, options),
                second = megabytes(*most, options)
            ),
            Self::NotJson { line, column } => tr!(
                "This is no recipe in the form that is read here: it makes sense up to line \
                 {line}, column {column}. Save the page itself, or its recipe data, and open that.",
                line = line,
                column = column
            ),
            Self::NoRecipe => tr!(
                "There is no recipe in it that a program could read. Many pages \
                               have one inside; save the whole page and open it here."
            )
            .to_owned(),
            Self::NoIngredients => {
                tr!("The recipe lists no ingredients. Add them by hand.").to_owned()
            }
            Self::NothingUnderstood => {
                tr!("None of its ingredients could be understood. Add them by hand.").to_owned()
            }
        }
    }
}

impl ErrorText for SquareCodeError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::TooLong { bytes, most } => tr!(
                "The link has {first} characters, and a code that phones still read holds {second}.",
                first = format::count(saturating_u32(*bytes), options),
                second = format::count(saturating_u32(*most), options)
            ),
            Self::Empty => tr!("There is nothing to draw a code of.").to_owned(),
        }
    }
}

impl ErrorText for Unread {
    fn sentence(&self, _: FormatOptions) -> String {
        match self {
            Self::NoAmount => tr!("It gives no amount, so it was left out.").to_owned(),
            Self::NoFood => tr!("It names no ingredient, so it was left out.").to_owned(),
            Self::NoWeight { unit, food } => tr!(
                "Nothing published says what one {value} of “{food}” weighs. Weigh it and add it.",
                value = name::measure(*unit).0,
                food = food
            ),
            Self::OffScale => {
                tr!("It weighs more than any kitchen holds, so it was left out.").to_owned()
            }
            Self::TooMany => tr!("The formula has no room for one more line.").to_owned(),
        }
    }
}
