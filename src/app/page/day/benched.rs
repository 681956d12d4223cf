//! The bake under way, kept for as long as the page is open, with its timers.

use std::cell::OnceCell;

use leptos::prelude::*;

use crate::app::browser::storage::StorageTrouble;
use crate::app::browser::{alarm, clock, storage};
use crate::sheet::Moment;
use crate::sheet::day::Bench;
use crate::sheet::key;
use crate::sheet::record::{read_bench, write_bench};
use crate::words::name;

thread_local! {
    static BENCH: OnceCell<ArcRwSignal<Option<Bench>>> = const { OnceCell::new() };
}

fn shared() -> ArcRwSignal<Option<Bench>> {
    BENCH.with(|bench| {
        bench
            .get_or_init(|| {
                let kept = storage::get(key::BENCH).ok().flatten();
                let bench = ArcRwSignal::new(kept.and_then(|text| read_bench(&text).ok()));
                let watched = bench.clone();
                clock::every_second_for_ever(move || ring(&watched));
                bench
            })
            .clone()
    })
}

/// The bake under way.
pub fn bench() -> RwSignal<Option<Bench>> {
    shared().into()
}

/// Keeps it as it stands now, or takes it away where there is none.
///
/// # Errors
/// What storage says against it.
pub fn keep() -> Result<(), StorageTrouble> {
    match shared().with_untracked(|bench| bench.as_ref().map(write_bench)) {
        Some(text) => storage::set(key::BENCH, &text),
        None => {
            storage::remove(key::BENCH);
            Ok(())
        }
    }
}

/// Rings for every timer that is over and has not been heard.
fn ring(bench: &ArcRwSignal<Option<Bench>>) {
    let now = Moment::from_milliseconds(clock::milliseconds()).unwrap_or_default();
    let over = bench.with_untracked(|bench| {
        let timers = bench.as_ref().map(|bench| bench.over(now));
        let steps = timers.into_iter().flatten().map(|timer| timer.step.work);
        steps.map(name::work).collect::<Vec<_>>()
    });
    if over.is_empty() {
        return;
    }
    bench.update(|bench| {
        if let Some(bench) = bench {
            bench.hear(now);
        }
    });
    // Told in the room already; storage that is full does not stop it.
    let _kept = keep();
    alarm::ring(&over.join(", "));
}
