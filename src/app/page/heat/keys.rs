//! The three figures of the place: dough, paste, starch.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::part::{Figure, Shown};
use crate::app::state::{State, memo};
use crate::engine::heat::CookedPaste;
use crate::words::{Manner, say, write};

/// The three figures that the place is about.
#[component]
pub fn HeatKeys() -> impl IntoView {
    view! {
        <DoughFigure />
        <PasteFigure label=say!("Paste") look=|paste, manner| write::temperature(paste.temperature, manner) />
        <PasteFigure label=say!("Starch cooked") look=|paste, manner| write::share(paste.cooked, manner) />
    }
}

/// How warm the dough comes off the mixer.
#[component]
pub fn DoughFigure() -> impl IntoView {
    let state = State::here();
    let answers = HeatAnswers::here();
    let shown = memo(move || {
        let manner = state.manner.get();
        let value = answers.read_bowl(|bowl| write::temperature(bowl.came.temperature, manner));
        Shown {
            value: value.unwrap_or_else(|| "none".to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        untrack(|| {
            answers
                .read_bowl(|bowl| bowl.came.working())
                .unwrap_or_default()
        })
    };
    view! { <Figure label=say!("Dough comes off at") shown working=Callback::new(working) /> }
}

/// A figure of the first paste.
#[component]
fn PasteFigure(
    /// What it is called.
    label: &'static str,
    /// The figure, written out.
    look: fn(&CookedPaste, Manner) -> String,
) -> impl IntoView {
    let state = State::here();
    let answers = HeatAnswers::here();
    let shown = memo(move || {
        let manner = state.manner.get();
        Shown {
            value: answers
                .read_first(|paste| look(paste, manner))
                .unwrap_or_else(|| "none".to_owned()),
            was: None,
        }
    });
    let working =
        move |()| untrack(|| answers.read_first(CookedPaste::working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(working) /> }
}
