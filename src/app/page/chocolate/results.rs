//! Answers about filling and syrup, shared by the place and its key figures.

use leptos::prelude::*;

use crate::app::page::BatchAnswers;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::chocolate::{ChocolateError, Fill, FillAsked, Syrup, fill, first_of};
use crate::engine::formula::PartKind;
use crate::engine::quantity::Mass;
use crate::sheet::Sheet;

/// Answers about filling and syrup.
#[derive(Clone, Copy)]
pub struct ChocolateAnswers {
    /// Which part is the filling; none where there is none.
    pub filling: Memo<Option<usize>>,
    /// Which part is the syrup; none where there is none.
    pub topping: Memo<Option<usize>>,
    /// The filling of this batch.
    pub fill: Memo<Option<Result<Fill, ChocolateError>>>,
    /// The syrup as the formula has it.
    pub syrup: Memo<Option<Result<Syrup, ChocolateError>>>,
    /// The same as it is kept, while a trial is on.
    pub before: Memo<Option<Result<Syrup, ChocolateError>>>,
}

impl ChocolateAnswers {
    /// The answers that follow from the state of the page.
    pub fn of(state: AppState, batch: BatchAnswers) -> Self {
        let first = move |kind| state.with(|sheet| first_of(&sheet.formula, kind));
        let filling = memo(move || first(PartKind::Filling));
        let topping = memo(move || first(PartKind::Topping));
        Self {
            filling,
            topping,
            fill: memo(move || fill_of(batch, filling.get()?)),
            syrup: memo(move || state.with(|sheet| syrup_of(sheet, topping.get()?))),
            before: memo(move || {
                let first = |sheet: &Sheet| first_of(&sheet.formula, PartKind::Topping);
                state
                    .is_trial()
                    .then(|| state.with_saved(|saved| syrup_of(saved, first(saved)?)))
                    .flatten()
            }),
        }
    }

    /// The answers of this page, worked out from when they are first asked for.
    pub fn here() -> Self {
        use_app_state().page_singleton(|state| Self::of(state, BatchAnswers::here()))
    }

    /// Something of the syrup, where there is one.
    pub fn read_syrup<T>(self, look: impl Fn(&Syrup) -> T) -> Option<T> {
        self.syrup
            .with(|syrup| syrup.as_ref()?.as_ref().ok().map(look))
    }

    /// Something of the syrup before the trial, while one is on.
    pub fn read_before<T>(self, look: impl Fn(&Syrup) -> T) -> Option<T> {
        self.before
            .with(|syrup| syrup.as_ref()?.as_ref().ok().map(look))
    }

    /// Something of the filling, where there is one.
    pub fn read_fill<T>(self, look: impl Fn(&Fill) -> T) -> Option<T> {
        self.fill.with(|fill| match fill {
            Some(Ok(fill)) => Some(look(fill)),
            Some(Err(_)) | None => None,
        })
    }
}

/// The syrup of a sheet, where that part is it.
fn syrup_of(sheet: &Sheet, part: usize) -> Option<Result<Syrup, ChocolateError>> {
    let part = sheet.formula.parts.get(part)?;
    Some(Syrup::of(part, sheet.batch.syrup_at))
}

/// The filling of this batch, from what is made of it.
fn fill_of(batch: BatchAnswers, part: usize) -> Option<Result<Fill, ChocolateError>> {
    let filled = batch.read_scaled(|scaled| {
        let made: Mass = scaled.formula.parts.get(part)?.mass();
        Some(fill(
            FillAsked::Total(made),
            scaled.pieces.count,
            scaled.pieces.each,
            scaled.losses.topping,
        ))
    });
    filled.flatten()
}
