//! Sharing on paper: the bench card and the class sheet, with notices before they are printed.

use leptos::portal::Portal;
use leptos::prelude::*;

use super::paper_pages::{CardPage, SheetPage};
use super::share_content::{ShareContent, full_link};
use crate::app::browser::print;
use crate::app::page::Day;
use crate::app::part::Button;
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::results::batch;
use crate::results::day::{as_the_run_bakes, usual_run};
use crate::sheet::Sheet;
use crate::sheet::day::Target;
use crate::storage::interchange::{SquareCode, square_code};
use crate::text::share::{
    BenchCard, ClassSheet, before_printing, bench_card, class_sheet, with_ready, with_run,
};
use crate::text::{self, tr};

/// What is to be printed.
#[derive(Clone, PartialEq)]
enum Page {
    Card(BenchCard),
    Sheet(ClassSheet),
}

/// The two pages that are printed.
#[component]
pub fn SharePaper() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let page = RwSignal::new(None::<Page>);
    let card = memo(move || card_of(state, &content.sheet()));
    let sheet = memo(move || sheet_of(state, &content.sheet()));
    let print_it = move |chosen: Option<Page>| {
        if chosen.is_some() {
            page.set(chosen);
            // The page is drawn before the browser's print dialog reads it.
            request_animation_frame(print::now);
        }
    };
    let notices = move || {
        let notices =
            card.with(|card| sheet.with(|sheet| before_printing(card.as_ref(), sheet.as_ref())));
        notices
            .into_iter()
            .map(|notice| view! { <p class="quiet">{notice}</p> })
            .collect_view()
    };
    let print_card = move |()| {
        let card = card.get_untracked();
        let dated = card.map(|card| match untrack(|| ready_of_plan(state)) {
            Some(ready) => with_ready(card, ready, code_of(&untrack(|| content.sheet())).as_ref()),
            None => card,
        });
        print_it(dated.map(Page::Card));
    };
    let print_sheet = move |()| print_it(sheet.get_untracked().map(Page::Sheet));
    view! {
        <h3>{tr!("On paper")}</h3>
        <div class="buttons">
            <Button label=tr!("Print the bench card (A5)") on_tap=print_card />
            <Button label=tr!("Print the class sheet (A4 or Letter)") on_tap=print_sheet />
        </div>
        <div>{notices}</div>
        <Portal>
            {move || match page.get() {
                Some(Page::Card(card)) => view! { <CardPage card /> }.into_any(),
                Some(Page::Sheet(sheet)) => view! { <SheetPage sheet /> }.into_any(),
                None => ().into_any(),
            }}
        </Portal>
    }
}

/// Between when the bread is ready, where the plan of the open formula has a time of its own.
fn ready_of_plan(state: AppState) -> Option<String> {
    let day = Day::from_context();
    day.open();
    let is_set = day
        .settings
        .with(|settings| settings.target != Target::Open);
    let options = state.options.get();
    let ready = day.read(|results| {
        day.zone
            .with_value(|zone| text::day::ready(results, zone, options))
    });
    ready.flatten().filter(|_| is_set)
}

/// The card of the shared sheet, which is what its code opens.
fn card_of(state: AppState, sheet: &Sheet) -> Option<BenchCard> {
    let (options, workspace) = (state.options.get(), WorkspaceStore::from_context());
    let batch = batch::of(sheet, state.kitchen.with(|kitchen| kitchen.scales));
    let code = code_of(sheet);
    let card = workspace
        .pantry
        .with(|pantry| bench_card(sheet, &batch, pantry, code.as_ref(), options))?;
    let day = Day::from_context();
    let (settings, learnt) = (day.settings.get(), day.learnt.get());
    let run = state
        .kitchen
        .with(|kitchen| usual_run(sheet, kitchen, (&settings, &learnt)));
    Some(with_run(card, sheet, &run, code.as_ref(), options))
}

fn sheet_of(state: AppState, sheet: &Sheet) -> Option<ClassSheet> {
    let (options, workspace) = (state.options.get(), WorkspaceStore::from_context());
    let settings = workspace.settings.get();
    let day = Day::from_context();
    let (planned, learnt) = (day.settings.get(), day.learnt.get());
    let class = state.kitchen.with(|kitchen| {
        let settings = as_the_run_bakes(sheet, settings, kitchen, (&planned, &learnt));
        batch::class::of(sheet, &settings, kitchen.scales)
    });
    let view = text::class::view(&class, options).ok()?;
    let code = code_of(sheet);
    let paper = workspace
        .pantry
        .with(|pantry| class_sheet(sheet, &view, pantry, code.as_ref(), options));
    Some(paper)
}

/// The square code of a sheet's link; none where that is too long.
fn code_of(sheet: &Sheet) -> Option<SquareCode> {
    square_code(&full_link(sheet).ok()?).ok()
}
