//! The weighing list, part by part.

use leptos::prelude::*;

use super::line::WeighLine;
use crate::app::page::BatchContext;
use crate::app::part::part_word;
use crate::app::state::{memo, use_app_state};
use crate::results::batch::weighing::{PartToWeigh, parts_to_weigh};
use crate::text::{batch_answer, format, line, tr};

/// All parts with what to weigh into them.
#[component]
pub fn Weighing() -> impl IntoView {
    let state = use_app_state();
    let parts = memo(move || state.with(|sheet| parts_to_weigh(&sheet.formula)));
    let context = BatchContext::from_context();
    let more = memo(move || {
        let options = state.options.get();
        let more = context.read_scaled(|scaled| batch_answer::weighs_more(scaled, options));
        more.flatten()
    });
    let more = move || {
        more.get()
            .map(|says| view! { <p class="quiet follows">{says}</p> })
    };
    let two_ways = memo(move || context.two_ways());
    let two_ways = move || {
        two_ways
            .get()
            .map(|says| view! { <p class="quiet follows">{says}</p> })
    };
    view! {
        <section class="card weighing" aria-label=tr!("What to weigh")>
            {more}
            {two_ways}
            <For each=move || parts.get() key=Clone::clone let(part)>
                <PartList part />
            </For>
        </section>
    }
}

#[component]
fn PartList(
    /// Which part.
    part: PartToWeigh,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let PartToWeigh {
        part,
        kind,
        name,
        lines,
    } = part;
    let in_all = memo(move || {
        let options = state.options.get();
        context.read_rounded(|rounded| {
            Some(format::mass(
                rounded.formula.parts.get(part)?.mass(),
                options,
            ))
        })
    });
    let label = tr!("To weigh: {name}", name = name);
    let row = |at| view! { <li><WeighLine at /></li> };
    let rows = lines.into_iter().map(row).collect_view();
    view! {
        <section class="part" data-part=part_word(kind) aria-label=label>
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
