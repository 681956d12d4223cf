//! The formula as a file that other programs and people read.

use leptos::prelude::*;

use super::share_content::ShareContent;
use crate::app::browser::{clock, file};
use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::sheet::Sheet;
use crate::storage::interchange::{csv, write_recipe};
use crate::text::{
    FormatOptions,
    language::text,
    name, notice,
    share::{file_name, markdown, plain_text, steps},
    tr, tr_noop,
};

/// Writes a sheet in one form.
type Write = fn(&Sheet, FormatOptions) -> String;

/// The formats: label of the button, file extension, media type, writer.
const FORMS: [(&str, &str, &str, Write); 4] = [
    (
        tr_noop!("Table for spreadsheets (CSV)"),
        "csv",
        "text/csv;charset=utf-8",
        // The mark by which spreadsheets see that it is UTF-8.
        |sheet, _| format!("\u{feff}{}", csv(&sheet.formula, name::food)),
    ),
    (
        tr_noop!("Recipe data (schema.org)"),
        "recipe.json",
        "application/ld+json",
        |sheet, options| write_recipe(sheet, &steps(sheet, options), name::food),
    ),
    (
        tr_noop!("Plain text"),
        "txt",
        "text/plain;charset=utf-8",
        plain_text,
    ),
    (
        tr_noop!("Markdown"),
        "md",
        "text/markdown;charset=utf-8",
        markdown,
    ),
];

/// The formula in other forms.
#[component]
pub fn ShareText() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let refused = RwSignal::new("");
    let save = move |ending: &str, kind: &str, write: Write| {
        let options = state.options.get_untracked();
        let text = untrack(|| write(&content.for_file(), options));
        let formula = untrack(|| state.with_saved(|sheet| sheet.name.clone()));
        let name = file_name(&formula, &clock::today(), ending);
        let saved = file::save(&name, kind, &text);
        refused.set(if saved.is_ok() {
            ""
        } else {
            notice::file_refused()
        });
    };
    let buttons = FORMS.map(|(says, ending, kind, write)| {
        view! { <Button label=text(says) on_tap=move |()| save(ending, kind, write) /> }
    });
    view! {
        <h3>{tr!("Other formats")}</h3>
        <div class="buttons">{buttons}</div>
        <p class="error">{refused}</p>
    }
}
