//! Adding a part: which kind it is to be.

use leptos::prelude::*;

use crate::app::part::Button;
use crate::app::state::use_app_state;
use crate::engine::formula::{Part, PartKind};
use crate::text::{name, notice};

/// Adds a part of a kind that is chosen.
#[component]
pub fn AddPart() -> impl IntoView {
    let state = use_app_state();
    let add = move |kind: PartKind| {
        let part = Part::empty(kind, name::part_kind(kind).to_owned());
        state.edit(|sheet| sheet.formula.add_part(part));
        state.close();
    };
    let buttons = PartKind::ALL
        .into_iter()
        .map(|kind| view! { <Button label=name::part_kind(kind) on_tap=move |()| add(kind) /> })
        .collect_view();
    let has_room = state.sheet().formula.has_room_for_a_part();
    let full = (!has_room).then(|| view! { <p>{notice::parts_full()}</p> });
    let menu = has_room.then(|| view! { <div class="menu">{buttons}</div> });
    view! { {full} {menu} }
}
