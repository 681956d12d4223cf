//! The pages as they are printed: a card for a bench or the teacher, a sheet for the class.

use leptos::prelude::*;

use crate::text::day::numbered_steps;
use crate::text::share::{BenchCard, CardStep, ClassSheet, Paper, SheetRow, blocks};
use crate::text::weighing::PartWeights;

/// The classes of a card on a paper.
pub const fn card_class(paper: Paper) -> &'static str {
    match paper {
        Paper::A5 => "paper bench-card",
        Paper::A4 => "paper large-card",
    }
}

/// The classes of the sheet of a class.
pub const SHEET_CLASS: &str = "paper class-sheet";

/// Name, what is made and what is in it.
fn head(title: String, made: String, allergens: String) -> impl IntoView {
    view! {
        <header>
            <h1>{title}</h1>
            <p>{made}</p>
            <p><b>{allergens}</b></p>
        </header>
    }
}

/// What is beside the code: notes, then the cautions.
fn beside_code(code: Option<String>, notes: AnyView, cautions: Vec<String>) -> impl IntoView {
    let items = cautions.into_iter().map(|one| view! { <li>{one}</li> });
    view! {
        <section class="beside-code">
            {code.map(|code| view! { <div class="code" inner_html=code></div> })}
            {notes}
            <ul class="safety">{items.collect_view()}</ul>
        </section>
    }
}

/// The weights of a part, or of some lines of it.
fn weights(part: PartWeights) -> impl IntoView {
    let line = |(food, shows): (String, String)| view! { <tr><td>{food}</td><td>{shows}</td></tr> };
    view! {
        <table>
            <caption>{part.name}</caption>
            <tbody>{part.lines.into_iter().map(line).collect_view()}</tbody>
        </table>
    }
}

/// A step, and what then runs by itself.
fn step(step: CardStep) -> impl IntoView {
    let running = |(name, says): (String, String)| {
        view! { <p class="runs"><b>{name}</b>": " {says}</p> }
    };
    view! {
        <li>
            {step.begins.map(|begins| view! { <b class="clock">{begins}</b> " " })}
            <b>{step.name}</b>": " {step.says}
            {step.runs.into_iter().map(running).collect_view()}
        </li>
    }
}

/// The card for a bench or the teacher.
#[component]
pub fn CardPage(
    /// Its content.
    card: BenchCard,
) -> impl IntoView {
    let paper = card.fit.paper;
    let block = |columns: Vec<Vec<PartWeights>>| {
        let column = |parts: Vec<PartWeights>| {
            view! { <div>{parts.into_iter().map(weights).collect_view()}</div> }
        };
        view! { <div class="weights">{columns.into_iter().map(column).collect_view()}</div> }
    };
    let blocks = blocks(&card.parts, paper.columns()).into_iter().map(block);
    let notes = card.notes.into_iter();
    let notes = notes.map(|(name, text)| view! { <p class="note"><b>{name}</b>": " {text}</p> });
    let notes = view! {
        <p class="quiet">{numbered_steps()}</p>
        {notes.collect_view()}
    };
    view! {
        <article class=card_class(paper)>
            {head(card.title, card.made, card.allergens)}
            {blocks.collect_view()}
            <ol class="steps">{card.steps.into_iter().map(step).collect_view()}</ol>
            {beside_code(card.code, notes.into_any(), card.cautions)}
        </article>
    }
}

/// The sheet for the teacher.
#[component]
pub fn SheetPage(
    /// Its content.
    sheet: ClassSheet,
) -> impl IntoView {
    let span = sheet.all_columns().to_string();
    let side_by_side = sheet.tables.chunks(2).map(|tables| {
        let tables = tables.iter().cloned();
        let tables = tables.map(|rows| table(sheet.columns.clone(), rows, &span));
        view! { <div class="tables">{tables.collect_view()}</div> }
    });
    let tables = side_by_side.collect_view();
    let notes = sheet.notes.into_iter().map(|one| view! { <li>{one}</li> });
    let notes = view! { <ul class="class-notes">{notes.collect_view()}</ul> };
    view! {
        <article class=SHEET_CLASS>
            {head(sheet.title, sheet.class, sheet.allergens)}
            {tables}
            {beside_code(sheet.code, notes.into_any(), sheet.cautions)}
        </article>
    }
}

/// One table; the name of a group spans all its columns.
fn table(columns: Vec<String>, rows: Vec<SheetRow>, span: &str) -> AnyView {
    let heads = columns
        .into_iter()
        .map(|head| view! { <th scope="col">{head}</th> });
    let rows = rows.into_iter().map(|row| {
        let cells = row.cells.into_iter().map(|cell| view! { <td>{cell}</td> });
        let span = span.to_owned();
        view! {
            {row.begins.map(|name| view! { <tr class="begins"><th colspan=span scope="colgroup">{name}</th></tr> })}
            <tr class:sum=row.is_sum><th scope="row">{row.food}</th>{cells.collect_view()}</tr>
        }
    });
    view! {
        <table>
            <thead><tr><td></td>{heads.collect_view()}</tr></thead>
            <tbody>{rows.collect_view()}</tbody>
        </table>
    }
    .into_any()
}
