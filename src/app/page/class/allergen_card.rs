//! Allergens: what is in the bread and who says so, and what may come from the kitchen.

use leptos::prelude::*;

use crate::app::part::{Button, PickOne};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::engine::ingredients::Allergen;
use crate::results::batch::allergens::{of, unmarked};
use crate::text::{
    allergens::{self, AllergenLine},
    caution::LOCAL_RULES,
    language::text,
    name, tr,
};

/// What must be named.
#[component]
pub fn AllergenCard() -> impl IntoView {
    let state = use_app_state();
    let desk = WorkspaceStore::here();
    let told = memo(move || {
        let law = desk.law.get();
        state.with(|sheet| {
            let formula = &sheet.formula;
            let found = desk.pantry.with(|pantry| of(formula, pantry, law));
            allergens::view(&found, formula)
        })
    });
    let lines = |lines: Vec<AllergenLine>| {
        let line = |line: AllergenLine| view! { <li><b>{line.name}</b>": " {line.told_by}</li> };
        view! { <ul class="plain">{lines.into_iter().map(line).collect_view()}</ul> }
    };
    view! {
        <section class="card" aria-label=tr!("Allergens")>
            <header>
                <h2>{tr!("Allergens")}</h2>
                <span class="quiet">{move || name::law(desk.law.get())}</span>
            </header>
            <div class="body">
                <p class="follows"><b>{move || told.with(|told| told.says.clone())}</b></p>
                {move || lines(told.with(|told| told.contains.clone()))}
                {move || lines(told.with(|told| told.may_contain.clone()))}
                <p class="quiet">{move || told.with(|told| told.note)} " " {text(LOCAL_RULES)}</p>
                <Marked id="kitchen-allergen" label=tr!("May come from your kitchen") holds=Signal::derive(move || desk.pantry.with(|pantry| pantry.kitchen.clone()))
                    changed=Callback::new(move |marked| { desk.pantry.update(|pantry| pantry.kitchen = marked); }) />
            </div>
        </section>
    }
}

/// Allergens that are marked, to be added to and taken from.
#[component]
pub fn Marked(
    /// Unique on the page.
    id: &'static str,
    /// What they are marked as.
    label: &'static str,
    /// Those that are marked.
    #[prop(into)]
    holds: Signal<Vec<Allergen>>,
    /// Called with all of them when one is added or taken away.
    changed: Callback<Vec<Allergen>>,
) -> impl IntoView {
    let answers = memo(move || {
        let marked = holds.get();
        let mut all: Vec<(Option<Allergen>, String)> = vec![(None, tr!("add one").to_owned())];
        let left = unmarked(&marked).into_iter();
        all.extend(left.map(|one| (Some(one), name::allergen(one).to_owned())));
        all
    });
    let add = move |one: Option<Allergen>| {
        if let Some(one) = one {
            let mut marked = holds.get_untracked();
            marked.push(one);
            changed.run(marked);
        }
    };
    let taken = move |one: Allergen| {
        let mut marked = holds.get_untracked();
        marked.retain(|other| *other != one);
        changed.run(marked);
    };
    let button = move |one: Allergen| {
        let says = tr!("Take away: {value}", value = name::allergen(one));
        view! { <Button says tapped=move |()| taken(one) /> }
    };
    view! {
        <PickOne id label answers holds=Signal::stored(None) chosen=Callback::new(add) />
        <div class="buttons">{move || holds.get().into_iter().map(button).collect_view()}</div>
    }
}
