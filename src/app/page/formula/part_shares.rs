//! The shares of a paste or preferment: its share of the flour and its liquid to flour,
//! both settable with the bread as a whole held, and their working.

use leptos::prelude::*;

use super::line_row::CardTexts;
use crate::app::part::{NumberBox, WorkingButton};
use crate::app::state::use_app_state;
use crate::engine::formula::{Formula, FormulaError, set_part_share, set_paste_ratio};
use crate::engine::quantity::Share;
use crate::results::formula::part_working;
use crate::text::{BoxText, ErrorText, PartTexts, language::text, read, tr_noop};

/// A figure of a part that can be set, the bread held.
#[derive(Clone, Copy)]
struct Settable {
    id: &'static str,
    label: &'static str,
    select: fn(&PartTexts) -> Option<&BoxText>,
    set: fn(&Formula, usize, Share) -> Result<Formula, FormulaError>,
}

const SHARE: Settable = Settable {
    id: "share",
    label: tr_noop!("Flour in this part"),
    select: |card| card.flour_share.as_ref(),
    set: set_part_share,
};

const RATIO: Settable = Settable {
    id: "ratio",
    label: tr_noop!("Hydration of this part"),
    select: |card| card.liquid_to_flour.as_ref(),
    set: set_paste_ratio,
};

/// The two figures of a paste or preferment, once its head is tapped.
#[component]
pub fn PartShares(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let card = CardTexts::of(state, part);
    let worked = move |()| {
        let shown = card.with(|card| card.settings.clone());
        (shown, state.with(|sheet| part_working(sheet, part)))
    };
    view! {
        <div class="held">
            {settable_box(part, card, SHARE)}
            {settable_box(part, card, RATIO)}
            <WorkingButton title=card.text(|card| &card.name) worked=Callback::new(worked) />
        </div>
    }
}

fn settable_box(part: usize, card: CardTexts, settable: Settable) -> AnyView {
    let state = use_app_state();
    let id = format!("{}-{part}", settable.id);
    let figure = Signal::derive(move || {
        card.with(|card| {
            let own = (settable.select)(card);
            own.map(|own| own.text.clone()).unwrap_or_default()
        })
    });
    let changed = Signal::derive(move || {
        card.with(|card| (settable.select)(card).is_some_and(|own| own.is_changed))
    });
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| (settable.set)(formula, part, share))
            .map_err(|error| error.sentence(options))
    };
    view! { <NumberBox id label=text(settable.label) unit="%" figure changed store=Callback::new(store) /> }
        .into_any()
}
