//! The header: the formula's name, the tools, and the three figures of the place.

use leptos::prelude::*;

use super::key_figures::Keys;
use crate::app::browser::live_region::announce;
use crate::app::part::{IconButton, Picture};
use crate::app::state::{DialogKind, Stepped, memo, use_app_state};
use crate::text::{notice, tr};

/// The header of the page.
#[component]
pub fn Head() -> impl IntoView {
    let state = use_app_state();
    let undo = move || match state.undo() {
        Stepped::Formula => announce(tr!("Undone")),
        Stepped::Kitchen => state.show_toast(notice::kitchen_undone()),
        Stepped::Beside => state.show_toast(notice::beside_undone()),
    };
    let redo = move || match state.redo() {
        Stepped::Formula => announce(tr!("Redone")),
        Stepped::Kitchen => state.show_toast(notice::kitchen_redone()),
        Stepped::Beside => state.show_toast(notice::beside_redone()),
    };
    // Once there was something to undo, its place stays: the name does not move with each key.
    let was_used = Memo::new(move |was: Option<&bool>| {
        was.is_some_and(|was| *was) || state.can_undo() || state.can_redo()
    });
    view! {
        <header class="head">
            <div class="row">
                <IconButton picture=Picture::Shelf name=tr!("Shelf") on_tap=move || state.open(DialogKind::Shelf) />
                <button type="button" class="button bare name" title=move || state.with(|sheet| sheet.name.clone()) aria-haspopup="dialog" on:click=move |_| state.open(DialogKind::About)>
                    <span>{move || state.with(|sheet| sheet.name.clone())}</span>
                </button>
                <div class="tools" class:unused=move || !was_used.get()>
                    <IconButton picture=Picture::Undo name=tr!("Undo") on_tap=undo disabled=memo(move || !state.can_undo()) />
                    <IconButton picture=Picture::Redo name=tr!("Redo") on_tap=redo disabled=memo(move || !state.can_redo()) />
                    <IconButton picture=Picture::Share name=tr!("Share") on_tap=move || state.open(DialogKind::Share) />
                    <IconButton picture=Picture::Settings name=tr!("Settings") on_tap=move || state.open(DialogKind::Settings) />
                </div>
            </div>
            <section class="keys" aria-label=tr!("Key figures")>
                <Keys />
            </section>
            <Show when=move || state.is_stale()>
                <p class="stale">{notice::last_good()}</p>
            </Show>
        </header>
    }
}
