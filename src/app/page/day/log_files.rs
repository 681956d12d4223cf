//! The log out to files, and back in from one.

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;
use web_sys::HtmlInputElement;

use super::photos;
use super::results::Day;
use crate::app::browser::file::{self, FileError};
use crate::app::browser::live_region::announce;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::sheet::day::LogImport;
use crate::storage::csv;
use crate::storage::record::{FILE_LIMIT, LogFile, Record};
use crate::text::{ErrorText, FormatOptions, day as day_text, notice, tr};

/// The log as files.
#[component]
pub fn LogFiles() -> impl IntoView {
    let day = Day::from_context();
    let any = memo(move || day.log.with(|log| !log.bakes().is_empty()));
    let wording = RwSignal::new(Vec::<String>::new());
    let saved = move |saved: Result<(), FileError>| {
        wording.set(match saved {
            Ok(()) => Vec::new(),
            Err(_) => vec![notice::file_refused().to_owned()],
        });
    };
    let table = move |()| {
        let text = day
            .zone
            .with_value(|zone| day.log.with_untracked(|log| csv::write(log, zone)));
        saved(file::save("softcrumb-log.csv", "text/csv", &text));
    };
    let whole = move |()| {
        let log = day.log.get_untracked();
        let file = LogFile {
            photos: photos::all(&log),
            log,
            refused: Vec::new(),
        };
        let text = file.write();
        saved(file::save("softcrumb-log.json", "application/json", &text));
    };
    let take = move |input: HtmlInputElement| {
        let options = day.state.options.get_untracked();
        let Some(file) = file::chosen(&input) else {
            return;
        };
        spawn_local(async move {
            let says = match file::text(file, FILE_LIMIT).await {
                Ok(text) => match LogFile::read(&text) {
                    Ok(found) => import_log(day, found, options),
                    Err(error) => vec![error.sentence(options)],
                },
                Err(FileError::TooLarge { bytes, most }) => {
                    vec![notice::file_too_large(bytes, most, options)]
                }
                Err(FileError::Refused) => vec![notice::file_refused().to_owned()],
            };
            announce(&says.join(" "));
            // The view that asked may have been removed meanwhile.
            let _gone = wording.try_set(says);
        });
    };
    view! {
        <div class="body buttons">
            <Show when=move || any.get()>
                <Button label=tr!("Save as a table") on_tap=table />
                <Button label=tr!("Save the log to a file") on_tap=whole />
            </Show>
            <label class="button file">
                {tr!("Import a log from a file")}
                <input type="file" class="visually-hidden" accept=".json,application/json" on:change:target=move |event| take(event.target()) />
            </label>
        </div>
        <div class="body" role="status">
            {move || wording.get().into_iter().map(|wording| view! { <p>{wording}</p> }).collect_view()}
        </div>
    }
}

/// Imports a file into the log and returns a report.
fn import_log(day: Day, found: LogFile, options: FormatOptions) -> Vec<String> {
    let LogFile {
        log,
        photos: pictures,
        refused,
    } = found;
    let mut imported = LogImport::default();
    day.change_log(|own| imported = own.import(log));
    let mut left = 0_u32;
    let new = pictures
        .iter()
        .filter(|(of, _)| imported.added.contains(of));
    for (of, picture) in new {
        if photos::save(of, picture).is_err() {
            left = left.saturating_add(1);
        }
    }
    if left > 0 {
        day.change_log(|own| own.look_for_photos(|of| photos::photo(of).is_some()));
    }
    let mut says = day_text::log_imported(&imported, left, options);
    says.extend(refused.iter().map(|error| error.sentence(options)));
    says
}
