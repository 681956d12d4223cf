//! What a dialog is filled with, by what was asked for.

use leptos::prelude::*;

use super::{AddStream, HandOutDialog, LineMenu, Picker, SettingsDialog, ShelfDialog, StreamMenu};
use crate::app::part::WorkingList;
use crate::app::state::{Opened, State};

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
        Opened::Line(at) => view! { <LineMenu at /> }.into_any(),
        Opened::Stream(stream) => view! { <StreamMenu stream /> }.into_any(),
        Opened::AddStream => view! { <AddStream /> }.into_any(),
        Opened::Pick { picked, .. } => view! { <Picker picked /> }.into_any(),
        Opened::Shelf => view! { <ShelfDialog /> }.into_any(),
        Opened::HandOut => view! { <HandOutDialog /> }.into_any(),
        Opened::Settings => view! { <SettingsDialog /> }.into_any(),
    }
}
