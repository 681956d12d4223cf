//! What a dialog is filled with, by what was asked for.

use leptos::prelude::*;

use super::{AddStream, HandOutDialog, LineMenu, Picker, SettingsDialog, ShelfDialog, StreamMenu};
use crate::app::part::WorkingList;
use crate::app::state::{Opened, State};
use crate::engine::formula::{Figure, Form, WaterLedger};

/// What stands open over the page.
#[component]
pub fn Over(
    /// What was asked for.
    opened: Opened,
) -> impl IntoView {
    match opened {
        Opened::Working { value, lines, .. } => {
            let manner = State::here().manner.get_untracked();
            view! { <p class="worked">{value}</p> <WorkingList lines manner /> }.into_any()
        }
        Opened::OfDough { figure, value } => view! { <OfDough figure value /> }.into_any(),
        Opened::Line(at) => view! { <LineMenu at /> }.into_any(),
        Opened::Stream(stream) => view! { <StreamMenu stream /> }.into_any(),
        Opened::AddStream => view! { <AddStream /> }.into_any(),
        Opened::Pick { pick_for, .. } => view! { <Picker pick_for /> }.into_any(),
        Opened::Shelf => view! { <ShelfDialog /> }.into_any(),
        Opened::HandOut => view! { <HandOutDialog /> }.into_any(),
        Opened::Settings => view! { <SettingsDialog /> }.into_any(),
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
    let state = State::here();
    let sheet = state.sheet();
    let lines = match figure {
        Some(figure) => figure.working(&sheet.formula),
        None => WaterLedger::of(&sheet.formula, Form::AsWritten)
            .map(|ledger| ledger.working())
            .unwrap_or_default(),
    };
    let manner = state.manner.get_untracked();
    view! { <p class="worked">{value}</p> <WorkingList lines manner /> }
}
