//! The pages as they are printed: a card for the bench, a sheet for the teacher.

use leptos::prelude::*;

use crate::text::share::{BenchCard, ClassSheet, Paper, SheetRow, TypeSize};

const fn set(type_size: TypeSize) -> &'static str {
    match type_size {
        TypeSize::Roomy => "roomy",
        TypeSize::Close => "close",
        TypeSize::Closest => "closest",
    }
}

const fn size(paper: Paper) -> &'static str {
    match paper {
        Paper::A5 => "bench-card",
        Paper::A4 => "large-card",
    }
}

fn items(all: Vec<String>) -> impl IntoView {
    let items = all.into_iter().map(|one| view! { <li>{one}</li> });
    view! { <ul>{items.collect_view()}</ul> }
}

/// Name, what is made and what is in it at left, the code at right.
fn head(title: String, made: String, allergens: String, code: Option<String>) -> impl IntoView {
    view! {
        <header>
            <div>
                <h1>{title}</h1>
                <p>{made}</p>
                <p><b>{allergens}</b></p>
            </div>
            {code.map(|code| view! { <div class="code" inner_html=code></div> })}
        </header>
    }
}

/// The card for the bench.
#[component]
pub fn CardPage(
    /// Its content.
    card: BenchCard,
) -> impl IntoView {
    let BenchCard {
        title,
        made,
        parts,
        steps,
        allergens,
        cautions,
        code,
        fit,
    } = card;
    let line = |(food, shows): (String, String)| view! { <tr><td>{food}</td><td>{shows}</td></tr> };
    let parts = parts.into_iter().map(|part| {
        view! {
            <table>
                <caption>{part.name}</caption>
                <tbody>{part.lines.into_iter().map(line).collect_view()}</tbody>
            </table>
        }
    });
    let steps = steps
        .into_iter()
        .map(|(name, work)| view! { <p><b>{name}</b>": " {work.join(" ")}</p> });
    view! {
        <article class=format!("paper {} {}", size(fit.paper), set(fit.type_size))>
            {head(title, made, allergens, code)}
            <div class="halves">{parts.collect_view()}</div>
            {steps.collect_view()}
            <section class="safety halves">{items(cautions)}</section>
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
    let ClassSheet {
        title,
        class,
        columns,
        tables,
        notes,
        allergens,
        cautions,
        code,
        fit,
    } = sheet;
    let tables = tables
        .into_iter()
        .map(|rows| table(columns.clone(), rows, &span))
        .collect_view();
    view! {
        <article class=format!("paper class-sheet {}", set(fit.type_size))>
            {head(title, class, allergens, code)}
            <div class="tables">{tables}</div>
            <div class="halves">{items(notes)}</div>
            <section class="safety halves">{items(cautions)}</section>
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
            <tr><th scope="row">{row.food}</th>{cells.collect_view()}</tr>
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
