//! Trouble with ingredients, in words.

use super::Trouble;
use crate::engine::larder::UnknownIngredient;
use crate::words::{manner::Manner, say};

impl Trouble for UnknownIngredient {
    fn sentence(&self, _: Manner) -> String {
        say!(
            "Ingredient number {} is not in this larder. Bring the app up to date, or choose \
             another ingredient.",
            self.number
        )
    }
}
