//! Steam of a paste, found by weighing it once it is cooked.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::part::{Figure, NumberBox, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::SteamLoss;
use crate::engine::kitchen::{steam_of, weigh_cooked};
use crate::engine::quantity::Temperature;
use crate::text::{Trouble, format, read, tr};

/// How hot a paste is taken to be where that is not known: any does, for only the heat carried
/// off rests on it.
const BOIL: Temperature = Temperature::known(100.0);

fn loss(answers: HeatAnswers, part: usize) -> Option<SteamLoss> {
    let at = answers
        .read_paste(part, |paste| paste.temperature)
        .unwrap_or(BOIL);
    answers
        .made
        .with(|made| steam_of(made.parts.get(part)?, at).ok())
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
        if let (Some(written), Some(made)) =
            (sheet.formula.parts.get_mut(part), made.parts.get(part))
        {
            weigh_cooked(written, made, after, BOIL).map_err(|error| error.sentence(options))?;
            state.put(sheet, Some(&from));
        }
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
