//! Sharing: a link, files, paper and other formats; and importing.

use leptos::prelude::*;

use super::import_file::ImportFile;
use super::share_code::ShareMore;
use super::share_content::ShareContent;
use super::share_link::ShareLink;
use crate::app::browser::clock;
use crate::app::browser::file::{self, FileError};
use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::text::{notice, share::file_name, tr};

/// The dialog to share the formula.
#[component]
pub fn ShareDialog() -> impl IntoView {
    let state = use_app_state();
    provide_context(ShareContent::all(state));
    view! {
        <Show when=move || state.is_stale()>
            <p class="advice">{tr!("A box cannot be read. Correct it first: what is shared is the last good formula.")}</p>
        </Show>
        <Show when=move || state.is_trial()>
            <p class="advice">{tr!("A trial is on. What is shared is the formula as saved.")}</p>
        </Show>
        <ShareLink />
        <ShareFiles />
        <ShareMore />
        <ImportFile />
    }
}

/// The formula, or all of them, as a file.
#[component]
fn ShareFiles() -> impl IntoView {
    let state = use_app_state();
    let refused = RwSignal::new("");
    let say = move |saved: Result<(), FileError>| {
        refused.set(if saved.is_ok() {
            ""
        } else {
            notice::file_refused()
        });
        saved.is_ok()
    };
    let save = move |name: &str, text: String| {
        let name = file_name(name, &clock::today(), "json");
        file::save(&name, "application/json", &text)
    };
    let all = move |()| {
        if say(save("softcrumb all", state.file_of_all())) {
            state.note_filed();
        }
    };
    let one = move |()| {
        let name = untrack(|| state.with_saved(|sheet| sheet.name.clone()));
        say(save(&name, state.file_of_one()));
    };
    view! {
        <h3>{tr!("As a file")}</h3>
        <div class="buttons">
            <Button label=tr!("Save this formula") on_tap=one />
            <Button label=tr!("Save all formulas") on_tap=all />
        </div>
        <p class="error">{refused}</p>
    }
}
