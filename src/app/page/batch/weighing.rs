//! The weighing list, stream by stream.

use leptos::prelude::*;

use super::{BatchAnswers, WeighLine};
use crate::app::part::stream_word;
use crate::app::state::{State, memo};
use crate::engine::formula::{LineAt, StreamKind};
use crate::words::{line, say, write};

/// What a card needs to know before its lines.
#[derive(Clone, PartialEq, Eq, Hash)]
struct Heading {
    stream: usize,
    kind: StreamKind,
    name: String,
    lines: usize,
}

/// All streams with what to weigh into them.
#[component]
pub fn Weighing() -> impl IntoView {
    let state = State::here();
    let headings = memo(move || {
        state.with(|sheet| {
            let streams = sheet.formula.streams.iter().enumerate();
            let headings = streams.map(|(stream, own)| Heading {
                stream,
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
            <StreamToWeigh heading />
        </For>
    }
}

#[component]
fn StreamToWeigh(
    /// Which stream.
    heading: Heading,
) -> impl IntoView {
    let state = State::here();
    let answers = BatchAnswers::here();
    let Heading {
        stream,
        kind,
        name,
        lines,
    } = heading;
    let in_all = memo(move || {
        let manner = state.manner.get();
        answers.read_rounded(|rounded| {
            Some(write::mass(
                rounded.formula.streams.get(stream)?.mass(),
                manner,
            ))
        })
    });
    let label = say!("To weigh: {name}", name);
    let rows = (0..lines)
        .map(|line| view! { <li><WeighLine at=LineAt { stream, line } /></li> })
        .collect_view();
    view! {
        <section class="card weighing" data-stream=stream_word(kind) aria-label=label>
            <header>
                <h2>
                    <span class="letter" aria-hidden="true">{line::mark(stream)}</span>
                    " "
                    {name}
                </h2>
                <span class="quiet follows">{in_all}</span>
            </header>
            <ul>{rows}</ul>
        </section>
    }
}
