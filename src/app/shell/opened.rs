//! The one dialog of the page, with the content that was asked for.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::part::Dialog;
use crate::app::state::{DialogKind, use_app_state};

/// The one dialog of the page.
#[component]
pub fn OpenedDialog() -> impl IntoView {
    let state = use_app_state();
    let title = Signal::derive(move || {
        state
            .opened
            .with(|opened| opened.as_ref().map(DialogKind::title).unwrap_or_default())
    });
    let inside = move || state.opened.get().map(lazy::dialog);
    view! {
        <Dialog title node=state.dialog closed=move || state.leave_dialog()>
            {inside}
        </Dialog>
    }
}
