//! Importing a recipe: read as far as it can be understood, shown line by line, then shelved.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use crate::app::browser::file::{self, FileError};
use crate::app::browser::live_region::announce;
use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::storage::interchange::{RECIPE_LIMIT, ReadRecipe, read_recipe};
use crate::text::{
    ErrorText, notice,
    share::{ImportedLine, RecipeView, recipe, recipe_names},
    tr,
};

/// Imports a recipe from a file.
#[component]
pub fn ImportRecipe() -> impl IntoView {
    let state = use_app_state();
    let read = RwSignal::new(None::<ReadRecipe>);
    let status = RwSignal::new(String::new());
    let take = move |input: web_sys::HtmlInputElement| {
        let options = state.options.get_untracked();
        let Some(file) = file::chosen(&input) else {
            return;
        };
        spawn_local(async move {
            let (found, says) = match file::text(file, RECIPE_LIMIT).await {
                Ok(text) => match read_recipe(&text, &recipe_names()) {
                    Ok(found) => {
                        let title = recipe(&found, options).title;
                        (Some(found), title)
                    }
                    Err(error) => (None, error.sentence(options)),
                },
                Err(FileError::TooLarge { bytes, most }) => {
                    (None, notice::file_too_large(bytes, most, options))
                }
                Err(FileError::Refused) => (None, notice::file_refused().to_owned()),
            };
            announce(&says);
            status.set(says);
            read.set(found);
        });
    };
    let view =
        move || read.with(|read| read.as_ref().map(|read| recipe(read, state.options.get())));
    let shelve = move |()| {
        if let Some(found) = read.get_untracked() {
            state.open_new(&found.sheet);
            announce(tr!("The recipe is on the shelf and open."));
            state.close();
        }
    };
    view! {
        <h3>{tr!("Import a recipe")}</h3>
        <p class="quiet">{tr!("A page saved from the browser, or its recipe data (schema.org). It is read on this device; nothing is sent.")}" "{tr!("Ingredients are read in English, Spanish and Japanese.")}</p>
        <label class="button file">
            {tr!("Open a recipe")}
            <input type="file" class="visually-hidden" accept=".html,.htm,.json,.jsonld,text/html,application/ld+json" on:change:target=move |event| take(event.target()) />
        </label>
        <p role="status">{status}</p>
        {move || view().map(|view| view! { <Lines view /> <Button label=tr!("Add to the shelf") class="primary" on_tap=shelve /> })}
    }
}

/// The result of each line.
#[component]
fn Lines(
    /// The results.
    view: RecipeView,
) -> impl IntoView {
    let line = |line: ImportedLine| {
        let class = if line.is_imported {
            "taken"
        } else {
            "not-taken"
        };
        view! { <li class=class><b>{line.text}</b> <br /> {line.says}</li> }
    };
    view! {
        <ul class="plain recipe-lines">{view.lines.into_iter().map(line).collect_view()}</ul>
        {view.left_out.map(|left| view! { <p class="quiet">{left}</p> })}
    }
}
