//! Messages for errors of ingredients.

use super::ErrorText;
use crate::engine::ingredients::UnknownIngredient;
use crate::text::{format_options::FormatOptions, tr};

impl ErrorText for UnknownIngredient {
    fn sentence(&self, _: FormatOptions) -> String {
        tr!(
            "Ingredient number {value} is not known here. Bring the app up to date, or choose another ingredient.",
            value = self.number
        )
    }
}
