//! Handing out: a link, a file of one formula or of all, paper; and a file taken in.

use leptos::prelude::*;

use super::hand_link::LinkOut;
use super::handed::Handed;
use super::take_in::TakeIn;
use crate::app::browser::clock;
use crate::app::browser::file::{self, FileTrouble};
use crate::app::later;
use crate::app::part::Button;
use crate::app::state::State;
use crate::words::{notice, say};

/// Hands the formula out.
#[component]
pub fn HandOutDialog() -> impl IntoView {
    let state = State::here();
    provide_context(Handed::whole(state));
    view! {
        <Show when=move || state.is_stale()>
            <p class="advice">{say!("A box cannot be read. Put it right first: what is handed out is the last good formula.")}</p>
        </Show>
        <Show when=move || state.is_trial()>
            <p class="advice">{say!("A trial is on. What is handed out is the formula as it was kept.")}</p>
        </Show>
        <LinkOut />
        <FilesOut />
        {later::hand()}
        <TakeIn />
    }
}

/// The formula, or all of them, as a file.
#[component]
fn FilesOut() -> impl IntoView {
    let state = State::here();
    let refused = RwSignal::new("");
    let say = move |saved: Result<(), FileTrouble>| {
        refused.set(if saved.is_ok() {
            ""
        } else {
            notice::file_refused()
        });
        saved.is_ok()
    };
    let save = move |name: &str, text: String| {
        file::save(
            &format!("softcrumb-{name}{}.json", clock::today()),
            "application/json",
            &text,
        )
    };
    let all = move |()| {
        if say(save("all-", state.file_of_all())) {
            state.note_filed();
        }
    };
    let one = move |()| {
        say(save("", state.file_of_one()));
    };
    view! {
        <h3>{say!("As a file")}</h3>
        <div class="buttons">
            <Button says=say!("Save this formula") tapped=one />
            <Button says=say!("Save all formulas") tapped=all />
        </div>
        <p class="trouble">{refused}</p>
    }
}
