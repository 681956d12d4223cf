//! The formula as a link: copied, shared, and shortened where wanted.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use super::share_content::{ShareContent, full_link};
use crate::app::browser::live_region::announce;
use crate::app::browser::{address, clipboard, share};
use crate::app::part::{Button, Choice};
use crate::app::state::{memo, use_app_state};
use crate::text::share::{Shortened, shortened};
use crate::text::{ErrorText, tr};

/// The formula as a link.
#[component]
pub fn ShareLink() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let link = memo(move || full_link(&content.sheet()));
    let text = move || link.with(|link| link.clone().unwrap_or_default());
    let is_there = memo(move || link.with(Result::is_ok));
    let status = RwSignal::new("");
    let copy = move |()| {
        spawn_local(async move {
            let copied = clipboard::copy(link.get_untracked().unwrap_or_default()).await;
            let sentence = match copied {
                Ok(()) => tr!("Copied."),
                Err(clipboard::NotCopied) => {
                    tr!("This browser does not copy by itself: mark the link and copy it.")
                }
            };
            status.set(sentence);
            announce(sentence);
        });
    };
    let pass_on = move |()| {
        let name = untrack(|| state.with_saved(|sheet| sheet.name.clone()));
        share::link(&name, &link.get_untracked().unwrap_or_default());
    };
    let error = move || {
        let options = state.options.get();
        link.with(|link| link.as_ref().err().map(|error| error.sentence(options)))
    };
    view! {
        <Show when=move || content.class().is_some()>
            <Choice id="share-class" label=tr!("Weights for") choices=for_whom() selected=content.whole_class on_select=Callback::new(move |whole| content.whole_class.set(whole)) />
        </Show>
        <Show when=move || is_there.get()>
            <div class="text-box">
                <label for="link">{tr!("A link that holds the whole formula; nothing is sent anywhere")}</label>
                <textarea id="link" readonly rows="3" prop:value=text></textarea>
            </div>
            <div class="buttons">
                <Button label=tr!("Copy the link") class="primary" on_tap=copy />
                {share::can().then(|| view! { <Button label=tr!("Share the link") on_tap=pass_on /> })}
            </div>
            <p class="quiet">{status}</p>
        </Show>
        {move || error().map(|sentence| view! { <p class="error" role="alert">{sentence}</p> })}
        <Shorten />
    }
}

/// Whose weights of a class are shared.
fn for_whom() -> Vec<(bool, &'static str)> {
    vec![(false, tr!("one bench")), (true, tr!("the whole class"))]
}

/// Parts to leave out of link and code, one tap each; the stored formula does not change.
#[component]
fn Shorten() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let parts = memo(move || {
        let options = state.options.get();
        shortened(
            &content.saved(),
            &content.left_out.get(),
            &address::page(),
            options,
        )
    });
    let button = move |one: Shortened| {
        let part = one.component;
        view! { <Button label=one.says on_tap=move |()| content.toggle(part) /> }
    };
    let any = memo(move || parts.with(|parts| !parts.is_empty()));
    view! {
        <Show when=move || any.get()>
            <details class="fold within">
                <summary>
                    <span class="title">{tr!("Make link and code shorter")}</span>
                </summary>
                <div class="body">
                    <p class="quiet">{tr!("Only the link and its code lose it. The formula keeps everything.")}</p>
                    <div class="buttons">{move || parts.get().into_iter().map(button).collect_view()}</div>
                </div>
            </details>
        </Show>
    }
}
