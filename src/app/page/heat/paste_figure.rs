//! A figure of a paste that opens to its working, beside what it was before a trial.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::CookedPaste;
use crate::engine::quantity::Temperature;
use crate::text::{FormatOptions, format, heat, tr};

/// How a figure is shown: of the paste as it is, beside the one before the trial.
type Select = fn(&CookedPaste, Option<&CookedPaste>, FormatOptions) -> Shown;

/// A figure of a paste.
#[component]
pub fn PasteFigure(
    /// Its name.
    label: &'static str,
    /// The index of its part; the first paste where there is none.
    #[prop(optional)]
    part: Option<usize>,
    /// Its format.
    select: Select,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let at = move || part.or_else(|| context.first_paste());
    let shown = memo(move || {
        let options = state.options.get();
        let shown = at().and_then(|part| {
            context.read_paste(part, |now| {
                context.with_paste_before(part, |before| select(now, before, options))
            })
        });
        shown.unwrap_or_else(|| Shown::plain(tr!("none").to_owned()))
    });
    let working = move |()| {
        untrack(|| {
            let lines = at().and_then(|part| context.read_paste(part, CookedPaste::working));
            lines.unwrap_or_default()
        })
    };
    view! { <Figure label shown working=Callback::new(working) /> }
}

/// A temperature, with what it was and by how much it differs.
fn warmth(now: Temperature, before: Option<Temperature>, options: FormatOptions) -> Shown {
    let wording = |before| heat::before_and_change(before, now, options);
    Shown::changed(format::temperature(now, options), before.map(wording))
}

/// The temperature it reaches.
pub fn comes_to(now: &CookedPaste, before: Option<&CookedPaste>, options: FormatOptions) -> Shown {
    let before = before.map(|before| before.temperature);
    warmth(now.temperature, before, options)
}

/// How much of its starch is cooked.
pub fn starch_cooked(
    now: &CookedPaste,
    before: Option<&CookedPaste>,
    options: FormatOptions,
) -> Shown {
    let wording = |before: &CookedPaste| {
        (
            format::share(before.cooked, options),
            format::points_change(before.cooked, now.cooked, options),
        )
    };
    Shown::changed(format::share(now.cooked, options), before.map(wording))
}

/// At what temperature water boils here; no trial changes that.
pub fn boils_at(now: &CookedPaste, _before: Option<&CookedPaste>, options: FormatOptions) -> Shown {
    Shown::plain(format::temperature(now.boils, options))
}
