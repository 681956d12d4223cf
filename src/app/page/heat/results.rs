//! The results about heat as memos, shared by the place and its key figures.

use leptos::prelude::*;

use crate::app::page::{BatchContext, Day};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::formula::Formula;
use crate::engine::heat::CookedPaste;
use crate::results::batch::scaled_formula;
use crate::results::heat::{
    CoolingResult, HeatBefore, HeatInput, HeatResults, MixingResult, PasteResult,
};
use crate::results::run::Run;
use crate::sheet::{HeatSettings, Sheet};

/// The results about heat.
#[derive(Clone, Copy)]
pub struct HeatContext {
    /// The formula as large as it is made.
    pub scaled: Memo<Formula>,
    /// The settings of heat.
    pub settings: Memo<HeatSettings>,
    /// All results shown in the first frame.
    pub results: Memo<HeatResults>,
    /// The results before the trial, while one is on.
    pub before: Memo<Option<HeatBefore>>,
    /// The part whose cooling the user picked.
    pub picked: RwSignal<Option<usize>>,
}

impl HeatContext {
    /// The results for the state of the page.
    pub fn of(state: AppState, batch: BatchContext) -> Self {
        let scaled = batch.scaled;
        let settings = memo(move || state.with(|sheet| sheet.heat.clone()));
        let picked = RwSignal::new(None::<usize>);
        let day = Day::from_context();
        let of = move |formula: &Formula, settings: &HeatSettings, run: &Run| {
            state.kitchen.with(|kitchen| {
                HeatResults::of(&HeatInput {
                    formula,
                    settings,
                    kitchen,
                    picked: picked.get(),
                    run,
                })
            })
        };
        let before = move |saved: &Sheet| {
            let whole = scaled_formula(saved);
            let run = day.planned_run_of(saved);
            state
                .kitchen
                .with(|kitchen| HeatBefore::of(&whole, kitchen, &saved.heat, &run))
        };
        Self {
            scaled,
            settings,
            results: memo(move || {
                scaled.with(|formula| {
                    settings.with(|settings| day.run.with(|run| of(formula, settings, run)))
                })
            }),
            before: memo(move || state.is_trial().then(|| state.with_saved(before))),
            picked,
        }
    }

    /// The results of this page, worked out from when they are first asked for.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(|state| Self::of(state, BatchContext::from_context()))
    }

    /// Something of the mix, where it can be worked out.
    pub fn read_mixing<T>(self, select: impl FnOnce(&MixingResult) -> T) -> Option<T> {
        self.results
            .with(|results| results.mixing.as_ref().ok().map(select))
    }

    /// Something of the paste of a part, where it can be worked out.
    pub fn read_paste<T>(self, part: usize, select: impl FnOnce(&CookedPaste) -> T) -> Option<T> {
        self.results.with(|results| results.paste(part).map(select))
    }

    /// Something of the result of the paste of a part.
    pub fn read_paste_result<T>(
        self,
        part: usize,
        select: impl FnOnce(&PasteResult) -> T,
    ) -> Option<T> {
        self.results
            .with(|results| results.paste_result(part).map(select))
    }

    /// Looks at the paste of a part as it was before the trial, where one is on.
    pub fn with_paste_before<T>(
        self,
        part: usize,
        select: impl FnOnce(Option<&CookedPaste>) -> T,
    ) -> T {
        self.before
            .with(|before| select(before.as_ref().and_then(|before| before.paste(part))))
    }

    /// The place of the first paste's part, where there is one.
    pub fn first_paste(self) -> Option<usize> {
        self.results
            .with(|results| results.pastes.first().map(|paste| paste.part))
    }

    /// Something of the cooling that is shown, where there is one.
    pub fn read_cooling<T>(self, select: impl FnOnce(&CoolingResult) -> T) -> Option<T> {
        self.results
            .with(|results| results.cooling.as_ref().map(select))
    }
}
