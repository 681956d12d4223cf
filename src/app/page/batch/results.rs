//! The results of the batch, shared by its place, its key figures, heat, chocolate and the day.

use leptos::prelude::*;

use super::dividing::BenchBoxes;
use super::target::PreviousTargets;
use crate::app::browser::live_region::announce;
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::engine::batch::{BatchFigure, Rounded, Scaled};
use crate::engine::formula::Formula;
use crate::engine::quantity::Mass;
use crate::engine::working::WorkingLine;
use crate::results::batch::{self, BatchResults, class_weighed, target};
use crate::text::{self, tr};

/// The results of the batch.
#[derive(Clone, Copy)]
pub struct BatchContext {
    /// The batch of the open formula.
    pub results: Memo<BatchResults>,
    /// The batch of the formula as it is saved, while a trial is open.
    pub saved: Memo<Option<BatchResults>>,
    /// The formula as it is made.
    pub scaled: Memo<Formula>,
    /// The last target of each kind.
    pub previous: RwSignal<PreviousTargets>,
    /// What was typed about the dough on the bench.
    pub bench: RwSignal<BenchBoxes>,
}

impl BatchContext {
    /// The results for the state of the page.
    pub fn of(state: AppState) -> Self {
        let scales = memo(move || state.kitchen.with(|kitchen| kitchen.scales));
        let results = memo(move || state.with(|sheet| batch::of(sheet, scales.get())));
        Self {
            results,
            saved: memo(move || {
                let of = |sheet: &_| batch::of(sheet, scales.get());
                state.is_trial().then(|| state.with_saved(of))
            }),
            scaled: memo(move || results.with(|results| results.formula.clone())),
            previous: RwSignal::new(PreviousTargets::default()),
            bench: RwSignal::new(BenchBoxes::default()),
        }
    }

    /// The results of this page, computed from when they are first asked for.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(Self::of)
    }

    /// Whether the formula can be scaled to its batch target.
    pub fn is_scaled(self) -> bool {
        self.results.with(|results| results.scaled.is_ok())
    }

    /// Makes the batch that the tins take.
    pub fn fill_tins(state: AppState, dough: Mass) {
        state.edit(|sheet| sheet.batch.wanted = target::of_dough(sheet, dough));
        announce(tr!("The batch now fits the tins."));
    }

    /// A figure of the scaled batch; none where it cannot be scaled.
    pub fn read_scaled<T>(self, select: impl FnOnce(&Scaled) -> T) -> Option<T> {
        self.results
            .with(|results| results.scaled.as_ref().ok().map(select))
    }

    /// A figure of the batch, formatted.
    pub fn read(self, select: impl Fn(&Scaled) -> String) -> String {
        let found = self.read_scaled(select);
        found.unwrap_or_else(|| tr!("not known").to_owned())
    }

    /// The same figure of the saved formula, while a trial is open.
    pub fn read_before(self, select: impl Fn(&Scaled) -> String) -> Option<String> {
        self.saved
            .with(|saved| saved.as_ref()?.scaled.as_ref().ok().map(select))
    }

    /// A figure of the rounded batch.
    pub fn read_rounded<T>(self, select: impl Fn(&Rounded) -> Option<T>) -> Option<T> {
        self.results
            .with(|results| select(results.rounded.as_ref()?))
    }

    /// What a class's batch weighs as one and bench by bench, where that differs.
    pub fn two_ways(self) -> Option<String> {
        let state = use_app_state();
        let (options, class) = (state.options.get(), WorkspaceStore::from_context().class());
        let scales = state.kitchen.with(|kitchen| kitchen.scales);
        let two = self.results.with(|batch| {
            state.with(|sheet| class_weighed::two_ways(sheet, batch, &class, scales))
        })?;
        Some(text::class::two_ways(two, options))
    }

    /// The steps that lead to a figure of the batch.
    pub fn working_of(self, figure: BatchFigure) -> Vec<WorkingLine> {
        self.results
            .with_untracked(|results| results.working_of(figure))
    }
}
