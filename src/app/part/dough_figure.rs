//! A figure of the dough: as a share of its flour, or by weight.

use leptos::prelude::*;

use super::figure::{Shown, Tapped, was_by};
use crate::app::state::{DialogKind, State, memo};
use crate::engine::formula::{Figure, Figures, FormulaError};
use crate::text::{Trouble, name, tr, format};

/// A figure of the dough as a share of its flour.
#[component]
pub fn ShareFigure(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = State::here();
    let shown = memo(move || {
        let manner = state.manner.get_untracked();
        let (new, old) = both(state, |figures| figures.share(figure));
        Shown {
            value: match &new {
                Ok(share) => format::share(*share, manner),
                Err(error) => error.sentence(manner),
            },
            was: match (old, new) {
                (Some(Ok(old)), Ok(new)) if old != new => Some(was_by(
                    &format::share(old, manner),
                    &format::points_change(old, new, manner),
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
    let state = State::here();
    let shown = memo(move || {
        let manner = state.manner.get_untracked();
        let (new, old) = both(state, |figures| figures.mass(figure));
        Shown {
            value: format::mass(new, manner),
            was: old.filter(|old| *old != new).map(|old| {
                was_by(
                    &format::mass(old, manner),
                    &format::mass_change(new - old, manner),
                )
            }),
        }
    });
    of_dough(state, Some(figure), shown)
}

/// All water as a share of the dough: its moisture.
#[component]
pub fn MoistureFigure() -> impl IntoView {
    let state = State::here();
    let shown = memo(move || {
        let manner = state.manner.get_untracked();
        let (new, old) = both(state, Figures::moisture);
        Shown {
            value: new.map_or_else(
                || FormulaError::NoFlour.sentence(manner),
                |share| tr!("{value} of dough", value = format::share(share, manner)),
            ),
            was: match (old, new) {
                (Some(Some(old)), Some(new)) if old != new => Some(was_by(
                    &format::share(old, manner),
                    &format::points_change(old, new, manner),
                )),
                _ => None,
            },
        }
    });
    of_dough(state, None, shown)
}

/// The figure, to be tapped for how it came about; the moisture where `figure` is none.
fn of_dough(state: State, figure: Option<Figure>, shown: Memo<Shown>) -> AnyView {
    let label = name::figure(figure.unwrap_or(Figure::TotalWater));
    let open = move |value| state.open(DialogKind::OfDough { figure, value });
    view! { <Tapped label shown open=Callback::new(open) /> }.into_any()
}

/// A figure as it stands, and as it is kept while a trial is on. The manner of writing is not
/// followed: a place is drawn anew when that changes.
fn both<T>(state: State, look: impl Fn(&Figures) -> T) -> (T, Option<T>) {
    state
        .figures
        .with(|figures| (look(&figures.now), figures.kept.as_ref().map(look)))
}
