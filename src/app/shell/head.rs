//! The header: the formula's name, the tools, and the three figures of the place.

use leptos::prelude::*;

use super::keys::Keys;
use crate::app::browser::announce::announce;
use crate::app::part::{Icon, IconButton, Picture};
use crate::app::state::{Opened, State, Stepped, memo};
use crate::words::{notice, say};

/// The header of the page.
#[component]
pub fn Head() -> impl IntoView {
    let state = State::here();
    let undo = move || match state.undo() {
        Stepped::Formula => announce(say!("Undone")),
        Stepped::Kitchen => state.tell(notice::kitchen_undone()),
    };
    let redo = move || match state.redo() {
        Stepped::Formula => announce(say!("Done again")),
        Stepped::Kitchen => state.tell(notice::kitchen_redone()),
    };
    view! {
        <header class="head">
            <div class="row">
                <button type="button" class="button bare name" aria-haspopup="dialog" on:click=move |_| state.open(Opened::Shelf)>
                    <Icon picture=Picture::Shelf />
                    <span>
                        <span class="heard">{say!("Shelf, open: ")}</span>
                        {move || state.with(|sheet| sheet.name.clone())}
                    </span>
                </button>
                <div class="tools">
                    <IconButton picture=Picture::Undo name=say!("Undo") tapped=undo idle=memo(move || !state.can_undo()) />
                    <IconButton picture=Picture::Redo name=say!("Redo") tapped=redo idle=memo(move || !state.can_redo()) />
                    <IconButton picture=Picture::HandOut name=say!("Hand out") tapped=move || state.open(Opened::HandOut) />
                    <IconButton picture=Picture::Settings name=say!("Settings") tapped=move || state.open(Opened::Settings) />
                </div>
            </div>
            <section class="keys" aria-label=say!("Key figures")>
                <Keys />
            </section>
            <Show when=move || state.is_stale()>
                <p class="stale">{notice::last_good()}</p>
            </Show>
        </header>
    }
}
