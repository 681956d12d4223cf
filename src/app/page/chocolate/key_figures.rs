//! The three figures of the place: chocolate, liquid, thickness.

use leptos::prelude::*;

use super::ChocolateAnswers;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::{Flow, Syrup};
use crate::engine::working::Line;
use crate::text::{FormatOptions, format, name, tr};

/// The three figures that the place is about.
#[component]
pub fn ChocolateKeys() -> impl IntoView {
    let answers = ChocolateAnswers::here();
    let handling = memo(move || {
        let flow = answers.read_syrup(|syrup| name::flow(syrup.flow));
        flow.unwrap_or(tr!("Thickness")).to_owned()
    });
    view! {
        <SyrupFigure label=tr!("Chocolate") look=|syrup, options| format::mass(syrup.chocolate, options) working=Syrup::parts_working />
        <SyrupFigure label=tr!("Liquid") look=|syrup, options| format::mass(syrup.liquid, options) working=Syrup::parts_working />
        <SyrupFigure label=handling look=thickness working=Syrup::working />
    }
}

fn thickness(syrup: &Syrup, options: FormatOptions) -> String {
    match syrup.flow {
        Flow::Flows { thickness, .. } => format::viscosity(thickness, options),
        Flow::Seized | Flow::MeltedOnly => tr!("no figure").to_owned(),
    }
}

/// A figure of the syrup that opens to its working.
#[component]
pub fn SyrupFigure(
    /// What it is called.
    #[prop(into)]
    label: Signal<String>,
    /// The figure, written out.
    look: fn(&Syrup, FormatOptions) -> String,
    /// How it came about.
    working: fn(&Syrup) -> Vec<Line>,
) -> impl IntoView {
    let state = use_app_state();
    let answers = ChocolateAnswers::here();
    let shown = memo(move || {
        let options = state.options.get();
        let value = answers.read_syrup(|syrup| look(syrup, options));
        Shown::beside(
            value.unwrap_or_else(|| tr!("none").to_owned()),
            answers.read_before(|syrup| look(syrup, options)),
        )
    });
    let worked = move |()| untrack(|| answers.read_syrup(working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(worked) /> }
}
