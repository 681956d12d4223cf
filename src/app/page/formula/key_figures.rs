//! The three figures of the place: true water, dough, salt.

use leptos::prelude::*;

use crate::app::part::{MassFigure, ShareFigure};
use crate::engine::formula::Figure;

/// The three figures that the place is about.
#[component]
pub fn FormulaKeys() -> impl IntoView {
    view! {
        <ShareFigure figure=Figure::TrueWater />
        <MassFigure figure=Figure::Dough />
        <ShareFigure figure=Figure::Salt />
    }
}
