//! The state of the day and its results: settings, log, bake under way, plan.

use leptos::prelude::*;

use super::finished::Finished;
use super::local_time::{clock_now, zone_here};
use super::removed_bake::RemovedBake;
use super::{active_bake, bench_copy};
use crate::app::browser::storage;
use crate::app::page::BatchContext;
use crate::app::state::{AppState, Persisted, SaveError, memo, stored, use_app_state};
use crate::engine::learn::Learnt;
use crate::engine::plan::PlanError;
use crate::engine::quantity::Instant;
use crate::results::day::{self, DayInput, DayResults, is_untouched, learnt, to_keep};
use crate::results::heat::PasteCooling;
use crate::results::run::Run;
use crate::sheet::civil::Zone;
use crate::sheet::day::{Bench, DaySettings, Log};
use crate::sheet::{Id, Moment, Sheet};
use crate::storage::key;

/// What the steps of a plan's settings are noted under.
pub(super) const DAY: &str = "day";

/// Results for the day, and their inputs.
#[derive(Clone, Copy)]
pub struct Day {
    /// The state of the page.
    pub state: AppState,
    /// The plan settings of the open formula.
    pub settings: RwSignal<DaySettings>,
    /// The log.
    pub log: Persisted<Log>,
    /// The bake that was removed from the log last.
    pub removed: RwSignal<Option<RemovedBake>>,
    /// The bake under way, of whichever formula.
    pub bench: RwSignal<Option<Bench>>,
    /// The bake under way, where it is one of the open formula.
    pub own_bench: Memo<Option<Bench>>,
    /// Whether the bench is shown instead of the plan.
    pub at_bench: RwSignal<bool>,
    /// The bake that was finished last, until its summary is left.
    pub finished: RwSignal<Option<Finished>>,
    /// This second.
    pub now: RwSignal<Moment>,
    /// This minute.
    pub minute: Memo<Instant>,
    /// The zone of the clock on the wall.
    pub zone: StoredValue<Zone>,
    /// The estimates from the bakes of this kitchen.
    pub learnt: Memo<Learnt>,
    /// The batch, as the scales show it.
    pub batch: BatchContext,
    /// The run of the open formula by its plan, which every place shows.
    pub run: Memo<Run>,
    /// The same before there is a plan.
    wished: Memo<Run>,
    /// The coolings of the last run: one that is asked for again is not worked out again.
    coolings: StoredValue<Vec<PasteCooling>>,
    /// The results: rises, plan and times.
    pub results: Memo<Result<DayResults, PlanError>>,
}

impl Day {
    /// The context for the formula that is open, whichever that is.
    fn of(state: AppState) -> Self {
        let bench = active_bake::bench(state);
        let now = RwSignal::new(clock_now());
        let minute = memo(move || now.get().instant().minute());
        let zone = StoredValue::new(zone_here(now.get_untracked().instant()));
        let settings = RwSignal::new(DaySettings::default());
        let log = Persisted::<Log>::new(state);
        let taught = memo(move || {
            let kitchen = state.kitchen.get();
            let own = state.open_id.get();
            log.with(|log| learnt(log, &kitchen, own.as_ref()))
        });
        let name = memo(move || state.with_saved(|sheet| sheet.name.clone()));
        let own_bench = memo(move || {
            let open = state.open_id.get();
            let is_own = |bench: &Bench| name.with(|name| bench.bake.is_of(open.as_ref(), name));
            bench.get().filter(is_own)
        });
        let day = Self {
            state,
            settings,
            log,
            removed: RwSignal::new(None),
            bench,
            own_bench,
            at_bench: RwSignal::new(bench.with_untracked(Option::is_some)),
            finished: RwSignal::new(None),
            now,
            minute,
            zone,
            learnt: taught,
            batch: BatchContext::from_context(),
            run: memo(move || {
                let day = Self::from_context();
                let planned = |results: &DayResults| results.run.clone();
                day.read(planned).unwrap_or_else(|| day.wished.get())
            }),
            wished: memo(move || {
                let day = Self::from_context();
                let run = day.run_of(&state.current());
                day.coolings.set_value(run.coolings.clone());
                run
            }),
            coolings: StoredValue::new(Vec::new()),
            results: memo(move || {
                let (day, sheet) = (Self::from_context(), state.current());
                day.wished.with(|run| {
                    let known = |input: &DayInput| day::of_run(input, run.clone());
                    day.with_input(&sheet, known)
                })
            }),
        };
        storage::watch(move |changed| day.sync_changed(changed.as_deref()));
        bench_copy::follow(state, bench, settings);
        day
    }

    /// The context of this page.
    pub fn from_context() -> Self {
        use_app_state().page_singleton(Self::of)
    }

    /// The run of a sheet before there is a plan, with all other inputs unchanged.
    fn run_of(self, sheet: &Sheet) -> Run {
        self.batch.results.with(|batch| {
            DayInput {
                sheet,
                kitchen: &self.state.kitchen.get(),
                settings: &self.settings.get(),
                learnt: &self.learnt.get(),
                rounded: batch.rounded.as_ref(),
                // A run has no clock.
                zone: &Zone::default(),
                now: Moment::default(),
                bench: self.own_bench.get().as_ref(),
            }
            .run_known(&self.coolings.get_value())
        })
    }

