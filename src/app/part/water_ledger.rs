//! Water ledger: who brought the water, as one bar with its table.

use leptos::prelude::*;

use super::stream_word::stream_word;
use crate::words::picture::{WaterBar, WaterMark, WaterPiece, WaterRow};

/// Who brought the water, as one bar with its table.
#[component]
pub fn WaterLedger(
    /// The ledger laid out.
    bar: Memo<WaterBar>,
    /// The same in words.
    twin: Memo<String>,
) -> impl IntoView {
    let pieces = move || bar.with(|bar| bar.segments.iter().map(piece).collect_view());
    let marks = move || bar.with(|bar| bar.marks.iter().zip(["6", "82"]).map(mark).collect_view());
    let rows = move || bar.with(|bar| bar.rows.iter().map(row).collect_view());
    view! {
        <figure class="ledger">
            <svg height="88" role="img" aria-label=twin>
                {pieces}
                {marks}
            </svg>
            <details>
                <summary>"Who brought it"</summary>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">"From"</th>
                            <th scope="col">"Water"</th>
                            <th scope="col">"Of flour"</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </details>
        </figure>
    }
}

/// A piece of the bar, with its letter where there is room.
fn piece(piece: &WaterPiece) -> impl IntoView + use<> {
    let percent = |at: f64| format!("{at}%");
    let letter = piece.letter_at.map(|at| {
        view! { <text class="segment-letter" x=percent(at) y="50">{piece.letter}</text> }
    });
    view! {
        <g data-stream=stream_word(piece.kind)>
            <rect class="segment" x=percent(piece.from) width=percent(piece.wide) y="27" height="36" />
            {letter}
        </g>
    }
}

/// A mark across the bar; its words stand above or below.
fn mark((mark, words_y): (&WaterMark, &'static str)) -> impl IntoView + use<> {
    let at = format!("{}%", mark.at);
    let (anchor, aside) = if mark.words_before {
        ("end", "-5")
    } else {
        ("start", "5")
    };
    view! {
        <line class="mark" x1=at.clone() x2=at.clone() y1="18" y2="72" />
        <text class="mark-name" x=at dx=aside dy="8" y=words_y text-anchor=anchor>{mark.says.clone()}</text>
    }
}

/// A row of the table.
fn row(row: &WaterRow) -> impl IntoView + use<> {
    view! {
        <tr data-stream=stream_word(row.kind)>
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
