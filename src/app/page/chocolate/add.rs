//! Adding a filling or a syrup to a formula that has none.

use leptos::prelude::*;

use crate::app::browser::announce::announce;
use crate::app::part::{Button, Picture};
use crate::app::state::State;
use crate::engine::chocolate::{usual_filling, usual_syrup};
use crate::engine::formula::{Stream, StreamKind};
use crate::words::{Trouble, language::text, message, name, notice, say};

/// Offers a stream that the formula has not.
#[component]
pub fn AddStreamCard(
    /// Which kind.
    kind: StreamKind,
) -> impl IntoView {
    let state = State::here();
    let [title, says, asks] = if kind == StreamKind::Topping {
        SYRUP
    } else {
        FILLING
    }
    .map(text);
    let add = move |()| {
        match begun(state, kind) {
            Ok(Some(_)) if !state.sheet().formula.has_room_for_a_stream() => {
                announce(notice::streams_full());
            }
            Ok(Some(stream)) => {
                state.edit(|sheet| {
                    sheet.formula.streams.push(stream);
                    // In the order of the work; streams of one kind stay in theirs.
                    sheet.formula.streams.sort_by_key(|stream| stream.kind);
                });
                announce(say!("Added to the formula. Undo takes it out again."));
            }
            Ok(None) => {}
            Err(said) => announce(&said),
        }
    };
    view! {
        <section class="card" aria-label=title>
            <header>
                <h2>{title}</h2>
            </header>
            <div class="body">
                <p>{asks}</p>
                <Button says picture=Picture::Add tapped=add />
            </div>
        </section>
    }
}

/// Title, button, and what it does.
const SYRUP: [&str; 3] = [
    message!("Syrup for the top"),
    message!("Add a syrup"),
    message!(
        "This formula has none. One of dark chocolate and water, thin enough to drizzle, is a start; change it from there."
    ),
];
const FILLING: [&str; 3] = [
    message!("Filling"),
    message!("Add a filling"),
    message!(
        "This formula has none. Dark chocolate, 9 g to 100 g of dough, is a start; change it from there."
    ),
];

fn begun(state: State, kind: StreamKind) -> Result<Option<Stream>, String> {
    let sheet = state.sheet();
    let name = name::stream_kind(kind).to_owned();
    let dough = sheet.formula.dough();
    if kind == StreamKind::Topping {
        usual_syrup(dough, name, sheet.batch.syrup_at)
            .map_err(|error| error.sentence(state.manner.get_untracked()))
    } else {
        Ok(usual_filling(dough, name))
    }
}
