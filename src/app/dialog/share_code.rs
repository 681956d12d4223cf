//! More ways of handing out: the square code, paper, other files; and a recipe taken in.

use leptos::prelude::*;

use super::import_recipe::TakeRecipe;
use super::share_fold::{Handed, whole_link};
use super::share_paper::PaperOut;
use super::share_text::TextsOut;
use crate::app::browser::{clock, file};
use crate::app::part::Button;
use crate::app::state::{memo, use_app_state};
use crate::storage::interchange::{SquareCode, png};
use crate::text::{
    share::{CodeView, code},
    tr,
};

/// The square code, paper, other files; and a recipe taken in.
#[component]
pub fn HandMore() -> impl IntoView {
    view! {
        <CodeOut />
        <PaperOut />
        <TextsOut />
        <TakeRecipe />
    }
}

/// The link as a square code, or what to leave out so that it becomes one.
#[component]
fn CodeOut() -> impl IntoView {
    let state = use_app_state();
    let handed = Handed::here();
    let told = memo(move || {
        let sheet = handed.sheet();
        let whole = whole_link(&sheet).ok()?;
        Some(code(&sheet, &whole, state.options.get()))
    });
    move || match told.get() {
        Some(CodeView::Drawn { code, svg, says }) => view! { <Drawn code svg says /> }.into_any(),
        Some(CodeView::TooLong { says }) => view! {
            <h3>{tr!("As a square code")}</h3>
            <p>{says}" "{tr!("Make it shorter above.")}</p>
        }
        .into_any(),
        None => ().into_any(),
    }
}

/// The code, drawn, and as a file.
#[component]
fn Drawn(
    /// The code.
    code: SquareCode,
    /// As a picture.
    svg: String,
    /// What it is.
    says: String,
) -> impl IntoView {
    let refused = RwSignal::new("");
    let saved = move |saved: Result<(), file::FileTrouble>| {
        refused.set(if saved.is_ok() {
            ""
        } else {
            crate::text::notice::file_refused()
        });
    };
    let name = |ending: &str| format!("softcrumb-code-{}.{ending}", clock::today());
    let picture = svg.clone();
    // The box around it says what it is.
    let svg = svg.replacen("<svg ", "<svg aria-hidden=\"true\" ", 1);
    let as_svg = move |()| saved(file::save(&name("svg"), "image/svg+xml", &picture));
    let as_png = move |()| saved(file::save_bytes(&name("png"), "image/png", &png(&code, 12)));
    view! {
        <h3>{tr!("As a square code")}</h3>
        <div class="square-code" role="img" aria-label=says inner_html=svg></div>
        <div class="buttons">
            <Button says=tr!("Save the code as SVG") tapped=as_svg />
            <Button says=tr!("Save the code as PNG") tapped=as_png />
        </div>
        <p class="trouble">{refused}</p>
    }
}
