//! The cooling of the parts of a formula: which are cooled, from how hot, and how it goes.

use super::cooling::{CoolingPlan, cooling_plan};
use super::part_matter::part_at;
use super::paste::paste_temperature;
use super::paste_cooling::PasteCooling;
use super::paste_result::PasteResult;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{CooledRange, HeatError};
use crate::engine::quantity::Mass;
use crate::engine::working::WorkingLine;
use crate::sheet::{CoolingSettings, HeatSettings, Kitchen};

/// Returns the cooling of a paste from just after stirring.
///
/// # Errors
/// [`HeatError::NoPart`] for a part that is not there; [`HeatError::NoPaste`] for one without flour
/// or liquid; else those of [`cooling_plan`].
pub fn paste_cooling(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    heat: &HeatSettings,
) -> Result<CoolingPlan, HeatError> {
    let own = part_at(formula, part)?;
    let hot = paste_temperature(formula, part, kitchen, &heat.paste)?;
    cooling_plan(own, hot, kitchen, &heat.cooling)
}

/// The cooling of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingResult {
    /// The place of the part in the formula.
    pub part: usize,
    /// Whether its temperature comes from cooking it as a paste, not from the user.
    pub is_paste: bool,
    /// How it is cooled; `None` where it is not known how hot it is.
    pub plan: Option<Result<CoolingPlan, HeatError>>,
    /// The simulation of that.
    pub cooled: Option<CooledRange>,
}

impl CoolingResult {
    /// Simulates the cooling of a part, from the temperature its paste reached or from its own. The
    /// cooling of a paste is one of `followed`.
    #[must_use]
    pub fn of(
        formula: &Formula,
        part: usize,
        (pastes, followed): (&[PasteResult], &[PasteCooling]),
        kitchen: &Kitchen,
        settings: &CoolingSettings,
    ) -> Self {
        if let Some(followed) = followed.iter().find(|one| one.part == part) {
            return Self {
                part,
                is_paste: true,
                plan: Some(Ok(followed.plan)),
                cooled: Some(followed.cooled.clone()),
            };
        }
        let paste = pastes.iter().find(|paste| paste.part == part);
        let cooked = paste.and_then(|paste| paste.cooked.as_ref().ok());
        let own = formula.parts.get(part);
        let start = cooked
            .map(|cooked| cooked.temperature)
            .or_else(|| own?.temperature);
        let plan = own
            .zip(start)
            .map(|(own, start)| cooling_plan(own, start, kitchen, settings));
        let good = plan.as_ref().and_then(|plan| plan.as_ref().ok());
        Self {
            part,
            is_paste: cooked.is_some(),
            cooled: good.and_then(|plan| plan.simulate().ok()),
            plan,
        }
    }

    /// Returns the plan, where the cooling can be simulated.
    #[must_use]
    pub fn good_plan(&self) -> Option<&CoolingPlan> {
        self.plan.as_ref()?.as_ref().ok()
    }

    /// Returns the properties of the food, and the minutes each limit takes at the slow end.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let plan = self.good_plan();
        let mut lines = plan.map_or_else(Vec::new, |plan| plan.cooling.working());
        lines.extend(self.cooled.iter().flat_map(|cooled| cooled.slow.working()));
        lines
    }

    /// Returns why the cooling cannot be simulated; `None` where it can.
    #[must_use]
    pub fn error(&self) -> Option<&HeatError> {
        self.plan.as_ref()?.as_ref().err()
    }
}

/// Parts with something in them that is cooked, or may be: pastes, fillings, toppings.
///
/// ```
/// use softcrumb::engine::formula::PartKind;
/// use softcrumb::results::heat::coolable;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// for part in coolable(&sheet.formula) {
///     assert_ne!(sheet.formula.parts[part].kind, PartKind::Final);
/// }
/// ```
#[must_use]
pub fn coolable(formula: &Formula) -> Vec<usize> {
    let numbered = formula.parts.iter().enumerate();
    let hot = numbered.filter(|(_, own)| match own.kind {
        PartKind::Paste | PartKind::Filling | PartKind::Topping => own.mass() > Mass::ZERO,
        PartKind::Preferment | PartKind::Final | PartKind::Wash => false,
    });
    hot.map(|(part, _)| part).collect()
}
