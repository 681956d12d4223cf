//! Answers about the batch, shared by its place, its key figures and the chocolate.

use crate::text::tr;
use leptos::prelude::*;

use super::divide_card::Bench;
use super::ways::Ways;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::batch::{BatchError, Rounded, Scaled, Weighing, round, scale};
use crate::engine::formula::Formula;
use crate::engine::quantity::Division;
use crate::sheet::Sheet;

/// Answers about the batch.
#[derive(Clone, Copy)]
pub struct BatchAnswers {
    /// The formula as large as what is wanted.
    pub scaled: Memo<Result<Scaled, BatchError>>,
    /// The same for the formula as it is kept, while a trial is on.
    pub before: Memo<Option<Result<Scaled, BatchError>>>,
    /// The formula as large as it is made; as it is written where no batch can be worked out.
    pub made: Memo<Formula>,
    /// The scales of the kitchen.
    pub weighing: Memo<Weighing>,
    /// The batch as those scales show it.
    pub rounded: Memo<Option<Rounded>>,
    /// What was asked for in ways that are not shown now.
    pub ways: RwSignal<Ways>,
    /// The dough that is really on the bench.
    pub bench: RwSignal<Bench>,
}

impl BatchAnswers {
    /// The answers that follow from the state of the page.
    pub fn of(state: AppState) -> Self {
        let scaled = memo(move || state.with(scale_sheet));
        let weighing = memo(move || {
            let scales = state.kitchen.with(|kitchen| kitchen.scales);
            Weighing::from_masses(scales.main, scales.pocket).unwrap_or(Weighing {
                main: Division::ONE_GRAM,
                pocket: None,
            })
        });
        let before = memo(move || state.is_trial().then(|| state.with_saved(scale_sheet)));
        Self {
            scaled,
            before,
            made: memo(move || {
                scaled.with(|scaled| match scaled {
                    Ok(scaled) => scaled.formula.clone(),
                    Err(_) => state.with(|sheet| sheet.formula.clone()),
                })
            }),
            weighing,
            rounded: memo(move || {
                scaled.with(|scaled| {
                    let scaled = scaled.as_ref().ok()?;
                    Some(round(&scaled.formula, weighing.get()))
                })
            }),
            ways: RwSignal::new(Ways::default()),
            bench: RwSignal::new(Bench::default()),
        }
    }

    /// The answers of this page, worked out from when they are first asked for.
    pub fn here() -> Self {
        use_app_state().page_singleton(Self::of)
    }

    /// A figure of the batch, written out; what stands there where there is none.
    pub fn read(self, look: impl Fn(&Scaled) -> String) -> String {
        self.scaled.with(|scaled| match scaled {
            Ok(scaled) => look(scaled),
            Err(_) => tr!("not known").to_owned(),
        })
    }

    /// The same figure before the trial, while one is on.
    pub fn read_before(self, look: impl Fn(&Scaled) -> String) -> Option<String> {
        self.before
            .with(|before| before.as_ref()?.as_ref().ok().map(look))
    }

    /// A figure of the rounded batch.
    pub fn read_rounded<T>(self, look: impl Fn(&Rounded) -> Option<T>) -> Option<T> {
        self.rounded.with(|rounded| look(rounded.as_ref()?))
    }
}

/// A sheet's formula made as large as what is wanted of it.
///
/// # Errors
/// What keeps the batch from being worked out.
pub fn scale_sheet(sheet: &Sheet) -> Result<Scaled, BatchError> {
    let batch = &sheet.batch;
    scale(&sheet.formula, batch.wanted, batch.losses, batch.pieces)
}

/// A sheet's formula as large as it is made; as it is written where no batch can be worked out.
pub fn made(sheet: &Sheet) -> Formula {
    scale_sheet(sheet).map_or_else(|_| sheet.formula.clone(), |scaled| scaled.formula)
}
