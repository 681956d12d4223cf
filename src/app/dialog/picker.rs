//! Picker: ingredients searched by name, the usual ones of the part first, or one of the user's own.

use leptos::prelude::*;

use super::OwnFoodForm;
use super::picked::{add, replace};
use crate::app::browser::focus;
use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Picture};
use crate::app::state::{PickFor, memo, use_app_state};
use crate::engine::formula::LineAt;
use crate::engine::ingredients::{Food, Listed, Role};
use crate::results::formula::usual_foods;
use crate::text::{language::text, name, notice, search, tr};

/// The id of the search box.
const SEARCH: &str = "picker-search";

/// The state of the picker.
#[derive(Clone, Copy)]
struct Picking {
    pick_for: PickFor,
    /// The text in the search box.
    typed: RwSignal<String>,
    /// Whether the form for an ingredient of the user's own is shown.
    own: RwSignal<bool>,
    /// The names of the ingredients that were added, in their order.
    added: RwSignal<Vec<String>>,
    /// The place of the first of them.
    first: StoredValue<Option<LineAt>>,
}

impl Picking {
    /// Uses a picked ingredient: several can be added one after the other.
    fn pick(self, food: Food) {
        let state = use_app_state();
        let part = match self.pick_for {
            PickFor::Swap(at) => {
                state.close();
                replace(state, at, food);
                return;
            }
            PickFor::NewLine(part) => part,
        };
        let called = name::food_short(&food).into_owned();
        let Some(at) = add(state, part, food) else {
            announce(notice::lines_full());
            return;
        };
        self.first.update_value(|first| {
            first.get_or_insert(at);
        });
        announce(&tr!("{value} added.", value = called));
        self.added.update(|added| added.push(called));
        self.own.set(false);
        if !self.typed.with_untracked(String::is_empty) {
            self.typed.set(String::new());
            focus::move_to(SEARCH);
        }
    }
}

/// Picks an ingredient; for a new line, one or several.
#[component]
pub fn Picker(
    /// What is done with it.
    pick_for: PickFor,
) -> impl IntoView {
    let state = use_app_state();
    let picking = Picking {
        pick_for,
        typed: RwSignal::new(String::new()),
        own: RwSignal::new(false),
        added: RwSignal::new(Vec::new()),
        first: StoredValue::new(None),
    };
    // However the dialog is closed, the caret is then in the weight of the first new line.
    on_cleanup(move || {
        if let Some(at) = picking.first.try_get_value().flatten() {
            focus::move_to(format!("mass-{}-{}", at.part, at.line));
        }
    });
    let pick = Callback::new(move |food: Food| picking.pick(food));
    let added = move || picking.added.with(|added| added.join(tr!(", ")));
    view! {
        <Show when=move || picking.own.get() fallback=move || view! { <IngredientList picking pick /> }>
            <OwnFoodForm on_done=pick />
        </Show>
        <Show when=move || picking.added.with(|added| !added.is_empty())>
            <div class="picked">
                <p>{added}</p>
                <Button label=tr!("Done") class="primary" on_tap=move |()| state.close() />
            </div>
        </Show>
    }
}

/// The listed ingredients: by role, or those that a typed text finds.
#[component]
fn IngredientList(
    /// The state of the picker.
    picking: Picking,
    /// Called with the picked ingredient.
    pick: Callback<Food>,
) -> impl IntoView {
    let typed = picking.typed;
    let is_searched = memo(move || typed.with(|typed| !typed.trim().is_empty()));
    view! {
        <div class="picker">
            <label class="visually-hidden" for=SEARCH>{tr!("Search by name")}</label>
            <input
                id=SEARCH
                class="search"
                type="search"
                autocomplete="off"
                placeholder=tr!("Search by name")
                prop:value=typed
                on:input:target=move |event| typed.set(event.target().value())
            />
            <Show when=move || is_searched.get() fallback=move || view! { <Everything picking pick /> }>
                <Found picking pick />
            </Show>
            <Button label=tr!("An ingredient of my own") class="bare" picture=Picture::Add on_tap=move |()| picking.own.set(true) />
        </div>
    }
}

/// The usual ingredients of the part, then all of them by role.
#[component]
fn Everything(
    /// The state of the picker.
    picking: Picking,
    /// Called with the picked ingredient.
    pick: Callback<Food>,
) -> impl IntoView {
    let state = use_app_state();
    let usual = match picking.pick_for {
        PickFor::NewLine(part) => {
            let kind = state.sheet().formula.parts.get(part).map(|own| own.kind);
            kind.map(usual_foods).unwrap_or_default()
        }
        PickFor::Swap(_) => Vec::new(),
    };
    let group = move |title: &'static str, foods: Vec<Listed>| {
        let title = (!foods.is_empty()).then(|| view! { <h3>{title}</h3> });
        let rows = foods.into_iter().map(|listed| row(listed, pick));
        view! { {title} {rows.collect_view()} }
    };
    let by_role = Role::ALL.map(|role| group(name::role(role), search::of_role(role)));
    view! { {group(tr!("Usual here"), usual)} {by_role.into_iter().collect_view()} }
}

/// What a typed text finds; where it is nothing, that is said.
#[component]
fn Found(
    /// The state of the picker.
    picking: Picking,
    /// Called with the picked ingredient.
    pick: Callback<Food>,
) -> impl IntoView {
    let found = memo(move || {
        let language = use_app_state().options.get().language;
        picking
            .typed
            .with(|typed| search::ingredients(typed, language))
    });
    let hint = memo(move || picking.typed.with(|typed| search::hint(typed)));
    let nothing = move || {
        let wording = tr!(
            "Nothing here is called “{value}”. Try another word, or make it an ingredient of your own from its packet.",
            value = picking.typed.get()
        );
        view! { <p role="status">{wording}</p> }
    };
    view! {
        {move || hint.get().map(|hint| view! { <p class="quiet">{hint}</p> })}
        <Show when=move || found.with(|found| !found.is_empty()) fallback=nothing>
            <For each=move || found.get() key=|listed| listed.row().number let(listed)>
                {row(listed, pick)}
            </For>
        </Show>
    }
}

/// One ingredient, picked by a tap.
fn row(listed: Listed, pick: Callback<Food>) -> impl IntoView {
    view! {
        <button type="button" class="pick" on:click=move |_| pick.run(Food::Listed(listed))>
            <span>{text(listed.row().name)}</span>
            <span class="quiet">{text(listed.row().detail)}</span>
        </button>
    }
}
