//! What can keep a recipe from being read at all.

/// Why a text gives no recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum RecipeError {
    /// More text than is read.
    #[error("{bytes} bytes, more than {most}")]
    TooLarge {
        /// How long it is.
        bytes: usize,
        /// The most that is read.
        most: usize,
    },
    /// Neither JSON nor a page with JSON in it.
    #[error("not JSON at line {line}, column {column}")]
    NotJson {
        /// Which line, from one.
        line: usize,
        /// Which column, from one.
        column: usize,
    },
    /// JSON, but nothing in it is a recipe.
    #[error("no recipe in it")]
    NoRecipe,
    /// A recipe without ingredients.
    #[error("no ingredients in it")]
    NoIngredients,
    /// A recipe of which no ingredient could be understood.
    #[error("no ingredient understood")]
    NothingUnderstood,
}
