//! Adding a stream: which kind it is to be.

use leptos::prelude::*;

use crate::app::part::Button;
use crate::app::state::State;
use crate::engine::formula::{Stream, StreamKind};
use crate::engine::quantity::Mass;
use crate::words::{name, notice};

/// The kinds of stream, found by what they are called.
pub(super) struct Kinds;

/// The kinds of stream, found by what they are called.
pub(super) const KINDS: Kinds = Kinds;

impl Kinds {
    /// The kind with this name.
    pub(super) fn called(self, text: &str) -> Option<StreamKind> {
        StreamKind::ALL
            .into_iter()
            .find(|kind| name::stream_kind(*kind) == text)
    }
}

/// Adds a stream of a kind that is chosen.
#[component]
pub fn AddStream() -> impl IntoView {
    let state = State::here();
    let add = move |kind: StreamKind| {
        state.edit(|sheet| {
            sheet.formula.streams.push(Stream {
                kind,
                name: name::stream_kind(kind).to_owned(),
                lines: Vec::new(),
                steam: Mass::ZERO,
                temperature: None,
            });
            // In the order of the work; streams of one kind stay in theirs.
            sheet.formula.streams.sort_by_key(|stream| stream.kind);
        });
        state.close();
    };
    let buttons = StreamKind::ALL
        .into_iter()
        .map(|kind| view! { <Button says=name::stream_kind(kind) tapped=move |()| add(kind) /> })
        .collect_view();
    let has_room = state.sheet().formula.has_room_for_a_stream();
    let full = (!has_room).then(|| view! { <p>{notice::streams_full()}</p> });
    let menu = has_room.then(|| view! { <div class="menu">{buttons}</div> });
    view! { {full} {menu} }
}
