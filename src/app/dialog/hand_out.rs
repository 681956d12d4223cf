//! Handing out: a link, a file of one formula or of all, paper; and a file taken in.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::take_in::TakeIn;
use crate::app::browser::announce::announce;
use crate::app::browser::file::{self, FileTrouble};
use crate::app::browser::{address, clipboard, clock, share};
use crate::app::later;
use crate::app::part::Button;
use crate::app::state::State;
use crate::sheet::{Fragment, link};
use crate::words::{Trouble, notice, say};

/// Hands the formula out.
#[component]
pub fn HandOutDialog() -> impl IntoView {
    let state = State::here();
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

/// The formula as a link.
#[component]
fn LinkOut() -> impl IntoView {
    let state = State::here();
    let written = untrack(|| state.with_kept(link::write));
    let said = RwSignal::new("");
    let copy = move |text: String| {
        spawn_local(async move {
            let copied = clipboard::copy(text).await;
            let says = match copied {
                Ok(()) => say!("Copied."),
                Err(clipboard::NotCopied) => {
                    say!("This browser does not copy by itself: mark the link and copy it.")
                }
            };
            said.set(says);
            announce(says);
        });
    };
    match written {
        Ok(text) => {
            let whole = format!("{}{}", address::page(), Fragment::Loaf(text).write());
            let copied = whole.clone();
            let shared = whole.clone();
            view! {
                <div class="text-box">
                    <label for="link">{say!("A link that holds the whole formula; nothing is sent anywhere")}</label>
                    <textarea id="link" readonly rows="3" prop:value=whole></textarea>
                </div>
                <div class="buttons">
                    <Button says=say!("Copy the link") class="chief" tapped=move |()| copy(copied.clone()) />
                    {share::can().then(|| view! { <Button says=say!("Share the link") tapped=move |()| share::link(&state.with_kept(|sheet| sheet.name.clone()), &shared) /> })}
                </div>
                <p class="quiet">{said}</p>
            }
            .into_any()
        }
        Err(error) => {
            view! { <p class="trouble">{error.sentence(state.manner.get_untracked())}</p> }
                .into_any()
        }
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
