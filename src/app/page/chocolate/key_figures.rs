//! The three figures of the place: chocolate, liquid, thickness.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::{Flow, Syrup};
use crate::engine::working::WorkingLine;
use crate::text::{FormatOptions, format, name, tr};

/// The three figures that the place is about.
#[component]
pub fn ChocolateKeys() -> impl IntoView {
    let context = ChocolateContext::from_context();
    let handling = memo(move || {
        let flow = context.read_syrup(|syrup| name::flow(syrup.flow));
        flow.unwrap_or(tr!("Thickness")).to_owned()
    });
    view! {
        <SyrupFigure label=tr!("Chocolate") select=|syrup, options| format::mass(syrup.chocolate, options) working=Syrup::parts_working />
        <SyrupFigure label=tr!("Liquid") select=|syrup, options| format::mass(syrup.liquid, options) working=Syrup::parts_working />
        <SyrupFigure label=handling select=thickness working=Syrup::working />
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
    /// Its name.
    #[prop(into)]
    label: Signal<String>,
    /// The figure, written out.
    select: fn(&Syrup, FormatOptions) -> String,
    /// Its working.
    working: fn(&Syrup) -> Vec<WorkingLine>,
) -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let value = context.read_syrup(|syrup| select(syrup, options));
        Shown::beside(
            value.unwrap_or_else(|| tr!("none").to_owned()),
            context.read_before(|syrup| select(syrup, options)),
        )
    });
    let worked = move |()| untrack(|| context.read_syrup(working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(worked) /> }
}
