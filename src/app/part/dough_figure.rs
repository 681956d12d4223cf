//! A figure of the dough: as a share of its flour, or by weight.

use leptos::prelude::*;

use super::figure::{FigureButton, Shown, was_by};
use crate::app::state::{AppState, DialogKind, memo, use_app_state};
use crate::engine::formula::{Figure, Figures, FormulaError};
use crate::text::{ErrorText, format, name, tr};

/// A figure of the dough as a share of its flour.
#[component]
pub fn ShareFigure(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = use_app_state();
    let shown = memo(move || {
        let options = state.options.get_untracked();
        let (new, old) = both(state, |figures| figures.share(figure));
        Shown {
            value: match &new {
                Ok(share) => format::share(*share, options),
                Err(error) => error.sentence(options),
            },
            was: match (old, new) {
                (Some(Ok(old)), Ok(new)) if old != new => Some(was_by(
                    &format::share(old, options),
                    &format::points_change(old, new, options),
                )),
                _ => None,
            },
        }
    });
    of_dough(state, Some(figure), shown)
}

/// A figure of the dough by weight.
#[component]
pub fn MassFigure(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = use_app_state();
    let shown = memo(move || {
        let options = state.options.get_untracked();
        let (new, old) = both(state, |figures| figures.mass(figure));
        Shown {
            value: format::mass(new, options),
            was: old.filter(|old| *old != new).map(|old| {
                was_by(
                    &format::mass(old, options),
                    &format::mass_change(old, new, options),
                )
            }),
        }
    });
    of_dough(state, Some(figure), shown)
}

/// All water as a share of the dough: its moisture.
#[component]
pub fn MoistureFigure() -> impl IntoView {
    let state = use_app_state();
    let shown = memo(move || {
        let options = state.options.get_untracked();
        let (new, old) = both(state, Figures::moisture);
        Shown {
            value: new.map_or_else(
                || FormulaError::NoFlour.sentence(options),
                |share| tr!("{value} of dough", value = format::share(share, options)),
            ),
            was: match (old, new) {
                (Some(Some(old)), Some(new)) if old != new => Some(was_by(
                    &format::share(old, options),
                    &format::points_change(old, new, options),
                )),
                _ => None,
            },
        }
    });
    of_dough(state, None, shown)
}

/// The figure, which opens to its working; the moisture where `figure` is none.
fn of_dough(state: AppState, figure: Option<Figure>, shown: Memo<Shown>) -> AnyView {
    let label = name::figure(figure.unwrap_or(Figure::TotalWater));
    let open = move |value| state.open(DialogKind::DoughFigure { figure, value });
    view! { <FigureButton label shown open=Callback::new(open) /> }.into_any()
}

/// A figure now, and the saved one while a trial is on. The format options are not
/// followed: a place is drawn anew when that changes.
fn both<T>(state: AppState, select: impl Fn(&Figures) -> T) -> (T, Option<T>) {
    state
        .figures
        .with(|figures| (select(&figures.now), figures.saved.as_ref().map(select)))
}
