//! Paper: the bench card and the class sheet, drawn for the printer only.

use std::num::NonZeroU32;

use leptos::portal::Portal;
use leptos::prelude::*;

use crate::app::browser::print;
use crate::app::page::BatchAnswers;
use crate::app::part::Button;
use crate::app::state::{Desk, State};
use crate::engine::class::{class, oven};
use crate::words::{
    class::class as told_of,
    handed::{BenchCard, ClassSheet, Density, bench_card, class_sheet},
    say,
};

/// What is to be printed.
#[derive(Clone, PartialEq)]
enum Page {
    Card(BenchCard),
    Sheet(ClassSheet),
}

/// The two pages that are printed.
#[component]
pub fn PaperOut() -> impl IntoView {
    let state = State::here();
    let page = RwSignal::new(None::<Page>);
    let desk = Desk::here();
    let answers = state.for_good(BatchAnswers::of);
    let said = RwSignal::new("");
    let print_it = move |made: Option<Page>| {
        said.set(if made.is_none() {
            say!("There is no batch to print. See what Batch says.")
        } else {
            ""
        });
        if made.is_some() {
            page.set(made);
            // Drawn before the dialog of the browser looks at the page.
            request_animation_frame(print::now);
        }
    };
    let card = move |()| print_it(card_of(state, desk, answers));
    let sheet = move |()| print_it(sheet_of(state, desk, answers));
    view! {
        <h3>{say!("On paper")}</h3>
        <div class="buttons">
            <Button says=say!("Print the bench card (A5)") tapped=card />
            <Button says=say!("Print the class sheet (A4 or Letter)") tapped=sheet />
        </div>
        <p class="trouble">{said}</p>
        <Portal>
            {move || match page.get() {
                Some(Page::Card(card)) => view! { <CardPage card /> }.into_any(),
                Some(Page::Sheet(sheet)) => view! { <SheetPage sheet /> }.into_any(),
                None => ().into_any(),
            }}
        </Portal>
    }
}

fn card_of(state: State, desk: Desk, answers: BatchAnswers) -> Option<Page> {
    untrack(|| {
        let manner = state.manner.get();
        let (scaled, rounded) = (answers.scaled.get().ok()?, answers.rounded.get()?);
        let card = desk.pantry.with(|pantry| {
            state.with(|sheet| bench_card(sheet, &scaled, &rounded, pantry, manner))
        });
        Some(Page::Card(card))
    })
}

fn sheet_of(state: State, desk: Desk, answers: BatchAnswers) -> Option<Page> {
    untrack(|| {
        let (manner, wishes) = (state.manner.get(), desk.wishes.get());
        let sheet = state.sheet();
        let made = class(
            &sheet.formula,
            wishes,
            sheet.batch.losses,
            sheet.batch.pieces,
        )
        .ok()?;
        let loads = oven(NonZeroU32::new(made.loaves)?, wishes.oven).ok()?;
        let told = told_of(&made, &loads, answers.weighing.get(), manner);
        let paper = desk
            .pantry
            .with(|pantry| class_sheet(&sheet, &told, pantry, manner));
        Some(Page::Sheet(paper))
    })
}

const fn set(density: Density) -> &'static str {
    match density {
        Density::Roomy => "roomy",
        Density::Close => "close",
        Density::Closest => "closest",
    }
}

fn items(all: Vec<String>) -> impl IntoView {
    let items = all.into_iter().map(|one| view! { <li>{one}</li> });
    view! { <ul>{items.collect_view()}</ul> }
}

/// The card for the bench.
#[component]
fn CardPage(
    /// What stands on it.
    card: BenchCard,
) -> impl IntoView {
    let BenchCard {
        title,
        made,
        streams,
        steps,
        allergens,
        cautions,
        density,
    } = card;
    let line = |(food, shows): (String, String)| view! { <tr><td>{food}</td><td>{shows}</td></tr> };
    let streams = streams.into_iter().map(|stream| {
        view! {
            <table>
                <caption>{stream.name}</caption>
                <tbody>{stream.lines.into_iter().map(line).collect_view()}</tbody>
            </table>
        }
    });
    let steps = steps
        .into_iter()
        .map(|(name, work)| view! { <p><b>{name}</b>": " {work.join(" ")}</p> });
    view! {
        <article class=say!("paper bench-card {}", set(density))>
            <h1>{title}</h1>
            <p>{made}</p>
            <div class="halves">{streams.collect_view()}</div>
            {steps.collect_view()}
            <p><b>{allergens}</b></p>
            <section class="safety halves">{items(cautions)}</section>
        </article>
    }
}

/// The sheet for the teacher.
#[component]
fn SheetPage(
    /// What stands on it.
    sheet: ClassSheet,
) -> impl IntoView {
    let ClassSheet {
        title,
        class,
        columns,
        rows,
        notes,
        allergens,
        cautions,
        density,
    } = sheet;
    let span = (columns.len() + 1).to_string();
    let heads = columns
        .into_iter()
        .map(|head| view! { <th scope="col">{head}</th> });
    let rows = rows.into_iter().map(|row| {
        let cells = row.cells.into_iter().map(|cell| view! { <td>{cell}</td> });
        let span = span.clone();
        view! {
            {row.begins.map(|name| view! { <tr class="begins"><th colspan=span scope="colgroup">{name}</th></tr> })}
            <tr><th scope="row">{row.food}</th>{cells.collect_view()}</tr>
        }
    });
    view! {
        <article class=say!("paper class-sheet {}", set(density))>
            <h1>{title}</h1>
            <p>{class}</p>
            <table>
                <thead><tr><td></td>{heads.collect_view()}</tr></thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
            <div class="halves">{items(notes)}</div>
            <p><b>{allergens}</b></p>
            <section class="safety halves">{items(cautions)}</section>
        </article>
    }
}
