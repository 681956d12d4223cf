//! What a paste or preferment is of the whole: its share of the flour and its liquid to flour,
//! both settable with the bread as a whole held.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{
    Formula, FormulaError, PartKind, PartTotals, part_totals, set_part_share, set_paste_ratio,
};
use crate::engine::quantity::Share;
use crate::text::{Trouble, format, language::text, read, tr_noop};

/// A figure of a part that can be set, the bread held.
#[derive(Clone, Copy)]
struct Settable {
    id: &'static str,
    label: &'static str,
    look: fn(&PartTotals) -> Option<Share>,
    set: fn(&Formula, usize, Share) -> Result<Formula, FormulaError>,
}

const SHARE: Settable = Settable {
    id: "share",
    label: tr_noop!("Its share of all flour"),
    look: |totals| Some(totals.flour_share),
    set: set_part_share,
};

const RATIO: Settable = Settable {
    id: "ratio",
    label: tr_noop!("Liquid on its own flour"),
    look: PartTotals::liquid_to_flour,
    set: set_paste_ratio,
};

/// The two figures of a paste or preferment; nothing for other parts.
#[component]
pub fn ShareRows(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let is_made_ahead = move || {
        state.with(|sheet| {
            let own = sheet.formula.parts.get(part);
            own.is_some_and(|own| matches!(own.kind, PartKind::Paste | PartKind::Preferment))
        })
    };
    view! {
        <Show when=is_made_ahead>
            <div class="held">
                <SettableBox part settable=SHARE />
                <SettableBox part settable=RATIO />
            </div>
        </Show>
    }
}

#[component]
fn SettableBox(
    /// Which part.
    part: usize,
    /// Which figure.
    settable: Settable,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("{}-{part}", settable.id);
    let of = move |sheet: &crate::sheet::Sheet| {
        let totals = part_totals(&sheet.formula, part).ok()?;
        (settable.look)(&totals)
    };
    let figure = memo(move || {
        let options = state.options.get();
        state
            .with(of)
            .map(|share| format::box_share(share, options))
            .unwrap_or_default()
    });
    let changed = memo(move || state.is_trial() && state.with(of) != state.with_saved(of));
    let from = id.clone();
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| (settable.set)(formula, part, share))
            .map_err(|error| error.sentence(options))
    };
    view! { <NumberBox id label=text(settable.label) unit="%" figure changed take=Callback::new(take) /> }
}
