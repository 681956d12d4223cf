//! Picker: an ingredient searched by name, roles as groups, or one of the user's own.

use leptos::prelude::*;

use super::OwnFoodForm;
use super::picked::use_picked;
use crate::app::part::{Button, Picture};
use crate::app::state::{PickFor, memo, use_app_state};
use crate::engine::ingredients::{Food, Listed, Role};
use crate::text::{language::text, name, search, tr};

/// Picks an ingredient.
#[component]
pub fn Picker(
    /// What is done with it.
    pick_for: PickFor,
) -> impl IntoView {
    let state = use_app_state();
    let own = RwSignal::new(false);
    let pick = Callback::new(move |food: Food| {
        state.close();
        use_picked(state, pick_for, food);
    });
    view! {
        <Show when=move || own.get() fallback=move || view! { <IngredientList own pick /> }>
            <OwnFoodForm on_done=pick />
        </Show>
    }
}

/// The listed ingredients, searched by name.
#[component]
fn IngredientList(
    /// Set when the user asks for an ingredient of their own.
    own: RwSignal<bool>,
    /// Called with the picked ingredient.
    pick: Callback<Food>,
) -> impl IntoView {
    let typed = RwSignal::new(String::new());
    let group = move |role: Role| {
        let rows = memo(move || typed.with(|typed| search::ingredients(typed, role)));
        view! { <Group role rows pick /> }
    };
    view! {
        <div class="picker">
            <label class="visually-hidden" for="picker-search">{tr!("Search by name")}</label>
            <input
                id="picker-search"
                class="search"
                type="search"
                autocomplete="off"
                placeholder=tr!("Search by name")
                on:input:target=move |event| typed.set(event.target().value())
            />
            <Button label=tr!("An ingredient of my own") class="bare" picture=Picture::Add on_tap=move |()| own.set(true) />
            {Role::ALL.map(group).into_iter().collect_view()}
        </div>
    }
}

/// The ingredients of one role.
#[component]
fn Group(
    /// The role.
    role: Role,
    /// Those that are found.
    rows: Memo<Vec<Listed>>,
    /// Called with the picked ingredient.
    pick: Callback<Food>,
) -> impl IntoView {
    let row = move |listed: Listed| {
        view! {
            <button type="button" class="pick" on:click=move |_| pick.run(Food::Listed(listed))>
                <span>{text(listed.row().name)}</span>
                <span class="quiet">{text(listed.row().detail)}</span>
            </button>
        }
    };
    view! {
        <Show when=move || rows.with(|rows| !rows.is_empty())>
            <h3>{name::role(role)}</h3>
        </Show>
        <For each=move || rows.get() key=|listed| listed.row().number let(listed)>
            {row(listed)}
        </For>
    }
}
