//! The foot: the trial that is on, and the quiet lines of storage, visit and new version.

use leptos::prelude::*;

use crate::app::browser::storage::{self, StorageTrouble};
use crate::app::browser::{clock, file, offline};
use crate::app::lazy;
use crate::app::part::Button;
use crate::app::state::{SaveError, is_newer, use_app_state};
use crate::sheet::Place;
use crate::storage::Fragment;
use crate::storage::Record;
use crate::text::{notice, tr};

/// The foot of the page.
#[component]
pub fn Foot() -> impl IntoView {
    let state = use_app_state();
    view! {
        <div class="foot">
            <Show when=move || state.newer_version.get()>
                <div class="notice" role="status">
                    <p>{notice::new_release()}</p>
                    <Button says=tr!("Open it") tapped=|()| offline::take_over() />
                </div>
            </Show>
            {move || state.toast.get().map(|(_, said)| view! { <p class="notice">{said}</p> })}
            {move || state.timer_alert.get().map(|said| view! { <Rang said /> })}
            {move || state.save_error.get().map(|keeps| view! { <Unkept keeps /> })}
            {move || state.link_trouble.get().map(|said| view! { <LinkTrouble said /> })}
            <Show when=move || state.is_visit()>
                <div class="notice" role="status">
                    <p>{notice::visitor()}</p>
                    <Button says=tr!("Keep it") tapped=move |()| state.keep_visit() />
                </div>
            </Show>
            <Show when=move || state.is_trial()>
                {lazy::trial_bar()}
            </Show>
        </div>
    }
}

/// What keeping came up against, in words.
fn said(keeps: &SaveError) -> &'static str {
    match keeps {
        SaveError::Storage(StorageTrouble::Blocked) => notice::storage_blocked(),
        SaveError::Storage(StorageTrouble::Full) => notice::storage_full(),
        SaveError::Storage(StorageTrouble::Newer) => notice::storage_newer(),
        SaveError::Record(_, error) if is_newer(error) => notice::storage_newer(),
        SaveError::Record(..) => notice::storage_damaged(),
    }
}

/// One quiet line: something was not kept, and can be saved to a file.
#[component]
fn Unkept(
    /// What happened.
    keeps: SaveError,
) -> impl IntoView {
    let state = use_app_state();
    let said = said(&keeps);
    let save = move || {
        // What cannot be opened is saved as it stands; otherwise the formula that is open.
        let text = match &keeps {
            SaveError::Record(key, _) => storage::get(key).ok().flatten(),
            SaveError::Storage(_) => None,
        };
        let text = text.unwrap_or_else(|| untrack(|| state.with_saved(Record::write)));
        // Where even this is refused, the line stays as it is.
        let _refused = file::save(
            &format!("softcrumb-{}.json", clock::today()),
            "application/json",
            &text,
        );
    };
    view! {
        <div class="notice" role="status">
            <p>{said}</p>
            <Button says=tr!("Save to a file") tapped=move |()| save() />
            <Button says=tr!("Close") class="bare" tapped=move |()| state.save_error.set(None) />
        </div>
    }
}

/// One line: a timer of the bake under way is over.
#[component]
fn Rang(
    /// Which.
    said: String,
) -> impl IntoView {
    let state = use_app_state();
    view! {
        <div class="notice" role="alert">
            <p>{said}</p>
            <a class="button" href=Fragment::Place(Place::Day).write()>{tr!("To the bench")}</a>
            <Button says=tr!("Close") class="bare" tapped=move |()| state.timer_alert.set(None) />
        </div>
    }
}

/// One quiet line: the link in the address cannot be opened.
#[component]
fn LinkTrouble(
    /// What is wrong with it.
    said: String,
) -> impl IntoView {
    let state = use_app_state();
    view! {
        <div class="notice" role="alert">
            <p>{said}</p>
            <Button says=tr!("Close") tapped=move |()| state.link_trouble.set(None) />
        </div>
    }
}
