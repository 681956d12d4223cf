//! The printed pages: the content of a bench card and a class sheet, and their layout.

use crate::text::weighing::PartWeights;

/// Type size of a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TypeSize {
    /// Large.
    Roomy,
    /// Medium.
    Close,
    /// The smallest that is legible at the bench.
    Closest,
}

/// A sheet of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// A5, for the bench card.
    A5,
    /// The area that A4 and Letter share.
    A4,
}

/// Layout of a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fit {
    /// Paper size.
    pub paper: Paper,
    /// Type size.
    pub type_size: TypeSize,
    /// Whether everything fits on one page.
    pub one_page: bool,
}

/// A bench card.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCard {
    /// The formula's name.
    pub title: String,
    /// "Soft tin bread, 10 × 92 g".
    pub made: String,
    /// Weights, part by part.
    pub parts: Vec<PartWeights>,
    /// Steps, part by part.
    pub steps: Vec<(String, Vec<String>)>,
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
    /// Name of the part that begins here.
    pub begins: Option<String>,
    /// The ingredient.
    pub food: String,
    /// Weight for each kind of bench, then the total.
    pub cells: Vec<String>,
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
    /// Bowls, then oven loads.
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
