//! Sharing on paper: the cards and the class sheet, with notices before they are printed.

use leptos::portal::Portal;
use leptos::prelude::*;

use super::paper_content::{Paged, bench_cards, class_paper, first_card, teachers_card};
use super::paper_pages::{CardPage, SHEET_CLASS, SheetPage, card_class};
use super::share_content::ShareContent;
use crate::app::browser::{clock, print};
use crate::app::part::Button;
use crate::app::state::{AppState, memo, use_app_state};
use crate::text::share::{BenchCard, Paper, before_printing, fitted};
use crate::text::tr;

/// The papers a page may be printed on, in the order in which they are tried.
const fn papers(page: &Paged) -> &'static [Paper] {
    match page {
        Paged::Card(card) if matches!(card.fit.paper, Paper::A5) => &[Paper::A5, Paper::A4],
        Paged::Card(_) | Paged::Sheet(_) => &[Paper::A4],
    }
}

/// Gives each page the largest type at which it fits on its paper; whether all of them are A5.
fn fit_to_paper(pages: &[Paged]) -> bool {
    let mut all_small = true;
    for (page, drawn) in pages.iter().zip(print::pages()) {
        let class = |paper: Paper| match page {
            Paged::Card(_) => card_class(paper),
            Paged::Sheet(_) => SHEET_CLASS,
        };
        let set = |paper: Paper, points: f64| print::set(&drawn, class(paper), points);
        let fit = fitted(papers(page), set);
        set(fit.paper, fit.points);
        all_small &= matches!(fit.paper, Paper::A5);
    }
    all_small
}

/// How the button for cards is called: by the paper they are printed on, once that is measured.
fn card_button(are_small: Option<bool>) -> String {
    match are_small {
        Some(true) => tr!("Print the bench card (A5)"),
        Some(false) => tr!("Print the bench card (A4 or Letter)"),
        None => tr!("Print the bench card"),
    }
    .to_owned()
}

/// The pages in the document, and how often they were asked for.
#[derive(Clone, Copy)]
struct Pages {
    now: RwSignal<Vec<Paged>>,
    asked: StoredValue<u32>,
}

impl Pages {
    fn ask(self) -> u32 {
        let asked = self.asked.get_value().wrapping_add(1);
        self.asked.set_value(asked);
        asked
    }

    /// Whether the dialog is open, and nothing else was asked for since.
    fn is_last(self, asked: u32) -> bool {
        self.asked.try_get_value() == Some(asked)
    }

    /// Prints some pages.
    fn print(self, chosen: Vec<Paged>) {
        if chosen.is_empty() {
            return;
        }
        self.ask();
        self.now.set(chosen);
        // The pages are drawn before they are measured, and before the print dialog reads them.
        request_animation_frame(move || {
            let _are_small = self.now.with_untracked(|pages| fit_to_paper(pages));
            print::now();
        });
    }

    /// Whether all cards are printed on A5: they are laid out as they are printed, out of sight,
    /// after the frame in which they changed, and measured.
    fn measured(
        self,
        state: AppState,
        content: ShareContent,
        card: Memo<Option<BenchCard>>,
    ) -> RwSignal<Option<bool>> {
        let are_small = RwSignal::new(None);
        Effect::new(move |_| {
            card.track();
            are_small.set(None);
            let asked = self.ask();
            clock::after_frame(move || {
                if !self.is_last(asked) {
                    return;
                }
                let cards = state.with_root_owner(|| untrack(|| bench_cards(state, content)));
                self.now.set(cards);
                request_animation_frame(move || {
                    if self.is_last(asked) {
                        let found = self.now.with_untracked(|pages| fit_to_paper(pages));
                        are_small.set(Some(found));
                        self.now.set(Vec::new());
                    }
                });
            });
        });
        are_small
    }
}

/// The pages that are printed.
#[component]
pub fn SharePaper() -> impl IntoView {
    let state = use_app_state();
    let content = ShareContent::from_context();
    let pages = Pages {
        now: RwSignal::new(Vec::new()),
        asked: StoredValue::new(0),
    };
    let card = memo(move || first_card(state, content));
    let sheet = memo(move || class_paper(state, content));
    let are_small = pages.measured(state, content, card);
    let notices = move || {
        let notices =
            card.with(|card| sheet.with(|sheet| before_printing(card.as_ref(), sheet.as_ref())));
        notices
            .into_iter()
            .map(|notice| view! { <p class="quiet">{notice}</p> })
            .collect_view()
    };
    let print_cards = move |()| pages.print(untrack(|| bench_cards(state, content)));
    let print_teachers = move |()| pages.print(untrack(|| teachers_card(state, content)));
    let print_sheet = move |()| {
        pages.print(
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
            <Button label=memo(move || card_button(are_small.get())) on_tap=print_cards />
            <Button label=tr!("Print the teacher’s card") on_tap=print_teachers />
            <Button label=tr!("Print the class sheet (A4 or Letter)") on_tap=print_sheet />
        </div>
        <div>{notices}</div>
        <Portal>{move || pages.now.get().into_iter().map(page).collect_view()}</Portal>
    }
}
