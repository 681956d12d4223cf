//! Handing out: a link, a file of one formula or of all, paper; and a file taken in.

use leptos::prelude::*;

use super::import_file::TakeIn;
use super::share_code::HandMore;
use super::share_fold::Handed;
use super::share_link::LinkOut;
use crate::app::browser::clock;
use crate::app::browser::file::{self, FileTrouble};
use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::text::{notice, tr};

/// Hands the formula out.
#[component]
pub fn HandOutDialog() -> impl IntoView {
    let state = use_app_state();
    provide_context(Handed::whole(state));
    view! {
        <Show when=move || state.is_stale()>
            <p class="advice">{tr!("A box cannot be read. Put it right first: what is handed out is the last good formula.")}</p>
        </Show>
        <Show when=move || state.is_trial()>
            <p class="advice">{tr!("A trial is on. What is handed out is the formula as it was kept.")}</p>
        </Show>
        <LinkOut />
        <FilesOut />
        <HandMore />
        <TakeIn />
    }
}

/// The formula, or all of them, as a file.
#[component]
fn FilesOut() -> impl IntoView {
    let state = use_app_state();
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
        <h3>{tr!("As a file")}</h3>
        <div class="buttons">
            <Button says=tr!("Save this formula") tapped=one />
            <Button says=tr!("Save all formulas") tapped=all />
        </div>
        <p class="trouble">{refused}</p>
    }
}
