//! The printed pages: the content of a card and of a class sheet, and their layout.

use super::card_steps::CardStep;
use crate::text::weighing::PartWeights;

/// A sheet of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// A5, for a card.
    A5,
    /// The area that A4 and Letter share.
    A4,
}

/// Layout of a page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// Paper size.
    pub paper: Paper,
    /// Type size, points.
    pub points: f64,
    /// Whether everything fits on one page.
    pub one_page: bool,
}

/// A card: of a bench or of the teacher.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCard {
    /// The formula's name.
    pub title: String,
    /// "Soft tin bread, 10 × 92 g".
    pub made: String,
    /// Weights, part by part.
    pub parts: Vec<PartWeights>,
    /// The steps of the bench.
    pub steps: Vec<CardStep>,
    /// What else is to be known, under a name: the note, the oven's loads.
    pub notes: Vec<(String, String)>,
    /// Allergens.
    pub allergens: String,
    /// Cautions.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// Paper size and type size.
    pub fit: Fit,
}

/// A row of the class sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetRow {
    /// Name of the part that begins here, or goes on.
    pub begins: Option<String>,
    /// The ingredient.
    pub food: String,
    /// Weight for each kind of bench, then the total; one is written like the other, so that their
    /// decimal signs stand below each other.
    pub cells: Vec<String>,
    /// Whether it is the sum of its part.
    pub is_sum: bool,
}

/// A class sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassSheet {
    /// The formula's name.
    pub title: String,
    /// Size of the class.
    pub class: String,
    /// Heads of the weight columns.
    pub columns: Vec<String>,
    /// Rows by ingredient, in two tables side by side where they are many.
    pub tables: Vec<Vec<SheetRow>>,
    /// What is weighed otherwise, bowls, then oven loads.
    pub notes: Vec<String>,
    /// Allergens.
    pub allergens: String,
    /// Cautions.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// Paper size and type size.
    pub fit: Fit,
}

impl ClassSheet {
    /// Columns of a table: the ingredient's and those of weights.
    #[must_use]
    pub const fn all_columns(&self) -> usize {
        self.columns.len().saturating_add(1)
    }
}
