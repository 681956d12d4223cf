//! The shares of a paste or preferment: its share of the flour and its liquid to flour,
//! both settable with the bread as a whole held.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{Formula, FormulaError, set_part_share, set_paste_ratio};
use crate::engine::quantity::Share;
use crate::results::formula::{PartResults, SettableShare};
use crate::text::{ErrorText, format, language::text, read, tr_noop};

/// A figure of a part that can be set, the bread held.
#[derive(Clone, Copy)]
struct Settable {
    id: &'static str,
    label: &'static str,
    select: fn(&PartResults) -> SettableShare,
    set: fn(&Formula, usize, Share) -> Result<Formula, FormulaError>,
}

const SHARE: Settable = Settable {
    id: "share",
    label: tr_noop!("Its share of all flour"),
    select: |results| results.flour_share,
    set: set_part_share,
};

const RATIO: Settable = Settable {
    id: "ratio",
    label: tr_noop!("Liquid on its own flour"),
    select: |results| results.liquid_to_flour,
    set: set_paste_ratio,
};

/// The two figures of a paste or preferment; nothing for other parts.
#[component]
pub fn ShareRows(
    /// Which part.
    part: usize,
    /// Its numbers.
    results: Memo<Option<PartResults>>,
) -> impl IntoView {
    let is_made_ahead = memo(move || {
        results.with(|results| {
            results
                .as_ref()
                .is_some_and(|results| results.is_made_ahead)
        })
    });
    view! {
        <Show when=move || is_made_ahead.get()>
            <div class="held">
                <SettableBox part results settable=SHARE />
                <SettableBox part results settable=RATIO />
            </div>
        </Show>
    }
}

#[component]
fn SettableBox(
    /// Which part.
    part: usize,
    /// Its numbers.
    results: Memo<Option<PartResults>>,
    /// Which figure.
    settable: Settable,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("{}-{part}", settable.id);
    let select = move || results.with(|results| results.as_ref().map(settable.select));
    let figure = memo(move || {
        let options = state.options.get();
        let share = select().and_then(|settable| settable.share);
        share
            .map(|share| format::box_share(share, options))
            .unwrap_or_default()
    });
    let changed = memo(move || select().is_some_and(|settable| settable.is_changed));
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| (settable.set)(formula, part, share))
            .map_err(|error| error.sentence(options))
    };
    view! { <NumberBox id label=text(settable.label) unit="%" figure changed store=Callback::new(store) /> }
}
