//! The three figures of the place: dough to mix, pieces, factor.

use leptos::prelude::*;

use super::BatchAnswers;
use crate::app::part::{Figure, Shown};
use crate::app::state::{State, memo};
use crate::engine::batch::{BatchFigure, Scaled};
use crate::text::{FormatOptions, tr, weighing, format};

/// The three figures that the place is about.
#[component]
pub fn BatchKeys() -> impl IntoView {
    view! {
        <BatchFigureBox label=tr!("Dough to mix") figure=BatchFigure::Mixed look=|scaled, manner| format::mass(scaled.mixed, manner) />
        <BatchFigureBox label=tr!("Pieces") figure=BatchFigure::Each look=|scaled, manner| weigh::pieces(&scaled.pieces, manner) />
        <BatchFigureBox label=tr!("Of the formula") figure=BatchFigure::Factor look=|scaled, manner| format::factor(scaled.factor, manner) />
    }
}

/// A figure of the batch that opens to its working.
#[component]
pub fn BatchFigureBox(
    /// What it is called.
    label: &'static str,
    /// Which figure.
    figure: BatchFigure,
    /// The figure, written out.
    look: fn(&Scaled, FormatOptions) -> String,
) -> impl IntoView {
    let state = State::here();
    let answers = BatchAnswers::here();
    let shown = memo(move || {
        let manner = state.manner.get();
        Shown::beside(
            answers.read(|scaled| look(scaled, manner)),
            answers.read_before(|scaled| look(scaled, manner)),
        )
    });
    let working = move |()| {
        answers.scaled.with_untracked(|scaled| {
            let scaled = scaled.as_ref().ok();
            scaled
                .map(|scaled| scaled.working_of(figure))
                .unwrap_or_default()
        })
    };
    view! { <Figure label shown working=Callback::new(working) /> }
}
