//! The photo of a bake: taken or chosen, made small, shown, removed.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;

use super::photos;
use crate::app::browser::live_region::announce;
use crate::app::browser::{file, photo};
use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::sheet::Id;
use crate::sheet::day::Bake;
use crate::text::{day as day_text, tr};

/// The photo of a bake, or the ways to one.
#[component]
pub fn PhotoBox(
    /// Which bake.
    bake: Id,
    /// What is shown to those who do not see it.
    #[prop(into)]
    alt: Signal<String>,
    /// Called with whether there is one.
    has: Callback<bool>,
) -> impl IntoView {
    let state = use_app_state();
    let shown = RwSignal::new(photos::photo(&bake));
    let wording = RwSignal::new(String::new());
    let bake = StoredValue::new(bake);
    let say_it = move |text: String| {
        announce(&text);
        // The view that asked may have been removed meanwhile.
        let _gone = wording.try_set(text);
    };
    let take = move |input: HtmlInputElement| {
        let options = state.options.get_untracked();
        let Some(file) = file::chosen(&input) else {
            return;
        };
        spawn_local(async move {
            match photo::small(file, Bake::PHOTO_LENGTH).await {
                Ok(text) => {
                    let saved = bake.try_with_value(|bake| photos::save(bake, &text));
                    match saved {
                        Some(Ok(())) => {
                            has.run(true);
                            let _gone = shown.try_set(Some(text));
                            say_it(day_text::photo_stored().to_owned());
                        }
                        Some(Err(error)) => say_it(no_room(error).to_owned()),
                        None => {}
                    }
                }
                Err(error) => say_it(refused(error, options)),
            }
        });
    };
    let remove = move |()| {
        bake.with_value(photos::remove);
        has.run(false);
        shown.set(None);
        say_it(day_text::photo_gone().to_owned());
    };
    let picture = move || {
        shown.get().map(|text| {
            view! {
                <img class="photo" src=text alt=alt />
                <Button label=tr!("Remove the photo") class="danger" on_tap=remove />
            }
        })
    };
    view! {
        <div class="photo-box">
            {picture}
            <div class="buttons">
                <label class="button file">
                    {tr!("Take a photo")}
                    <input type="file" class="visually-hidden" accept="image/*" capture="environment" on:change:target=move |event| take(event.target()) />
                </label>
                <label class="button file">
                    {tr!("Choose a photo")}
                    <input type="file" class="visually-hidden" accept="image/*" on:change:target=move |event| take(event.target()) />
                </label>
            </div>
            <p role="status">{wording}</p>
        </div>
    }
}

fn no_room(error: crate::app::browser::storage::StorageError) -> &'static str {
    use crate::app::browser::storage::StorageError;
    use crate::text::notice;
    match error {
        StorageError::Full => day_text::photos_full(),
        StorageError::Blocked => notice::storage_blocked(),
        StorageError::Newer => notice::storage_newer(),
    }
}

fn refused(error: photo::PhotoError, options: crate::text::FormatOptions) -> String {
    match error {
        photo::PhotoError::TooLarge(bytes) => {
            day_text::photo_too_large(bytes, photo::MOST, options)
        }
        photo::PhotoError::NotAPicture => day_text::not_a_picture().to_owned(),
        photo::PhotoError::Broken => day_text::picture_broken().to_owned(),
    }
}
