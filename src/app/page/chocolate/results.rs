//! The results about filling and syrup, shared by the place and its key figures.

use leptos::prelude::*;

use crate::app::page::BatchContext;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::chocolate::{ChocolateError, Fill, Syrup};
use crate::results::chocolate::{self, ChocolateResults, MeltResults, SyrupResults};

/// The results about filling and syrup.
#[derive(Clone, Copy)]
pub struct ChocolateContext {
    /// All of them.
    pub now: Memo<ChocolateResults>,
    /// Which part is the filling; `None` where there is none.
    pub filling: Memo<Option<usize>>,
    /// Which part is the syrup; `None` where there is none.
    pub topping: Memo<Option<usize>>,
    /// The syrup of the saved sheet's batch, while a trial is on.
    pub before: Memo<Option<Result<Syrup, ChocolateError>>>,
}

impl ChocolateContext {
    /// The results for the state of the page.
    pub fn of(state: AppState, batch: BatchContext) -> Self {
        let now = memo(move || {
            let sheet = state.current();
            state.kitchen.with(|kitchen| {
                batch
                    .results
                    .with(|batch| chocolate::of(&sheet, kitchen, batch))
            })
        });
        Self {
            now,
            filling: memo(move || now.with(|now| now.filling.as_ref().map(|found| found.part))),
            topping: memo(move || now.with(|now| now.syrup_part)),
            before: memo(move || {
                let saved = state.is_trial().then(|| state.saved())?;
                chocolate::syrup_made(&saved)
            }),
        }
    }

    /// The results of this page, worked out from when they are first asked for.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(|state| Self::of(state, BatchContext::from_context()))
    }

    /// Something of the syrup and its curve, where there is one.
    pub fn read_curve<T>(self, select: impl Fn(&SyrupResults) -> T) -> Option<T> {
        self.now
            .with(|now| now.syrup.as_ref()?.as_ref().ok().map(select))
    }

    /// Something of the syrup, where there is one.
    pub fn read_syrup<T>(self, select: impl Fn(&Syrup) -> T) -> Option<T> {
        self.read_curve(|found| select(&found.syrup))
    }

    /// Something of the syrup as large as the batch makes it, where there is one.
    pub fn read_made<T>(self, select: impl Fn(&Syrup) -> T) -> Option<T> {
        self.now
            .with(|now| now.made.as_ref()?.as_ref().ok().map(select))
    }

    /// Something of the batch's syrup before the trial, while one is on.
    pub fn read_before<T>(self, select: impl Fn(&Syrup) -> T) -> Option<T> {
        self.before.with(|before| {
            let before = before.as_ref()?.as_ref().ok()?;
            Some(select(before))
        })
    }

    /// Something of the filling, where there is one.
    pub fn read_fill<T>(self, select: impl Fn(&Fill) -> T) -> Option<T> {
        self.now.with(|now| {
            let fill = now.filling.as_ref()?.fill.as_ref()?;
            fill.as_ref().ok().map(select)
        })
    }

    /// Something of the melting, where chocolate is melted.
    pub fn read_melt<T>(self, select: impl Fn(&MeltResults) -> T) -> Option<T> {
        self.now
            .with(|now| now.melt.as_ref()?.as_ref().ok().map(select))
    }
}
