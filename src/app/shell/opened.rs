//! What stands open over the page: one dialog, filled with what was asked for.

use leptos::prelude::*;

use crate::app::dialog::{
    AddStream, HandOutDialog, LineMenu, Picker, SettingsDialog, ShelfDialog, StreamMenu,
};
use crate::app::part::{Dialog, WorkingList};
use crate::app::state::{Opened, State};

/// The one dialog of the page.
#[component]
pub fn OpenedDialog() -> impl IntoView {
    let state = State::here();
    let title = Signal::derive(move || {
        state
            .opened
            .with(|opened| opened.as_ref().map(Opened::title).unwrap_or_default())
    });
    let inside = move || {
        state.opened.get().map(|opened| match opened {
            Opened::Working { value, lines, .. } => {
                let manner = state.manner.get_untracked();
                view! { <p class="worked">{value}</p> <WorkingList lines manner /> }.into_any()
            }
            Opened::Line(at) => view! { <LineMenu at /> }.into_any(),
            Opened::Stream(stream) => view! { <StreamMenu stream /> }.into_any(),
            Opened::AddStream => view! { <AddStream /> }.into_any(),
            Opened::Pick { picked, .. } => view! { <Picker picked /> }.into_any(),
            Opened::Shelf => view! { <ShelfDialog /> }.into_any(),
            Opened::HandOut => view! { <HandOutDialog /> }.into_any(),
            Opened::Settings => view! { <SettingsDialog /> }.into_any(),
        })
    };
    view! {
        <Dialog title node=state.dialog closed=move || state.leave_dialog()>
            {inside}
        </Dialog>
    }
}
