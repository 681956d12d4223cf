//! Water ledger: the sources of the water, as one bar with its table.

use leptos::prelude::*;

use super::part_word::part_word;
use crate::app::state::memo;
use crate::text::{
    chart::{WaterBar, WaterPiece, WaterRow},
    tr,
};

/// The sources of the water, as one bar with its table.
#[component]
pub fn WaterLedger(
    /// The ledger laid out.
    bar: Memo<WaterBar>,
    /// The text alternative.
    twin: Memo<String>,
) -> impl IntoView {
    let count = memo(move || bar.with(|bar| bar.segments.len()));
    let marks = memo(move || bar.with(|bar| bar.marks.len()));
    // A long table that is closed is not updated.
    let is_open = RwSignal::new(false);
    let rows = move || bar.with(|bar| bar.rows.iter().map(row).collect_view());
    view! {
        <figure class="ledger">
            <svg height="88" role="img" aria-label=twin>
                <For each=move || 0..count.get() key=|at| *at let(at)>
                    <Piece bar at />
                </For>
                <For each=move || 0..marks.get() key=|at| *at let(at)>
                    <Mark bar at />
                </For>
            </svg>
            <details on:toggle=move |_| is_open.update(|open| *open = !*open)>
                <summary>{tr!("By ingredient")}</summary>
                <Show when=move || is_open.get()>
                    <table>
                        <thead>
                            <tr>
                                <th scope="col">{tr!("From")}</th>
                                <th scope="col">{tr!("Water")}</th>
                                <th scope="col">{tr!("Of flour")}</th>
                            </tr>
                        </thead>
                        <tbody>{rows}</tbody>
                    </table>
                </Show>
            </details>
        </figure>
    }
}

/// A place along the bar, as an attribute says it.
fn percent(at: f64) -> String {
    format!("{at}%")
}

/// A piece of the bar, with its letter where there is room. Its elements are kept; only
/// their positions change.
#[component]
fn Piece(bar: Memo<WaterBar>, at: usize) -> impl IntoView {
    let piece = memo(move || bar.with(|bar| bar.segments.get(at).cloned()));
    let place = move |select: fn(&WaterPiece) -> f64| {
        move || piece.with(|piece| piece.as_ref().map(|piece| percent(select(piece))))
    };
    let has_letter = memo(move || {
        piece.with(|piece| {
            let piece = piece.as_ref()?;
            piece.letter_at.map(|_| piece.letter)
        })
    });
    let letter = move || {
        has_letter.get().map(|letter| {
            let at = place(|piece| piece.letter_at.unwrap_or_default());
            view! { <text class="segment-letter" x=at y="50">{letter}</text> }
        })
    };
    let part = move || piece.with(|piece| piece.as_ref().map(|piece| part_word(piece.kind)));
    view! {
        <g data-part=part>
            <rect class="segment" x=place(|piece| piece.from) width=place(|piece| piece.wide) y="27" height="36" />
            {letter}
        </g>
    }
}

/// A mark across the bar; its words stand above the bar for the first, below for the second.
#[component]
fn Mark(bar: Memo<WaterBar>, at: usize) -> impl IntoView {
    let mark = memo(move || bar.with(|bar| bar.marks.get(at).cloned()));
    let words_y = if at == 0 { "6" } else { "82" };
    let place = move || mark.with(|mark| mark.as_ref().map(|mark| percent(mark.at)));
    let before =
        memo(move || mark.with(|mark| mark.as_ref().is_some_and(|mark| mark.words_before)));
    let anchor = move || if before.get() { "end" } else { "start" };
    let aside = move || if before.get() { "-5" } else { "5" };
    let says = move || mark.with(|mark| mark.as_ref().map(|mark| mark.says.clone()));
    view! {
        <line class="mark" x1=place x2=place y1="18" y2="72" />
        <text class="mark-name" x=place dx=aside dy="8" y=words_y text-anchor=anchor>{says}</text>
    }
}

/// A row of the table.
fn row(row: &WaterRow) -> impl IntoView + use<> {
    view! {
        <tr data-part=part_word(row.kind)>
            <th scope="row">
                <span class="letter">{row.letter}</span>
                " "
                {row.food.clone()}
            </th>
            <td>{row.water.clone()}</td>
            <td>{row.share.clone()}</td>
        </tr>
    }
}
