//! The formula as a link: copied, shared, and made shorter where that is wanted.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::share_fold::{Handed, whole_link};
use crate::app::browser::live_region::announce;
use crate::app::browser::{address, clipboard, share};
use crate::app::part::Button;
use crate::app::state::{memo, use_app_state};
use crate::text::share::{Shortened, shortened};
use crate::text::{Trouble, tr};

/// The formula as a link.
#[component]
pub fn LinkOut() -> impl IntoView {
    let state = use_app_state();
    let handed = Handed::here();
    let link = memo(move || whole_link(&handed.sheet()));
    let text = move || link.with(|link| link.clone().unwrap_or_default());
    let there = memo(move || link.with(Result::is_ok));
    let said = RwSignal::new("");
    let copy = move |()| {
        spawn_local(async move {
            let copied = clipboard::copy(link.get_untracked().unwrap_or_default()).await;
            let says = match copied {
                Ok(()) => tr!("Copied."),
                Err(clipboard::NotCopied) => {
                    tr!("This browser does not copy by itself: mark the link and copy it.")
                }
            };
            said.set(says);
            announce(says);
        });
    };
    let pass_on = move |()| {
        let name = untrack(|| state.with_saved(|sheet| sheet.name.clone()));
        share::link(&name, &link.get_untracked().unwrap_or_default());
    };
    let trouble = move || {
        let options = state.options.get();
        link.with(|link| link.as_ref().err().map(|error| error.sentence(options)))
    };
    view! {
        <Show when=move || there.get()>
            <div class="text-box">
                <label for="link">{tr!("A link that holds the whole formula; nothing is sent anywhere")}</label>
                <textarea id="link" readonly rows="3" prop:value=text></textarea>
            </div>
            <div class="buttons">
                <Button says=tr!("Copy the link") class="chief" tapped=copy />
                {share::can().then(|| view! { <Button says=tr!("Share the link") tapped=pass_on /> })}
            </div>
            <p class="quiet">{said}</p>
        </Show>
        {move || trouble().map(|said| view! { <p class="trouble" role="alert">{said}</p> })}
        <Shorten />
    }
}

/// What can be left out of link and code, one tap each; the formula itself keeps it.
#[component]
fn Shorten() -> impl IntoView {
    let state = use_app_state();
    let handed = Handed::here();
    let told = memo(move || {
        let options = state.options.get();
        shortened(
            &handed.saved(),
            &handed.left_out.get(),
            &address::page(),
            options,
        )
    });
    let button = move |one: Shortened| {
        let part = one.component;
        view! { <Button says=one.says tapped=move |()| handed.turn(part) /> }
    };
    let any = memo(move || told.with(|told| !told.is_empty()));
    view! {
        <Show when=move || any.get()>
            <details class="fold within">
                <summary>
                    <span class="title">{tr!("Make link and code shorter")}</span>
                </summary>
                <div class="body">
                    <p class="quiet">{tr!("Only the link and its code lose it. The formula keeps everything.")}</p>
                    <div class="buttons">{move || told.get().into_iter().map(button).collect_view()}</div>
                </div>
            </details>
        </Show>
    }
}
