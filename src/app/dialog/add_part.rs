//! Adding a part: which kind it is to be; and the parts of a new formula.

use leptos::prelude::*;

use crate::app::browser::focus;
use crate::app::part::{Button, part_id};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::formula::{Part, PartKind};
use crate::text::{name, notice, tr};

/// Adds a part of a kind, in the order of the work; returns its place.
fn add(state: AppState, kind: PartKind) -> usize {
    let part = Part::empty(kind, name::part_kind(kind).to_owned());
    let mut place = 0;
    state.edit(|sheet| place = sheet.formula.add_part(part));
    place
}

/// Adds a part of a kind that is chosen.
#[component]
pub fn AddPart() -> impl IntoView {
    let state = use_app_state();
    let tap = move |kind: PartKind| {
        let part = add(state, kind);
        state.close();
        // What goes into it comes next.
        focus::move_to(part_id(part));
    };
    let buttons = PartKind::ALL
        .into_iter()
        .map(|kind| view! { <Button label=name::part_kind(kind) on_tap=move |()| tap(kind) /> })
        .collect_view();
    let has_room = state.sheet().formula.has_room_for_a_part();
    let full = (!has_room).then(|| view! { <p>{notice::parts_full()}</p> });
    let menu = has_room.then(|| view! { <div class="menu">{buttons}</div> });
    view! { {full} {menu} }
}

/// The parts of a new formula, each added or removed by a tap.
#[component]
pub fn NewParts() -> impl IntoView {
    let state = use_app_state();
    let tick = move |kind: PartKind| {
        let has = memo(move || {
            state.with(|sheet| sheet.formula.parts.iter().any(|part| part.kind == kind))
        });
        let changed = move |_| {
            if has.get_untracked() {
                state.edit(|sheet| sheet.formula.parts.retain(|part| part.kind != kind));
            } else {
                add(state, kind);
            }
        };
        view! {
            <label class="tick">
                <input type="checkbox" prop:checked=has on:change=changed />
                {name::part_kind(kind)}
            </label>
        }
    };
    // However the dialog is closed, the parts are then read from the first.
    on_cleanup(|| focus::move_to(part_id(0)));
    let kinds = PartKind::ALL
        .into_iter()
        .filter(|kind| *kind != PartKind::Final);
    view! {
        <p>{tr!("A final dough is there. What else does this bread have?")}</p>
        <div class="menu">{kinds.map(tick).collect_view()}</div>
        <Button label=tr!("Done") class="primary" on_tap=move |()| state.close() />
    }
}
