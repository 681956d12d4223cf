//! What the page calls ingredients, and what has no name in a recipe.

use crate::engine::ingredients::Listed;

/// What the page calls things in its language.
#[derive(Clone, Debug, PartialEq)]
pub struct RecipeNames {
    /// A recipe that has no name.
    pub recipe: String,
    /// The part of lines without a heading.
    pub dough: String,
    /// Ingredients, each as the page calls it.
    pub foods: Vec<(String, Listed)>,
}

impl Default for RecipeNames {
    fn default() -> Self {
        Self {
            recipe: "Recipe".to_owned(),
            dough: "Dough".to_owned(),
            foods: Vec::new(),
        }
    }
}
