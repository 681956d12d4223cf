//! A figure of the dough: as a share of its flour, or by weight.

use leptos::prelude::*;

use super::figure::FigureButton;
use crate::app::state::{AppState, DialogKind, use_app_state};
use crate::engine::formula::Figure;
use crate::text::{DoughFigures, Shown, name};

/// A figure of the dough as a share of its flour.
#[component]
pub fn ShareFigure(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = use_app_state();
    let shown = shown(state, move |figures| figures.share(figure));
    of_dough(state, Some(figure), shown)
}

/// A figure of the dough by weight.
#[component]
pub fn MassFigure(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = use_app_state();
    let shown = shown(state, move |figures| figures.mass(figure));
    of_dough(state, Some(figure), shown)
}

/// All water as a share of the dough: its moisture.
#[component]
pub fn MoistureFigure() -> impl IntoView {
    let state = use_app_state();
    let shown = shown(state, DoughFigures::moisture);
    of_dough(state, None, shown)
}

/// One of the figures that are written out.
fn shown(
    state: AppState,
    select: impl Fn(&DoughFigures) -> Option<&Shown> + Send + Sync + 'static,
) -> Signal<Shown> {
    Signal::derive(move || {
        state
            .figures
            .with(|figures| select(figures).cloned().unwrap_or_else(Shown::missing))
    })
}

/// The figure, which opens to its working; the moisture where `figure` is none.
fn of_dough(state: AppState, figure: Option<Figure>, shown: Signal<Shown>) -> AnyView {
    let label = name::figure(figure.unwrap_or(Figure::TotalWater));
    let open = move |value| state.open(DialogKind::DoughFigure { figure, value });
    view! { <FigureButton label shown open=Callback::new(open) /> }.into_any()
}
