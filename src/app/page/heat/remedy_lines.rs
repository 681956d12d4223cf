//! Remedies one a line: what to do, the dough it makes, and a button that sets it.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, after_frame, memo, use_app_state};
use crate::engine::heat::{DoughRemedy, DoughStep, LiquidAnswer};
use crate::engine::quantity::Temperature;
use crate::results::heat::{
    DoughQuestion, MixingResult, apply_step, ice_of, is_met, offered_remedies,
    set_liquid_temperature,
};
use crate::text::{
    ErrorText,
    heat::{self, Morning},
    tr,
};

/// What a tap sets.
#[derive(Clone, PartialEq)]
struct Offer {
    liquid: Option<Temperature>,
    remedy: Option<DoughRemedy>,
    wording: String,
    /// The ice beside the cold liquid, which is weighed by itself, and in words.
    ice: Option<(DoughStep, String)>,
}

/// What brings the dough to what is wanted: the liquid, or where none is enough the first remedies
/// with the liquid at its best; worked out after the frame.
#[component]
pub fn RemedyLines() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let wanted = move || context.settings.with(|settings| settings.dough);
    let question = memo(move || {
        let of = |mixing: &MixingResult| {
            let answer = mixing.liquid.as_ref().ok()?;
            state
                .kitchen
                .with(|kitchen| DoughQuestion::at_best(&mixing.load, answer, wanted(), kitchen))
        };
        context.read_mixing(of).flatten()
    });
    let remedies = after_frame(question, DoughQuestion::remedies);
    let means = memo(move || {
        let options = state.options.get();
        let wanted = wanted();
        let wording = context.read_mixing(|mixing| match &mixing.liquid {
            Ok(answer @ LiquidAnswer::OutOfReach(_))
                if !is_met(mixing.dough.temperature, wanted) =>
            {
                let morning = Morning {
                    load: &mixing.load,
                    wanted,
                    remedies: None,
                    options,
                };
                heat::liquid(answer, morning).sentence()
            }
            Ok(_) | Err(_) => String::new(),
        });
        wording.unwrap_or_default()
    });
    let offers = memo(move || {
        let found = context.read_mixing(|mixing| {
            remedies.with(|found| offers(state, mixing, wanted(), found.as_deref()))
        });
        found.unwrap_or_default()
    });
    view! {
        <p class="follows">{means}</p>
        <ul class="remedies follows">
            {move || offers.get().into_iter().map(|offer| view! { <OfferLine offer /> }).collect_view()}
        </ul>
    }
}

fn offers(
    state: AppState,
    mixing: &MixingResult,
    wanted: Temperature,
    remedies: Option<&[DoughRemedy]>,
) -> Vec<Offer> {
    let options = state.options.get();
    if is_met(mixing.dough.temperature, wanted) {
        return Vec::new();
    }
    match &mixing.liquid {
        Ok(LiquidAnswer::At { liquid, .. }) => vec![Offer {
            liquid: Some(*liquid),
            remedy: None,
            ice: None,
            wording: heat::reached(
                &heat::liquid_at(&mixing.load, *liquid, options),
                wanted,
                options,
            ),
        }],
        Ok(LiquidAnswer::OutOfReach(out)) => {
            let offered = offered_remedies(remedies.unwrap_or_default()).into_iter();
            let standing = heat::standing_names(&mixing.load).unwrap_or_default();
            let offered = offered.map(|remedy| {
                let to_do = heat::offered(Some(out.best), &remedy, &standing, options);
                Offer {
                    liquid: Some(out.best),
                    wording: heat::reached(&to_do, remedy.reaches, options),
                    ice: ice_of(&remedy).map(|step| (step, heat::step_alone(step, options))),
                    remedy: Some(remedy),
                }
            });
            offered.collect()
        }
        Err(_) => Vec::new(),
    }
}

#[component]
fn OfferLine(
    /// What it offers.
    offer: Offer,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let Offer {
        liquid,
        remedy,
        wording,
        ice,
    } = offer;
    let label = format!("{}: {wording}", tr!("Use"));
    let ice = ice.map(|(step, wording)| {
        view! { <button type="button" class="button" on:click=move |_| take(state, context, None, &[step])>{wording}</button> }
    });
    let steps: Vec<DoughStep> = remedy.iter().flat_map(DoughRemedy::steps).collect();
    view! {
        <li>
            <span>{wording}</span>
            <button type="button" class="button primary" aria-label=label on:click=move |_| take(state, context, liquid, &steps)>{tr!("Use")}</button>
            {ice}
        </li>
    }
}

/// Sets the temperature of the liquid and applies the steps of a remedy.
fn take(state: AppState, context: HeatContext, liquid: Option<Temperature>, steps: &[DoughStep]) {
    let load = untrack(|| context.read_mixing(|mixing: &MixingResult| mixing.load.clone()));
    let Some(load) = load else { return };
    let mut sheet = state.sheet();
    let poured = liquid.map_or(Ok(()), |liquid| {
        set_liquid_temperature(&mut sheet.formula, liquid)
    });
    let applied = poured.and_then(|()| {
        let mut steps = steps.iter();
        steps.try_for_each(|step| apply_step(&mut sheet.formula, &mut sheet.heat, &load, *step))
    });
    match applied {
        Ok(()) => {
            state.edit(|saved| *saved = sheet);
            announce(tr!("Done. Undo reverses it."));
        }
        Err(error) => announce(&error.sentence(state.options.get_untracked())),
    }
}
