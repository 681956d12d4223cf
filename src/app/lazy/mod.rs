//! Later: what the browser loads when it is first opened, so that a first visit is light.
//!
//! Each piece is an entry in `pieces`. The build cuts the binary there: what only a piece needs
//! goes along with it, into a file of its own.

mod entry_points;
pub mod language;
mod lazy_view;
pub mod links;
pub mod records;

use leptos::prelude::*;

use super::browser::{focus, storage};
use super::page::HEADING;
use super::state::{AppState, DialogKind};
use crate::sheet::{Place, key};
use lazy_view::{at_once, later};
use wasm_bindgen_futures::spawn_local;

/// A view that is a piece: loaded by the first entry, drawn by the second.
macro_rules! piece {
    ($load:ident, $draw:ident, $arrived:expr) => {
        later(
            || Box::pin(async { entry_points::$load().await.is_ok() }),
            Box::new(|| at_once(entry_points::$draw())?.ok()),
            $arrived,
        )
    };
}

/// A place that is loaded when it is opened; none where it is there from the start.
pub fn place(place: Place) -> Option<AnyView> {
    let arrived = || focus::move_to(HEADING);
    match place {
        Place::Formula => None,
        Place::Batch => Some(piece!(load_batch, batch, arrived)),
        Place::Heat => Some(piece!(load_heat, heat, arrived)),
        Place::Chocolate => Some(piece!(load_chocolate, chocolate, arrived)),
        Place::Day => Some(piece!(load_day, day, arrived)),
    }
}

/// The cards of Formula below those of the parts, which come right after these are drawn.
pub fn formula_rest() -> AnyView {
    piece!(load_formula_rest, formula_rest, || ())
}

/// The bar that stands there while a trial is on.
pub fn trial_bar() -> AnyView {
    piece!(load_trial_bar, trial_bar, || ())
}

/// Tins, labels, shopping and the class: the lower half of Batch, which comes after the upper.
pub fn class() -> AnyView {
    piece!(load_class, class, || ())
}

/// What a visitor sees first of a formula that came with a link.
pub fn visit() -> AnyView {
    piece!(load_visit, visit, || ())
}

/// More ways of handing out: a code, paper, other files, and recipes taken in.
pub fn hand() -> AnyView {
    piece!(load_hand, hand, || ())
}

/// The key figures of such a place.
pub fn keys(place: Place) -> Option<AnyView> {
    match place {
        Place::Formula => None,
        Place::Batch => Some(piece!(load_batch_keys, batch_keys, || ())),
        Place::Heat => Some(piece!(load_heat_keys, heat_keys, || ())),
        Place::Chocolate => Some(piece!(load_chocolate_keys, chocolate_keys, || ())),
        Place::Day => Some(piece!(load_day_keys, day_keys, || ())),
    }
}

/// Has the timers of a bake under way ring wherever the user is. Where none runs, nothing is loaded.
pub fn ring_timers(state: AppState) {
    let bench = storage::get(key::BENCH).ok().flatten();
    if bench.is_some_and(|bench| bench.contains(NOT_HEARD)) {
        spawn_local(async move {
            // Where it does not come, the place itself says so when it is opened.
            if entry_points::load_timers().await.is_ok() {
                let _watched = at_once(entry_points::timers(state));
            }
        });
    }
}

/// What stands in a record of the bench that has a timer yet to ring.
const NOT_HEARD: &str = "\"heard\":false";

/// The open formula beside another one.
pub fn compare() -> AnyView {
    later(
        || Box::pin(async { records::load().await && entry_points::load_compare().await.is_ok() }),
        Box::new(|| {
            if !records::are_here() {
                return None;
            }
            at_once(entry_points::compare())?.ok()
        }),
        || (),
    )
}

/// What stands open over the page. The shelf reads records.
pub fn over(opened: DialogKind) -> AnyView {
    later(
        || Box::pin(async { records::load().await && entry_points::load_over().await.is_ok() }),
        Box::new(move || {
            if !records::are_here() {
                return None;
            }
            at_once(entry_points::over(opened.clone()))?.ok()
        }),
        || (),
    )
}
