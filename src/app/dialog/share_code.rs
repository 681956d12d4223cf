//! More ways to share: the square code, paper, other formats; and importing a recipe.

use leptos::prelude::*;

use super::import_recipe::ImportRecipe;
use super::share_content::{ShareContent, full_link};
use super::share_paper::SharePaper;
use super::share_text::ShareText;
use crate::app::browser::{clock, file};
use crate::app::part::Button;
use crate::app::state::{memo, use_app_state};
use crate::storage::interchange::{SquareCode, png};
use crate::text::{
    share::{CodeView, code, file_name},
    tr,
};

/// The square code, paper, other formats, and the import of a recipe.
#[component]
pub fn ShareMore() -> impl IntoView {
    view! {
        <ShareCode />
        <SharePaper />
        <ShareText />
        <ImportRecipe />
    }
}

/// The link as a square code, or a notice that it is too long for one.
#[component]
fn ShareCode() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let view = memo(move || {
        let sheet = content.sheet();
        let whole = full_link(&sheet).ok()?;
        Some(code(&sheet, &whole, state.options.get()))
    });
    move || match view.get() {
        Some(CodeView::Drawn { code, svg, says }) => {
            view! { <Drawn code svg label=says /> }.into_any()
        }
        Some(CodeView::TooLong { says }) => view! {
            <h3>{tr!("As a square code")}</h3>
            <p>{says}" "{tr!("Shorten the link above.")}</p>
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
    /// Its picture.
    svg: String,
    /// Its description.
    label: String,
) -> impl IntoView {
    let refused = RwSignal::new("");
    let saved = move |saved: Result<(), file::FileError>| {
        refused.set(if saved.is_ok() {
            ""
        } else {
            crate::text::notice::file_refused()
        });
    };
    let state = use_app_state();
    let name = move |ending: &str| {
        let formula = untrack(|| state.with_saved(|sheet| sheet.name.clone()));
        file_name(&format!("{formula} code"), &clock::today(), ending)
    };
    let whole = RwSignal::new(false);
    let full = Signal::derive(move || {
        let says = if whole.get() {
            tr!("Close the code")
        } else {
            tr!("Full screen")
        };
        says.to_owned()
    });
    let picture = svg.clone();
    // The element around it has the label.
    let svg = svg.replacen("<svg ", "<svg aria-hidden=\"true\" ", 1);
    let as_svg = move |()| saved(file::save(&name("svg"), "image/svg+xml", &picture));
    let as_png = move |()| saved(file::save_bytes(&name("png"), "image/png", &png(&code, 12)));
    view! {
        <h3>{tr!("As a square code")}</h3>
        <div class="square-code" class:whole=move || whole.get() role="img" aria-label=label inner_html=svg on:click=move |_| whole.set(false)></div>
        <div class="buttons">
            <Button label=full class="above-code" on_tap=move |()| whole.update(|whole| *whole = !*whole) />
            <Button label=tr!("Save the code as SVG") on_tap=as_svg />
            <Button label=tr!("Save the code as PNG") on_tap=as_png />
        </div>
        <p class="error">{refused}</p>
    }
}
