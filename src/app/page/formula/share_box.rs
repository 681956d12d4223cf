//! What a paste or preferment is of the whole: its share of the flour and its liquid to flour,
//! both settable with the bread as a whole held.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{State, memo};
use crate::engine::formula::{
    Formula, FormulaError, StreamKind, StreamTotals, set_paste_ratio, set_stream_share,
    stream_totals,
};
use crate::engine::quantity::Share;
use crate::words::{Trouble, language::text, message, read, write};

/// A figure of a stream that can be set, the bread held.
#[derive(Clone, Copy)]
struct Settable {
    id: &'static str,
    label: &'static str,
    look: fn(&StreamTotals) -> Option<Share>,
    set: fn(&Formula, usize, Share) -> Result<Formula, FormulaError>,
}

const SHARE: Settable = Settable {
    id: "share",
    label: message!("Its share of all flour"),
    look: |totals| Some(totals.flour_share),
    set: set_stream_share,
};

const RATIO: Settable = Settable {
    id: "ratio",
    label: message!("Liquid on its own flour"),
    look: StreamTotals::liquid_to_flour,
    set: set_paste_ratio,
};

/// The two figures of a paste or preferment; nothing for other streams.
#[component]
pub fn ShareRows(
    /// Which stream.
    stream: usize,
) -> impl IntoView {
    let state = State::here();
    let is_made_ahead = move || {
        state.with(|sheet| {
            let own = sheet.formula.streams.get(stream);
            own.is_some_and(|own| matches!(own.kind, StreamKind::Paste | StreamKind::Preferment))
        })
    };
    view! {
        <Show when=is_made_ahead>
            <div class="held">
                <SettableBox stream settable=SHARE />
                <SettableBox stream settable=RATIO />
            </div>
        </Show>
    }
}

#[component]
fn SettableBox(
    /// Which stream.
    stream: usize,
    /// Which figure.
    settable: Settable,
) -> impl IntoView {
    let state = State::here();
    let id = format!("{}-{stream}", settable.id);
    let of = move |sheet: &crate::sheet::Sheet| {
        let totals = stream_totals(&sheet.formula, stream).ok()?;
        (settable.look)(&totals)
    };
    let figure = memo(move || {
        let manner = state.manner.get();
        state
            .with(of)
            .map(|share| write::box_share(share, manner))
            .unwrap_or_default()
    });
    let changed = memo(move || state.is_trial() && state.with(of) != state.with_kept(of));
    let from = id.clone();
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let share = read::share(&text, manner).map_err(|error| error.sentence(manner))?;
        state
            .change(&from, |formula| (settable.set)(formula, stream, share))
            .map_err(|error| error.sentence(manner))
    };
    view! { <NumberBox id label=text(settable.label) unit="%" figure changed take=Callback::new(take) /> }
}
