//! A paste: how hot it gets, how much of its starch cooks, flour by flour.

use leptos::prelude::*;

use super::HeatContext;
use super::fields::{DROP, PASTE_BOWL};
use super::paste_figure::{PasteFigure, boils_at, comes_to, starch_cooked};
use super::paste_remedies::PasteRemedies;
use super::steam::{SteamFigure, SteamPredicted, WeighedBox};
use crate::app::part::{AnswerRow, FieldBox, SafetyLine, Verdict};
use crate::app::state::{memo, use_app_state};
use crate::text::{ErrorText, caution::Hazard, heat, tr};

/// A paste.
#[component]
pub fn PasteCard(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let name = memo(move || {
        state
            .with(|sheet| sheet.formula.parts.get(part).map(|own| own.name.clone()))
            .unwrap_or_default()
    });
    let answer = memo(move || {
        let options = state.options.get();
        context
            .read_paste_result(part, |paste| match &paste.cooked {
                Ok(cooked) => heat::paste_answer(cooked, options),
                Err(error) => error.sentence(options),
            })
            .unwrap_or_default()
    });
    let verdict = memo(move || {
        let is_short = context.read_paste(part, |cooked| !cooked.remedies.is_empty());
        match is_short {
            Some(false) => Verdict::Good,
            Some(true) | None => Verdict::Wrong,
        }
    });
    view! {
        <AnswerRow title=name answer verdict>
            <Content part />
        </AnswerRow>
    }
}

#[component]
fn Content(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    // Bowl and kettle are the same for all pastes: asked for once.
    let first = memo(move || context.first_paste() == Some(part));
    let wording = memo(move || {
        let options = state.options.get();
        context
            .read_paste_result(part, |paste| match &paste.cooked {
                // What to do is listed, each with its button.
                Ok(cooked) if !cooked.remedies.is_empty() => {
                    heat::paste(cooked, options).means.into_owned()
                }
                Ok(cooked) => heat::paste(cooked, options).sentence(),
                Err(error) => error.sentence(options),
            })
            .unwrap_or_default()
    });
    let flours = memo(move || {
        let options = state.options.get();
        let wording = context.read_paste(part, |cooked| {
            cooked
                .flours
                .iter()
                .map(|flour| heat::flour_cooks(flour, options))
                .collect::<Vec<_>>()
        });
        wording.unwrap_or_default()
    });
    view! {
        <div class="body">
            <p class="follows">{wording}</p>
            <PasteRemedies part />
            <SafetyLine step=Hazard::Scalding />
            <div class="boxes">
                <Show when=move || first.get()>
                    <FieldBox field=PASTE_BOWL />
                    <FieldBox field=DROP />
                </Show>
                <WeighedBox part />
            </div>
            <SteamPredicted part />
            <ul class="ways-list follows">
                {move || flours.get().into_iter().map(|flour| view! { <li>{flour}</li> }).collect_view()}
            </ul>
            <p class="quiet">{move || heat::trust_paste(state.options.get())}</p>
        </div>
        <div class="figures">
            <PasteFigure part label=tr!("Water boils here at") select=boils_at />
            <PasteFigure part label=tr!("Paste comes to") select=comes_to />
            <PasteFigure part label=tr!("Starch cooked") select=starch_cooked />
            <SteamFigure part />
        </div>
    }
}
