//! Importing formulas from a file, with a report of what could not be read.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use crate::app::browser::file::{self, FileError};
use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, use_app_state};
use crate::sheet::Added;
use crate::storage::record::{FILE_LIMIT, FormulaFile, Record};
use crate::text::{ErrorText, FormatOptions, import_report, notice, tr};

/// Imports formulas from a file.
#[component]
pub fn ImportFile() -> impl IntoView {
    let state = use_app_state();
    let report = RwSignal::new(Vec::<String>::new());
    let take = move |input: web_sys::HtmlInputElement| {
        let options = state.options.get_untracked();
        if state.trial.with_untracked(Option::is_some) {
            report.set(vec![
                tr!("A trial is on. Keep it or drop it first.").to_owned(),
            ]);
            return;
        }
        let Some(file) = file::chosen(&input) else {
            return;
        };
        spawn_local(async move {
            let lines = match file::text(file, FILE_LIMIT).await {
                Ok(text) => import(state, &text, options),
                Err(FileError::TooLarge { bytes, most }) => {
                    vec![notice::file_too_large(bytes, most, options)]
                }
                Err(FileError::Refused) => vec![notice::file_refused().to_owned()],
            };
            announce(&lines.join(" "));
            report.set(lines);
        });
    };
    let sentences = move || {
        report
            .get()
            .into_iter()
            .map(|line| view! { <p>{line}</p> })
            .collect_view()
    };
    view! {
        <h3>{tr!("Import")}</h3>
        <label class="button file">
            {tr!("Open a file of formulas")}
            <input type="file" class="visually-hidden" accept=".json,application/json" on:change:target=move |event| take(event.target()) />
        </label>
        <div role="status">{sentences}</div>
    }
}

/// Adds the formulas of a file to the shelf, and reports the result.
fn import(state: AppState, text: &str, options: FormatOptions) -> Vec<String> {
    match FormulaFile::read(text) {
        Ok(found) => {
            let added = state.import_all(&found);
            report(&found, added, options)
        }
        Err(error) => vec![error.sentence(options)],
    }
}

fn report(found: &FormulaFile, added: Added, options: FormatOptions) -> Vec<String> {
    let refused = found.refused.iter().map(|error| error.sentence(options));
    let beside = import_report::beside(added);
    let nothing_else = beside.is_none() || !found.formulas.is_empty();
    nothing_else
        .then(|| import_report::formulas_imported(found.formulas.len()))
        .into_iter()
        .chain(beside)
        .chain(refused)
        .collect()
}
