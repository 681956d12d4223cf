//! `FormulaResults`: figures, water, percentages and cautions of a sheet's formula.

use super::offers::{Offer, what_ifs};
use super::part_results::{PartResults, part};
use crate::engine::formula::{
    self, Basis, Caution, Figure, Figures, Form, FormulaError, LineAt, Percentage, WaterLedger,
    percentage, scald,
};
use crate::engine::quantity::Mass;
use crate::engine::working::WorkingLine;
use crate::sheet::Sheet;

/// The water of a dough, counted in both forms.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterResults {
    /// By the weights the formula asks for.
    pub as_written: Result<WaterLedger, FormulaError>,
    /// By what really went in, less the steam of cooked pastes.
    pub as_made: Result<WaterLedger, FormulaError>,
    /// Whether the two differ: a weighing missed, or steam was lost.
    pub has_misses: bool,
}

/// The baker's percentages of one line.
#[derive(Clone, Debug, PartialEq)]
pub struct LinePercentages {
    /// The line's index.
    pub at: LineAt,
    /// On all flour of the dough.
    pub of_all_flour: Result<Percentage, FormulaError>,
    /// On the flour of its own part.
    pub of_own_part: Result<Percentage, FormulaError>,
}

/// All results of a sheet's formula.
#[derive(Clone, Debug, PartialEq)]
pub struct FormulaResults {
    /// Every figure of the dough, by the weights the formula asks for.
    pub as_written: Figures,
    /// Every figure of the dough, by what really went in.
    pub as_made: Figures,
    /// Its water.
    pub water: WaterResults,
    /// The percentages of each line, in the order of the formula.
    pub lines: Vec<LinePercentages>,
    /// Each part, in the order of the formula.
    pub parts: Vec<PartResults>,
    /// What a baker should know before making it.
    pub cautions: Result<Vec<Caution>, FormulaError>,
    /// The trials that mean something for this dough.
    pub what_ifs: Vec<Offer>,
}

/// All results of a sheet's formula.
///
/// ```
/// use softcrumb::engine::formula::Figure;
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let results = formula::of(&sheet);
/// let salt = results.as_written.share(Figure::Salt).unwrap();
/// assert!((1.0..2.5).contains(&salt.percent()));
/// ```
#[must_use]
pub fn of(sheet: &Sheet) -> FormulaResults {
    let formula = &sheet.formula;
    FormulaResults {
        as_written: figures(sheet),
        as_made: Figures::of(formula, Form::AsMade),
        water: water(sheet),
        lines: formula
            .lines()
            .map(|(at, _)| LinePercentages {
                at,
                of_all_flour: percentage(formula, at, Basis::AllFlour),
                of_own_part: percentage(formula, at, Basis::OwnPart),
            })
            .collect(),
        parts: (0..formula.parts.len())
            .filter_map(|at| part(sheet, None, at))
            .collect(),
        cautions: cautions(sheet),
        what_ifs: what_ifs(sheet),
    }
}

/// Whether nothing is in a formula yet.
///
/// ```
/// use softcrumb::results::formula::is_empty;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// assert!(!is_empty(&sheet) && is_empty(&sheet.emptied()));
/// ```
#[must_use]
pub fn is_empty(sheet: &Sheet) -> bool {
    let mut parts = sheet.formula.parts.iter();
    parts.all(|part| part.mass() <= Mass::ZERO)
}

/// Every figure of the dough, as it is written.
///
/// ```
/// use softcrumb::engine::formula::Figure;
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let flour = formula::figures(&sheet).share(Figure::Flour).unwrap();
/// assert!((flour.percent() - 100.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn figures(sheet: &Sheet) -> Figures {
    Figures::of(&sheet.formula, Form::AsWritten)
}

/// Returns the steps that lead to a figure of the dough as written, in g and % of the flour; to its
/// moisture where `figure` is `None`.
#[must_use]
pub fn working(sheet: &Sheet, figure: Option<Figure>) -> Vec<WorkingLine> {
    match figure {
        Some(figure) => figure.working(&sheet.formula),
        None => WaterLedger::of(&sheet.formula, Form::AsWritten)
            .map(|ledger| ledger.working())
            .unwrap_or_default(),
    }
}

/// The water of the dough, as it is written and as it was made.
///
/// ```
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// assert!(formula::water(&sheet).as_written.is_ok());
/// ```
#[must_use]
pub fn water(sheet: &Sheet) -> WaterResults {
    let [as_written, as_made] =
        [Form::AsWritten, Form::AsMade].map(|form| WaterLedger::of(&sheet.formula, form));
    let form = Form::AsWritten;
    let counted_alike = as_made.clone().map(|water| WaterLedger { form, ..water });
    WaterResults {
        has_misses: as_written != counted_alike,
        as_written,
        as_made,
    }
}

/// Returns what a baker should know of the formula before making it.
///
/// Source: each [`Caution`] names the range it is held against.
///
/// # Errors
/// [`FormulaError::NoFlour`] where the dough has none; [`FormulaError::OffScale`] where it has next
/// to none.
pub fn cautions(sheet: &Sheet) -> Result<Vec<Caution>, FormulaError> {
    formula::cautions(&sheet.formula, sheet.bread)
}

/// Returns the steps that lead to the figure of a caution: a share of the flour, in g and %, or the
/// water of a paste to its starch. None for raw flour, which has no figure.
#[must_use]
pub fn caution_working(sheet: &Sheet, caution: &Caution) -> Vec<WorkingLine> {
    let of = |figure| working(sheet, Some(figure));
    match *caution {
        Caution::Outside { usual, .. } => of(usual.figure),
        Caution::SugarSlowsYeast { .. } => of(Figure::Sugar),
        Caution::SaltSlowsYeast { .. } => of(Figure::Salt),
        Caution::MuchMilkPowder { .. } => of(Figure::MilkPowder),
        Caution::PasteTooDry { part, .. } => match scald(&sheet.formula, part, Form::AsMade) {
            Ok(Some(scald)) => scald.working(),
            Ok(None) | Err(_) => Vec::new(),
        },
        Caution::RawFlour => Vec::new(),
    }
}

impl WaterResults {
    /// Returns the water ledger of one form, in g.
    ///
    /// # Errors
    /// As [`WaterLedger::of`].
    pub const fn of(&self, form: Form) -> Result<&WaterLedger, &FormulaError> {
        match form {
            Form::AsWritten => self.as_written.as_ref(),
            Form::AsMade => self.as_made.as_ref(),
        }
    }
}
