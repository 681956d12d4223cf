//! The three figures of the place: dough to mix, pieces, factor.

use leptos::prelude::*;

use super::BatchContext;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::{BatchFigure, Scaled};
use crate::text::{FormatOptions, format, tr, weighing};

/// The three figures that the place is about.
#[component]
pub fn BatchKeys() -> impl IntoView {
    view! {
        <BatchFigureBox label=tr!("Dough to mix") figure=BatchFigure::Mixed select=|scaled, options| format::mass(scaled.mixed, options) />
        <BatchFigureBox label=tr!("Pieces") figure=BatchFigure::Each select=|scaled, options| weighing::pieces(&scaled.pieces, options) />
        <BatchFigureBox label=tr!("Of the formula") figure=BatchFigure::Factor select=|scaled, options| format::factor(scaled.factor, options) />
    }
}

/// A figure of the batch that opens to its working.
#[component]
pub fn BatchFigureBox(
    /// Its name.
    label: &'static str,
    /// Which figure.
    figure: BatchFigure,
    /// The figure, written out.
    select: fn(&Scaled, FormatOptions) -> String,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        Shown::beside(
            context.read(|scaled| select(scaled, options)),
            context.read_before(|scaled| select(scaled, options)),
        )
    });
    let working = move |()| context.working_of(figure);
    view! { <Figure label shown working=Callback::new(working) /> }
}
