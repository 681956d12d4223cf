//! Steam of a paste, found by weighing it once it is cooked.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::part::{Figure, NumberBox, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::SteamLoss;
use crate::results::heat::weigh_cooked_part;
use crate::text::{Trouble, format, read, tr};

/// What a paste loses as steam.
fn loss(answers: HeatAnswers, part: usize) -> Option<SteamLoss> {
    answers
        .read_paste_result(part, |paste| paste.steam)
        .flatten()
}

/// What the cooked paste weighed, for this batch; kept with the formula as steam.
#[component]
pub fn WeighedBox(
    /// Where its part stands.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let answers = HeatAnswers::here();
    let figure = memo(move || {
        let options = state.options.get();
        loss(answers, part)
            .map(|loss| format::box_mass(loss.after, options))
            .unwrap_or_default()
    });
    let id = format!("paste-weighed-{part}");
    let from = id.clone();
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let after = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let made = answers.made.get_untracked();
        let mut sheet = state.sheet();
        weigh_cooked_part(&mut sheet.formula, &made, part, after)
            .map_err(|error| error.sentence(options))?;
        state.put(sheet, Some(&from));
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! { <NumberBox id label=tr!("Weighs once cooked, bowl off") unit figure take=Callback::new(take) /> }
}

/// What went off as steam.
#[component]
pub fn SteamFigure(
    /// Where its part stands.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let answers = HeatAnswers::here();
    let shown = memo(move || {
        let options = state.options.get();
        let value = loss(answers, part).map(|loss| format::mass(loss.lost, options));
        Shown {
            value: value.unwrap_or_else(|| tr!("none").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        untrack(|| {
            loss(answers, part)
                .map(|loss| loss.working())
                .unwrap_or_default()
        })
    };
    view! { <Figure label=tr!("Went off as steam") shown working=Callback::new(working) /> }
}
