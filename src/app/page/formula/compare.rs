//! Comparing with another formula of the shelf: lines and figures side by side.

use leptos::prelude::*;

use crate::app::part::PickOne;
use crate::app::state::{memo, use_app_state};
use crate::sheet::{Sheet, ShelfEntry};
use crate::text::{
    compared::{self, Row},
    tr,
};

/// The formulas there are, and the one that is chosen.
#[component]
pub fn Compare() -> impl IntoView {
    let state = use_app_state();
    let chosen = RwSignal::new(None::<usize>);
    let others = memo(move || {
        let open = state.open_id.get();
        state.shelf.with(|shelf| {
            let other = |entry: &&ShelfEntry| Some(&entry.id) != open.as_ref();
            let named = |entry: &ShelfEntry| (entry.id.clone(), entry.name.clone());
            shelf
                .shelved()
                .into_iter()
                .filter(other)
                .map(named)
                .collect::<Vec<_>>()
        })
    });
    let choices = memo(move || {
        let names = others.get().into_iter().map(|(_, name)| name);
        let named = names.enumerate().map(|(place, name)| (Some(place), name));
        let nothing = (None, tr!("nothing").to_owned());
        std::iter::once(nothing).chain(named).collect::<Vec<_>>()
    });
    let other = memo(move || {
        let place = chosen.get()?;
        let id = others.with(|others| others.get(place).map(|(id, _)| id.clone()))?;
        state.read_formula(&id)
    });
    view! {
        <PickOne id="beside" label=tr!("Compare with") choices selected=chosen on_select=move |place| chosen.set(place) />
        {move || other.get().map(|other| view! { <Workspace other /> })}
    }
}

/// The two side by side.
#[component]
fn Workspace(
    /// The other formula.
    other: Sheet,
) -> impl IntoView {
    let state = use_app_state();
    let name = other.name.clone();
    let rows = memo(move || {
        let options = state.options.get();
        state.with(|sheet| compared::rows(&other.formula, &sheet.formula, options))
    });
    let drawn = move || rows.get().into_iter().map(row).collect_view();
    view! {
        <table class="plain-table compare">
            <thead>
                <tr>
                    <th scope="col">{tr!("Of flour")}</th>
                    <th scope="col">{name}</th>
                    <th scope="col">{tr!("This one")}</th>
                    <th scope="col">{tr!("Points")}</th>
                </tr>
            </thead>
            <tbody>{drawn}</tbody>
        </table>
    }
}

/// One row.
fn row(row: Row) -> impl IntoView {
    view! {
        <tr>
            <th scope="row">{row.name}</th>
            <td>{row.old}</td>
            <td>{row.new}</td>
            <td>{row.difference}</td>
        </tr>
    }
}
