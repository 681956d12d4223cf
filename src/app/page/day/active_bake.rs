//! The bake under way, in memory while the page is open, with its timers, which ring wherever
//! in the app the user is.

use std::cell::OnceCell;
use std::sync::Arc;

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::browser::storage::StorageError;
use crate::app::browser::{alarm, clock, storage};
use crate::app::state::{AppState, stored};
use crate::sheet::day::Bench;
use crate::sheet::{Moment, Place, Sheet};
use crate::storage::{Record, key};
use crate::text::{name, notice, tr};

thread_local! {
    static BENCH: OnceCell<ArcRwSignal<Option<Bench>>> = const { OnceCell::new() };
}

fn shared(state: AppState) -> ArcRwSignal<Option<Bench>> {
    BENCH.with(|bench| {
        bench
            .get_or_init(|| {
                let bench = ArcRwSignal::new(saved(state));
                let watched = bench.clone();
                clock::every_second_for_ever(move || ring(state, &watched));
                let followed = bench.clone();
                storage::watch(move |changed| {
                    // A bake that another tab continues is not overwritten with this tab's copy.
                    if changed.is_none_or(|key| key == key::BENCH) {
                        followed.set(saved(state));
                    }
                });
                bench
            })
            .clone()
    })
}

fn saved(state: AppState) -> Option<Bench> {
    state.reported(stored(key::BENCH))
}

/// The bake under way.
pub fn bench(state: AppState) -> RwSignal<Option<Bench>> {
    shared(state).into()
}

/// The sheet that a bake is made by, where it is the open one: it has the names of the parts.
pub fn open_sheet(state: AppState, bench: &Bench) -> Option<Arc<Sheet>> {
    let (open, sheet) = (state.open_id.get(), state.saved());
    bench
        .bake
        .is_of(open.as_ref(), &sheet.name)
        .then_some(sheet)
}

/// Starts ringing the timers of the bake under way.
pub fn watch_timers(state: AppState) {
    let bench = shared(state);
    // Timers that ended while the page was closed ring at once.
    ring(state, &bench);
}

/// Saves the current bake, or deletes the record where there is none.
///
/// # Errors
/// The storage's error.
pub fn save(state: AppState) -> Result<(), StorageError> {
    match shared(state).with_untracked(|bench| bench.as_ref().map(Record::write)) {
        Some(text) => storage::set(key::BENCH, &text),
        None => {
            storage::remove(key::BENCH);
            Ok(())
        }
    }
}

/// Rings for every timer that is over and has not been heard; away from the bench it is also shown.
fn ring(state: AppState, bench: &ArcRwSignal<Option<Bench>>) {
    let now = Moment::from_milliseconds(clock::milliseconds()).unwrap_or_default();
    let over = bench.with_untracked(|bench| {
        let timers = bench.as_ref().map(|bench| bench.over(now));
        let steps = timers.into_iter().flatten().map(|timer| timer.step);
        let sheet = untrack(|| bench.as_ref().and_then(|bench| open_sheet(state, bench)));
        let formula = sheet.as_ref().map(|sheet| &sheet.formula);
        steps
            .map(|step| name::step_of(step, formula))
            .collect::<Vec<_>>()
    });
    if over.is_empty() {
        return;
    }
    bench.update(|bench| {
        if let Some(bench) = bench {
            bench.hear(now);
        }
    });
    // The alarm has rung already, even where the storage is full.
    if let Some(text) = bench.with_untracked(|bench| bench.as_ref().map(Record::write)) {
        let _saved = storage::set(key::BENCH, &text);
    }
    let what = over.join(tr!(", "));
    alarm::ring(&what);
    let wording = notice::timer_over(&what);
    announce(&wording);
    if state.place.get_untracked() != Place::Day {
        state.timer_alert.set(Some(wording));
    }
}
