//! The card of allergens: those in the bread, their sources, and those that may come from the
//! kitchen.

use leptos::prelude::*;

use super::marked::Marked;
use crate::app::part::AnswerRow;
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::results::batch::allergens::of;
use crate::text::{
    allergens::{self, AllergenLine},
    batch_answer,
    caution::LOCAL_RULES,
    language::text,
    name, tr,
};

/// The allergens of the bread.
#[component]
pub fn AllergenCard() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let answer = memo(move || {
        let law = workspace.law.get();
        state.with(|sheet| {
            let found = workspace
                .pantry
                .with(|pantry| of(&sheet.formula, pantry, law));
            batch_answer::allergens(&found)
        })
    });
    view! {
        <AnswerRow title=tr!("Allergens") answer>
            <Content />
        </AnswerRow>
    }
}

/// Every allergen with what says so, and those of the kitchen.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let view = memo(move || {
        let law = workspace.law.get();
        state.with(|sheet| {
            let formula = &sheet.formula;
            let found = workspace.pantry.with(|pantry| of(formula, pantry, law));
            allergens::view(&found, formula)
        })
    });
    let lines = |lines: Vec<AllergenLine>| {
        let line = |line: AllergenLine| view! { <li><b>{line.name}</b>": " {line.sources}</li> };
        view! { <ul class="plain">{lines.into_iter().map(line).collect_view()}</ul> }
    };
    view! {
        <div class="body">
            <p class="quiet">{move || name::law(workspace.law.get())}</p>
                <p class="follows"><b>{move || view.with(|view| view.says.clone())}</b></p>
                {move || lines(view.with(|view| view.contains.clone()))}
                {move || lines(view.with(|view| view.usual.clone()))}
                {move || lines(view.with(|view| view.may_contain.clone()))}
                <p class="quiet">{move || view.with(|view| view.note)} " " {text(LOCAL_RULES)}</p>
                <Marked id="kitchen-allergen" label=tr!("Traces from your kitchen") selected=Signal::derive(move || workspace.pantry.with(|pantry| pantry.kitchen.clone()))
                    changed=Callback::new(move |marked| { workspace.pantry.change(|pantry| pantry.kitchen = marked); }) />
        </div>
    }
}
