//! The notice of a bake that was under way as the page began, and the way on with it.

use leptos::prelude::*;

use super::active_bake::open_sheet;
use super::bench_copy;
use super::bench_heading::to_its_top;
use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::sheet::Place;
use crate::text::{day as day_text, notice, tr};

/// The notice, in each place but Day.
#[component]
pub fn BakeNotice() -> impl IntoView {
    let day = Day::from_context();
    let waits = day.state.bake_waits;
    let sentence = memo(move || {
        let bench = day.bench.get();
        bench.map(|bench| {
            let sheet = open_sheet(day.state, &bench);
            day_text::bake_waits(&bench, sheet.as_ref().map(|sheet| &sheet.formula))
        })
    });
    // One that cannot be opened is reported, and leaves nothing to go on with.
    Effect::new(move |_| {
        if sentence.with(Option::is_none) {
            waits.set(false);
        }
    });
    move || {
        sentence.get().map(|sentence| {
            view! {
                <div class="notice waits" role="status">
                    <p>{sentence}</p>
                    <Button label=tr!("Go on with it") class="primary" on_tap=move |()| go_on(day) />
                    <Button label=tr!("Close") class="bare" on_tap=move |()| waits.set(false) />
                </div>
            }
        })
    }
}

/// Opens what is being baked, and goes to the bench.
pub fn go_on(day: Day) {
    let is_open = day.own_bench.with_untracked(Option::is_some) || open(day);
    if !is_open {
        day.state.show_toast(notice::bake_is_gone());
        return;
    }
    day.finished.set(None);
    day.at_bench.set(true);
    day.state.go_to(Place::Day);
    to_its_top();
}

/// Opens the formula of the bake under way, or the copy of a link that it is made by.
fn open(day: Day) -> bool {
    let of = day
        .bench
        .with_untracked(|bench| bench.as_ref().map(|bench| bench.bake.formula.clone()));
    match of {
        Some(Some(id)) => day.state.open_formula(&id),
        Some(None) => bench_copy::open(day.state),
        None => false,
    }
}
