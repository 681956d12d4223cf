//! Steam of a paste, found by weighing it once it is cooked.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::part::{Figure, NumberBox, Shown};
use crate::app::state::{State, memo};
use crate::engine::heat::SteamLoss;
use crate::engine::kitchen::{steam_of, weigh_cooked};
use crate::engine::quantity::Temperature;
use crate::text::{Trouble, read, tr, format};

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
    let state = State::here();
    let answers = HeatAnswers::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        loss(answers, part)
            .map(|loss| format::box_mass(loss.after, manner))
            .unwrap_or_default()
    });
    let id = format!("paste-weighed-{part}");
    let from = id.clone();
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let after = read::mass(&text, manner).map_err(|error| error.sentence(manner))?;
        let made = answers.made.get_untracked();
        let mut sheet = state.sheet();
        if let (Some(written), Some(made)) = (
            sheet.formula.parts.get_mut(part),
            made.parts.get(part),
        ) {
            weigh_cooked(written, made, after, BOIL).map_err(|error| error.sentence(manner))?;
            state.put(sheet, Some(&from));
        }
        Ok(())
    };
    let unit = Signal::derive(move || state.manner.get().units.mass.symbol());
    view! { <NumberBox id label=tr!("Weighs once cooked, bowl off") unit figure take=Callback::new(take) /> }
}

/// What went off as steam.
#[component]
pub fn SteamFigure(
    /// Where its part stands.
    part: usize,
) -> impl IntoView {
    let state = State::here();
    let answers = HeatAnswers::here();
    let shown = memo(move || {
        let manner = state.manner.get();
        let value = loss(answers, part).map(|loss| format::mass(loss.lost, manner));
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
