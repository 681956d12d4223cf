//! Remedies for a dough temperature out of reach: each in numbers, applied by a tap.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::browser::live_region::announce;
use crate::app::part::Button;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::{DoughRemedy, LiquidAnswer};
use crate::engine::quantity::Temperature;
use crate::results::heat::{MixingResult, apply_remedy, offered_remedies, set_liquid_temperature};
use crate::text::{ErrorText, heat, tr};

/// The first remedies for an unreachable target, a button each: the liquid at its best, and a step.
#[component]
pub fn RemedyButtons(
    /// The remedies for the dough, once they are worked out.
    remedies: RwSignal<Option<Vec<DoughRemedy>>>,
) -> impl IntoView {
    let context = HeatContext::from_context();
    let remedies = memo(move || {
        let found = context.read_mixing(|mixing| match &mixing.liquid {
            Ok(LiquidAnswer::OutOfReach(out)) => remedies.with(|remedies| {
                let offered = offered_remedies(remedies.as_deref().unwrap_or_default());
                let offered = offered.into_iter();
                offered.map(|remedy| (Some(out.best), remedy)).collect()
            }),
            Ok(LiquidAnswer::At { .. }) | Err(_) => Vec::new(),
        });
        found.unwrap_or_default()
    });
    view! {
        <div class="buttons ways">
            {move || remedies.get().into_iter().map(|(liquid, remedy)| view! { <RemedyButton liquid remedy /> }).collect_view()}
        </div>
    }
}

#[component]
fn RemedyButton(
    /// The temperature of the liquid with it; none leaves it.
    liquid: Option<Temperature>,
    /// What is done.
    remedy: DoughRemedy,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let label = memo(move || {
        let options = state.options.get();
        let wording = context.read_mixing(|mixing| {
            let standing = heat::standing_names(&mixing.load).unwrap_or_default();
            heat::offered(liquid, &remedy, &standing, options)
        });
        wording.unwrap_or_default()
    });
    view! { <Button label on_tap=move |()| take(state, context, liquid, Some(remedy)) /> }
}

/// Sets the temperature of the liquid and applies a remedy.
pub fn take(
    state: AppState,
    context: HeatContext,
    liquid: Option<Temperature>,
    remedy: Option<DoughRemedy>,
) {
    let mixes = untrack(|| context.read_mixing(|mixing: &MixingResult| mixing.load.dough.minutes));
    let Some(mixes) = mixes else { return };
    let mut sheet = state.sheet();
    let poured = liquid.map_or(Ok(()), |liquid| {
        set_liquid_temperature(&mut sheet.formula, liquid)
    });
    let applied = poured.and_then(|()| {
        remedy.map_or(Ok(()), |remedy| {
            apply_remedy(&mut sheet.formula, &mut sheet.heat, mixes, &remedy)
        })
    });
    match applied {
        Ok(()) => {
            state.edit(|saved| *saved = sheet);
            announce(tr!("Done. Undo takes it back."));
        }
        Err(error) => announce(&error.sentence(state.options.get_untracked())),
    }
}
