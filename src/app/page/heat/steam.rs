//! Steam of a paste, found by weighing it once it is cooked.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::{Button, Figure, NumberBox, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::SteamLoss;
use crate::engine::quantity::Mass;
use crate::results::heat::{reckon_with_steam, weigh_cooked_part};
use crate::text::{ErrorText, format, heat, read, tr};

/// What a paste loses as steam.
fn loss(context: HeatContext, part: usize) -> Option<SteamLoss> {
    context
        .read_paste_result(part, |paste| paste.steam)
        .flatten()
}

/// The mass of the cooked paste, for this batch; stored with the formula as steam.
#[component]
pub fn WeighedBox(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        loss(context, part)
            .map(|loss| format::box_mass(loss.after, options))
            .unwrap_or_default()
    });
    let id = format!("paste-weighed-{part}");
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let after = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let scaled = context.scaled.get_untracked();
        let mut sheet = state.sheet();
        weigh_cooked_part(&mut sheet.formula, &scaled, part, after)
            .map_err(|error| error.sentence(options))?;
        state.put(sheet, Some(&from));
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! { <NumberBox id label=tr!("Paste weight after scalding") unit figure store=Callback::new(store) /> }
}

/// The mass lost as steam.
#[component]
pub fn SteamFigure(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let value = loss(context, part).map(|loss| format::mass(loss.lost, options));
        Shown {
            value: value.unwrap_or_else(|| tr!("none").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        untrack(|| {
            loss(context, part)
                .map(|loss| loss.working())
                .unwrap_or_default()
        })
    };
    view! { <Figure label=tr!("Lost as steam") shown working=Callback::new(working) /> }
}

/// What a paste that was not weighed will lose, with a button that reckons with it.
#[component]
pub fn SteamPredicted(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let predicted = memo(move || {
        context
            .read_paste_result(part, |paste| paste.predicted)
            .flatten()
            .filter(|predicted| predicted.likely > Mass::ZERO)
    });
    let wording = move || {
        let options = state.options.get();
        predicted
            .get()
            .map(|predicted| heat::steam_predicted(&predicted, options))
    };
    let reckon = move |()| {
        let scaled = context.scaled.get_untracked();
        let Some(predicted) = predicted.get_untracked() else {
            return;
        };
        let mut sheet = state.sheet();
        if reckon_with_steam(&mut sheet.formula, &scaled, part, predicted.likely).is_ok() {
            state.put(sheet, None);
        }
    };
    view! {
        <Show when=move || predicted.with(Option::is_some)>
            <p class="follows">{wording}</p>
            <Button label=tr!("Use this") on_tap=reckon />
        </Show>
    }
}
