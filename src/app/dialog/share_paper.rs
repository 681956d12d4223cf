//! Paper: the bench card and the class sheet, and what is said before they are printed.

use leptos::portal::Portal;
use leptos::prelude::*;

use super::paper_pages::{CardPage, SheetPage};
use super::share_fold::{Handed, whole_link};
use crate::app::browser::print;
use crate::app::part::Button;
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::results::batch;
use crate::sheet::Sheet;
use crate::sheet::interchange::{SquareCode, square_code};
use crate::text::share::{BenchCard, ClassSheet, before_printing, bench_card, class_sheet};
use crate::text::{self, tr};

/// What is to be printed.
#[derive(Clone, PartialEq)]
enum Page {
    Card(BenchCard),
    Sheet(ClassSheet),
}

/// The two pages that are printed.
#[component]
pub fn PaperOut() -> impl IntoView {
    let state = use_app_state();
    let handed = Handed::here();
    let page = RwSignal::new(None::<Page>);
    let card = memo(move || card_of(state, &handed.sheet()));
    let sheet = memo(move || sheet_of(state, &handed.sheet()));
    let print_it = move |made: Option<Page>| {
        if made.is_some() {
            page.set(made);
            // Drawn before the dialog of the browser looks at the page.
            request_animation_frame(print::now);
        }
    };
    let said = move || {
        let said =
            card.with(|card| sheet.with(|sheet| before_printing(card.as_ref(), sheet.as_ref())));
        said.into_iter()
            .map(|said| view! { <p class="quiet">{said}</p> })
            .collect_view()
    };
    let print_card = move |()| print_it(card.get_untracked().map(Page::Card));
    let print_sheet = move |()| print_it(sheet.get_untracked().map(Page::Sheet));
    view! {
        <h3>{tr!("On paper")}</h3>
        <div class="buttons">
            <Button says=tr!("Print the bench card (A5)") tapped=print_card />
            <Button says=tr!("Print the class sheet (A4 or Letter)") tapped=print_sheet />
        </div>
        <div>{said}</div>
        <Portal>
            {move || match page.get() {
                Some(Page::Card(card)) => view! { <CardPage card /> }.into_any(),
                Some(Page::Sheet(sheet)) => view! { <SheetPage sheet /> }.into_any(),
                None => ().into_any(),
            }}
        </Portal>
    }
}

/// The card of the shared sheet, which is what its code opens.
fn card_of(state: AppState, sheet: &Sheet) -> Option<BenchCard> {
    let (options, desk) = (state.options.get(), WorkspaceStore::here());
    let batch = batch::of(sheet, state.kitchen.with(|kitchen| kitchen.scales));
    let code = code_of(sheet);
    desk.pantry
        .with(|pantry| bench_card(sheet, &batch, pantry, code.as_ref(), options))
}

fn sheet_of(state: AppState, sheet: &Sheet) -> Option<ClassSheet> {
    let (options, desk) = (state.options.get(), WorkspaceStore::here());
    let scales = state.kitchen.with(|kitchen| kitchen.scales);
    let class = batch::class::of(sheet, &desk.settings.get(), scales);
    let told = text::class::view(&class, options).ok()?;
    let code = code_of(sheet);
    let paper = desk
        .pantry
        .with(|pantry| class_sheet(sheet, &told, pantry, code.as_ref(), options));
    Some(paper)
}

/// The square code of a sheet's link; none where that is too long.
fn code_of(sheet: &Sheet) -> Option<SquareCode> {
    square_code(&whole_link(sheet).ok()?).ok()
}
