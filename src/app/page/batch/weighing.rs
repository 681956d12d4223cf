//! The weighing list, part by part.

use leptos::prelude::*;

use super::{BatchAnswers, WeighLine};
use crate::app::part::part_word;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{LineAt, PartKind};
use crate::text::{format, line, tr};

/// What a card needs to know before its lines.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Heading {
    part: usize,
    kind: PartKind,
    name: String,
    lines: usize,
}

/// All parts with what to weigh into them.
#[component]
pub fn Weighing() -> impl IntoView {
    let state = use_app_state();
    let headings = memo(move || {
        state.with(|sheet| {
            let parts = sheet.formula.parts.iter().enumerate();
            let headings = parts.map(|(part, own)| Heading {
                part,
                kind: own.kind,
                name: own.name.clone(),
                lines: own.lines.len(),
            });
            headings
                .filter(|heading| heading.lines > 0)
                .collect::<Vec<_>>()
        })
    });
    view! {
        <For each=move || headings.get() key=Clone::clone let(heading)>
            <PartToWeigh heading />
        </For>
    }
}

#[component]
fn PartToWeigh(
    /// Which part.
    heading: Heading,
) -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let Heading {
        part,
        kind,
        name,
        lines,
    } = heading;
    let in_all = memo(move || {
        let options = state.options.get();
        answers.read_rounded(|rounded| {
            Some(format::mass(
                rounded.formula.parts.get(part)?.mass(),
                options,
            ))
        })
    });
    let label = tr!("To weigh: {name}", name = name);
    let rows = (0..lines)
        .map(|line| view! { <li><WeighLine at=LineAt { part, line } /></li> })
        .collect_view();
    view! {
        <section class="card weighing" data-part=part_word(kind) aria-label=label>
            <header>
                <h2>
                    <span class="letter" aria-hidden="true">{line::mark(part)}</span>
                    " "
                    {name}
                </h2>
                <span class="quiet follows">{in_all}</span>
            </header>
            <ul>{rows}</ul>
        </section>
    }
}
