//! Sharing on paper: the cards and the class sheet, with notices before they are printed.

use leptos::portal::Portal;
use leptos::prelude::*;

use super::paper_content::{Paged, bench_cards, class_paper, first_card, teachers_card};
use super::paper_pages::{CardPage, SHEET_CLASS, SheetPage, card_class};
use super::share_content::ShareContent;
use crate::app::browser::print;
use crate::app::part::Button;
use crate::app::state::{memo, use_app_state};
use crate::text::share::{Paper, before_printing, fitted};
use crate::text::tr;

/// The papers a page may be printed on, in the order in which they are tried.
const fn papers(page: &Paged) -> &'static [Paper] {
    match page {
        Paged::Card(card) if matches!(card.fit.paper, Paper::A5) => &[Paper::A5, Paper::A4],
        Paged::Card(_) | Paged::Sheet(_) => &[Paper::A4],
    }
}

/// Gives each page the largest type at which it fits on its paper.
fn fit_to_paper(pages: &[Paged]) {
    for (page, drawn) in pages.iter().zip(print::pages()) {
        let class = |paper: Paper| match page {
            Paged::Card(_) => card_class(paper),
            Paged::Sheet(_) => SHEET_CLASS,
        };
        let set = |paper: Paper, points: f64| print::set(&drawn, class(paper), points);
        let fit = fitted(papers(page), set);
        set(fit.paper, fit.points);
    }
}

/// The pages that are printed.
#[component]
pub fn SharePaper() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let pages = RwSignal::new(Vec::<Paged>::new());
    let card = memo(move || first_card(state, content));
    let sheet = memo(move || class_paper(state, content));
    let print_all = move |chosen: Vec<Paged>| {
        if !chosen.is_empty() {
            pages.set(chosen);
            // The pages are drawn before they are measured, and before the print dialog reads them.
            request_animation_frame(move || {
                pages.with_untracked(|pages| fit_to_paper(pages));
                print::now();
            });
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
    let print_cards = move |()| print_all(untrack(|| bench_cards(state, content)));
    let print_teachers = move |()| print_all(untrack(|| teachers_card(state, content)));
    let print_sheet = move |()| {
        print_all(
            sheet
                .get_untracked()
                .map(Paged::Sheet)
                .into_iter()
                .collect(),
        );
    };
    let page = |page: Paged| match page {
        Paged::Card(card) => view! { <CardPage card /> }.into_any(),
        Paged::Sheet(sheet) => view! { <SheetPage sheet /> }.into_any(),
    };
    view! {
        <h3>{tr!("On paper")}</h3>
        <div class="buttons">
            <Button label=tr!("Print the bench card (A5)") on_tap=print_cards />
            <Button label=tr!("Print the teacher’s card") on_tap=print_teachers />
            <Button label=tr!("Print the class sheet (A4 or Letter)") on_tap=print_sheet />
        </div>
        <div>{notices}</div>
        <Portal>{move || pages.get().into_iter().map(page).collect_view()}</Portal>
    }
}
