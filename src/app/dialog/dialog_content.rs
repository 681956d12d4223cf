//! The content of the dialog, by its kind.

use leptos::prelude::*;

use super::{
    AddPart, LineMenu, NewParts, PartMenu, Picker, SettingsDialog, ShareDialog, ShelfDialog,
};
use crate::app::lazy;
use crate::app::page::AboutFields;
use crate::app::part::WorkingList;
use crate::app::state::{DialogKind, use_app_state};
use crate::engine::formula::Figure;
use crate::results::formula::working;

/// The content of the open dialog.
#[component]
pub fn DialogContent(
    /// The kind of dialog.
    opened: DialogKind,
) -> impl IntoView {
    match opened {
        DialogKind::Working { value, lines, .. } => {
            let options = use_app_state().options.get_untracked();
            view! { <p class="worked">{value}</p> <WorkingList lines options /> }.into_any()
        }
        DialogKind::DoughFigure { figure, value } => match figure {
            Some(figure) if Figure::SETTABLE.contains(&figure) => lazy::what_if(figure),
            _ => view! { <DoughFigure figure value /> }.into_any(),
        },
        DialogKind::Line(at) => view! { <LineMenu at /> }.into_any(),
        DialogKind::Part(part) => view! { <PartMenu part /> }.into_any(),
        DialogKind::AddPart => view! { <AddPart /> }.into_any(),
        DialogKind::NewParts => view! { <NewParts /> }.into_any(),
        DialogKind::About => {
            view! { <AboutFields ids=["dialog-name", "dialog-bread", "dialog-note"] /> }.into_any()
        }
        DialogKind::Pick { pick_for, .. } => view! { <Picker pick_for /> }.into_any(),
        DialogKind::Shelf => view! { <ShelfDialog /> }.into_any(),
        DialogKind::Share => view! { <ShareDialog /> }.into_any(),
        DialogKind::Settings => view! { <SettingsDialog /> }.into_any(),
    }
}

/// The working of a figure of the dough.
#[component]
fn DoughFigure(
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
