//! The foot: notices of storage, visit, timers and a new version, and the trial bar.

use leptos::prelude::*;

use crate::app::browser::storage::{self, StorageError};
use crate::app::browser::{clock, file, offline};
use crate::app::lazy::{self, records};
use crate::app::part::Button;
use crate::app::state::{SaveError, is_newer, use_app_state};
use crate::sheet::Place;
use crate::storage::Fragment;
use crate::text::{notice, tr};

/// The foot of the page.
#[component]
pub fn Foot() -> impl IntoView {
    let state = use_app_state();
    let tells_of_bake = move || state.bake_waits.get() && state.place.get() != Place::Day;
    view! {
        <div class="foot">
            <Show when=move || state.newer_version.get()>
                <div class="notice" role="status">
                    <p>{notice::new_release()}</p>
                    <Button label=tr!("Open it") on_tap=|()| offline::take_over() />
                </div>
            </Show>
            {move || state.toast.get().map(|(_, sentence)| view! { <p class="notice">{sentence}</p> })}
            {move || state.timer_alert.get().map(|sentence| view! { <TimerAlert sentence /> })}
            {move || state.save_error.get().map(|error| view! { <SaveErrorNotice error /> })}
            {move || state.link_error.get().map(|sentence| view! { <LinkErrorNotice sentence /> })}
            <Show when=tells_of_bake>{lazy::bake_notice()}</Show>
            // One after the other: two would fill a phone.
            <Show when=move || state.is_visit() && !tells_of_bake()>{lazy::visit_notice()}</Show>
            <Show when=move || state.is_trial()>
                {lazy::trial_bar()}
            </Show>
        </div>
    }
}

/// The notice of a save error.
fn sentence(error: &SaveError) -> &'static str {
    match error {
        SaveError::Storage(StorageError::Blocked) => notice::storage_blocked(),
        SaveError::Storage(StorageError::Full) => notice::storage_full(),
        SaveError::Storage(StorageError::Newer) => notice::storage_newer(),
        SaveError::Record(_, error) if is_newer(error) => notice::storage_newer(),
        SaveError::Record(..) => notice::storage_damaged(),
    }
}

/// A notice: something was not saved, and can be saved to a file.
#[component]
fn SaveErrorNotice(
    /// The error.
    error: SaveError,
) -> impl IntoView {
    let state = use_app_state();
    let sentence = sentence(&error);
    let save = move || {
        // A record that cannot be opened is saved unchanged; otherwise the open formula is saved.
        let text = match &error {
            SaveError::Record(key, _) => storage::get(key).ok().flatten(),
            SaveError::Storage(_) => None,
        };
        let text = text.or_else(|| untrack(|| state.with_saved(records::write_sheet)));
        let Some(text) = text else {
            return state.show_toast(notice::not_loaded());
        };
        // Where the browser refuses this too, the notice stays.
        let _refused = file::save(
            &format!("softcrumb-{}.json", clock::today()),
            "application/json",
            &text,
        );
    };
    view! {
        <div class="notice" role="status">
            <p>{sentence}</p>
            <Button label=tr!("Save to a file") on_tap=move |()| save() />
            <Button label=tr!("Close") class="bare" on_tap=move |()| state.save_error.set(None) />
        </div>
    }
}

/// A notice: a timer of the active bake is over.
#[component]
fn TimerAlert(
    /// Its sentence.
    sentence: String,
) -> impl IntoView {
    let state = use_app_state();
    view! {
        <div class="notice" role="alert">
            <p>{sentence}</p>
            <a class="button" href=Fragment::Place(Place::Day).write()>{tr!("To the bench")}</a>
            <Button label=tr!("Close") class="bare" on_tap=move |()| state.timer_alert.set(None) />
        </div>
    }
}

/// A notice: the link in the address cannot be opened.
#[component]
fn LinkErrorNotice(
    /// Its sentence.
    sentence: String,
) -> impl IntoView {
    let state = use_app_state();
    view! {
        <div class="notice" role="alert">
            <p>{sentence}</p>
            <Button label=tr!("Close") on_tap=move |()| state.link_error.set(None) />
        </div>
    }
}
