//! What a dialog is filled with, by what was asked for.

use leptos::prelude::*;

use super::{AddPart, HandOutDialog, LineMenu, PartMenu, Picker, SettingsDialog, ShelfDialog};
use crate::app::part::WorkingList;
use crate::app::state::{DialogKind, use_app_state};
use crate::engine::formula::Figure;
use crate::results::formula::working;

/// What stands open over the page.
#[component]
pub fn Over(
    /// What was asked for.
    opened: DialogKind,
) -> impl IntoView {
    match opened {
        DialogKind::Working { value, lines, .. } => {
            let options = use_app_state().options.get_untracked();
            view! { <p class="worked">{value}</p> <WorkingList lines options /> }.into_any()
        }
        DialogKind::OfDough { figure, value } => view! { <OfDough figure value /> }.into_any(),
        DialogKind::Line(at) => view! { <LineMenu at /> }.into_any(),
        DialogKind::Part(part) => view! { <PartMenu part /> }.into_any(),
        DialogKind::AddPart => view! { <AddPart /> }.into_any(),
        DialogKind::Pick { pick_for, .. } => view! { <Picker pick_for /> }.into_any(),
        DialogKind::Shelf => view! { <ShelfDialog /> }.into_any(),
        DialogKind::HandOut => view! { <HandOutDialog /> }.into_any(),
        DialogKind::Settings => view! { <SettingsDialog /> }.into_any(),
    }
}

/// How a figure of the dough came about.
#[component]
fn OfDough(
    /// Which figure; the moisture where none.
    figure: Option<Figure>,
    /// The figure as it is shown.
    value: String,
) -> impl IntoView {
    let state = use_app_state();
    let lines = working(&state.sheet(), figure);
    let options = state.options.get_untracked();
    view! { <p class="worked">{value}</p> <WorkingList lines options /> }
}
