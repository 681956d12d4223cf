//! The times of each paste and preferment, read from the steps of a plan.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::Minutes;
use crate::results::run::{PartTimes, PlanTimes};

/// The times of every paste and preferment of a formula in a plan, whose steps last as `lasts` says;
/// a step that was left out takes no time.
pub(super) fn plan_times(
    formula: &Formula,
    lasts: impl Fn(StepAt) -> Option<Minutes>,
) -> PlanTimes {
    let numbered = formula.parts.iter().enumerate();
    let parts = numbered.filter_map(|(part, own)| {
        let of = u16::try_from(part).ok()?;
        let kinds = match own.kind {
            PartKind::Paste => [StepKind::CoolPaste, StepKind::ChillPaste],
            PartKind::Preferment => [StepKind::StandPreferment, StepKind::ChillPreferment],
            PartKind::Final | PartKind::Filling | PartKind::Topping | PartKind::Wash => {
                return None;
            }
        };
        let [standing, chilling] = kinds.map(|work| lasts(StepAt { work, of }));
        standing.or(chilling)?;
        Some(PartTimes {
            part,
            standing: standing.unwrap_or(Minutes::ZERO),
            chilling: chilling.unwrap_or(Minutes::ZERO),
        })
    });
    let parts: Vec<PartTimes> = parts.collect();
    let warm_up = StepAt {
        work: StepKind::WarmUp,
        of: 0,
    };
    let standing_out = (!parts.is_empty()).then(|| lasts(warm_up).unwrap_or(Minutes::ZERO));
    PlanTimes {
        parts,
        standing_out,
    }
}
