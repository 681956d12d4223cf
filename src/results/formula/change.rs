//! Formulas that reach a figure, or that a trial asks for.

use crate::engine::formula::{Figure, FigureTarget, FormulaError, LineAt, Reached, reach};
use crate::engine::quantity::Share;
use crate::sheet::Sheet;

/// Returns the line that changes when a figure is set: the one `asked` for while the formula has
/// it, else the one that usually does. `None` where no line brings any of the figure.
#[must_use]
pub fn gives_way(sheet: &Sheet, figure: Figure, asked: Option<LineAt>) -> Option<LineAt> {
    asked
        .filter(|at| sheet.formula.line(*at).is_some())
        .or_else(|| figure.gives_way(&sheet.formula))
}

/// The sheet with a figure set to a share of the flour, by changing the line at `at` alone.
///
/// ```
/// use softcrumb::engine::formula::Figure;
/// use softcrumb::engine::quantity::Share;
/// use softcrumb::results::formula;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let two = Share::from_percent(2.0).unwrap();
/// let at = formula::gives_way(&sheet, Figure::Salt, None);
/// let tried = formula::try_figure(&sheet, Figure::Salt, two, at).unwrap();
/// let salt = formula::figures(&tried).share(Figure::Salt).unwrap();
/// assert!((salt.percent() - 2.0).abs() < 1e-9);
/// ```
///
/// # Errors
/// [`FormulaError::NothingGivesWay`] where `at` is none; else as [`reach`].
pub fn try_figure(
    sheet: &Sheet,
    figure: Figure,
    share: Share,
    at: Option<LineAt>,
) -> Result<Sheet, FormulaError> {
    Ok(sheet.with_formula(reached(sheet, figure, share, at)?.formula))
}

/// Returns the target that [`try_figure`] reaches, with the numbers met on the way.
///
/// # Errors
/// As [`try_figure`].
pub fn reached(
    sheet: &Sheet,
    figure: Figure,
    share: Share,
    at: Option<LineAt>,
) -> Result<Reached, FormulaError> {
    let at = at.ok_or(FormulaError::NothingGivesWay)?;
    reach(&sheet.formula, FigureTarget::OfFlour(figure, share), at)
}