    /// The results of a sheet, with all other inputs unchanged.
    ///
    /// # Errors
    /// Those of [`day::of`].
    pub fn results_of(self, sheet: &Sheet) -> Result<DayResults, PlanError> {
        let run = self.run_of(sheet);
        self.with_input(sheet, |input| day::of_run(input, run))
    }

    /// The run of a sheet by its plan, with all other inputs unchanged.
    pub fn planned_run_of(self, sheet: &Sheet) -> Run {
        let planned = self.results_of(sheet).map(|results| results.run);
        planned.unwrap_or_else(|_| self.run_of(sheet))
    }

    /// Runs a function of the results on a sheet, with all other inputs unchanged.
    pub fn with_input<T>(self, sheet: &Sheet, run: impl FnOnce(&DayInput) -> T) -> T {
        self.batch.results.with(|batch| {
            run(&DayInput {
                sheet,
                kitchen: &self.state.kitchen.get(),
                settings: &self.settings.get(),
                learnt: &self.learnt.get(),
                rounded: batch.rounded.as_ref(),
                zone: &self.zone.get_value(),
                now: Moment::from_instant(self.minute.get()),
                bench: self.own_bench.get().as_ref(),
            })
        })
    }

    /// Runs a function of the results on the sheet that is shown and its plan, where there is one.
    pub fn with_results<T>(self, run: impl FnOnce(&DayInput, &DayResults) -> T) -> Option<T> {
        let sheet = self.state.current();
        self.results.with(|results| {
            let results = results.as_ref().ok()?;
            Some(self.with_input(&sheet, |input| run(input, results)))
        })
    }

    /// Reads the plan settings of the formula that is now open.
    pub fn open(self) {
        // A file imported elsewhere on the page may have added bakes.
        self.log.refresh();
        let id = self.formula_id();
        let saved = match &id {
            Some(id) => self.state.reported(stored(&key::of_day(id))),
            None if self.bakes_copy() => bench_copy::settings(self.state),
            None => None,
        };
        self.settings.set(saved.unwrap_or_default());
    }

    /// The formula that is open; a visitor's copy has none.
    pub fn formula_id(self) -> Option<Id> {
        self.state.open_id.get_untracked()
    }

    /// Changes the log and saves it. Returns whether it could be saved.
    pub fn change_log(self, change: impl FnOnce(&mut Log)) -> bool {
        self.log.update(change)
    }

    /// Changes the bake under way, and keeps it.
    pub fn change_bench(self, change: impl FnOnce(&mut Bench)) {
        let before = self.bench.get_untracked();
        let mut bench = before.clone();
        if let Some(bench) = &mut bench {
            change(bench);
        }
        self.put_bench(bench.clone());
        self.state.note_step(key::BENCH, [before, bench], |bench| {
            Self::from_context().put_bench(bench);
        });
    }

    /// Keeps the step that is due on the screen until it is done. The baker has changed nothing, so
    /// there is nothing to undo.
    pub fn keep_open(self) {
        let now = self.now.get_untracked();
        let due = untrack(|| {
            let bench = self.own_bench.get()?;
            self.read(|results| to_keep(&bench, results, now)).flatten()
        });
        if let (Some(step), Some(mut bench)) = (due, self.bench.get_untracked()) {
            bench.at = Some(step);
            self.put_bench(Some(bench));
        }
    }

    /// Forgets a bake of which the bench was only looked at.
    pub fn forget_untouched(self) {
        let is_looked_at = |bench: &Option<Bench>| bench.as_ref().is_some_and(is_untouched);
        if self.bench.with_untracked(is_looked_at) {
            self.put_bench(None);
            self.state.forget_changes(key::BENCH);
            bench_copy::remove();
        }
    }

    /// Whether the open sheet is a copy without a formula, and is being baked.
    pub(super) fn bakes_copy(self) -> bool {
        self.formula_id().is_none() && self.own_bench.with_untracked(Option::is_some)
    }

    /// Stores the bake under way.
    fn put_bench(self, bench: Option<Bench>) {
        self.bench.set(bench);
        if self.bakes_copy() {
            bench_copy::store(self.state, &self.settings.get_untracked());
        }
        if let Err(error) = active_bake::save(self.state) {
            self.state.report(SaveError::Storage(error));
        }
    }

    /// A figure of the results, where there is a plan.
    pub fn read<T>(self, select: impl FnOnce(&DayResults) -> T) -> Option<T> {
        self.results
            .with(|results| results.as_ref().ok().map(select))
    }

    /// Reads what another tab has saved.
    fn sync_changed(self, changed: Option<&str>) {
        if changed.is_none_or(|key| key == key::BENCH) {
            self.state.forget_changes(key::BENCH);
        }
        if let Some(own) = self.formula_id().map(|id| key::of_day(&id))
            && changed == Some(own.as_str())
            && let Some(settings) = self.state.reported(stored(&own))
        {
            self.state.forget_changes(DAY);
            self.settings.set(settings);
        }
    }
}
