//! Adding a filling or a syrup to a formula that has none.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Picture};
use crate::app::state::{AppState, use_app_state};
use crate::engine::chocolate::{usual_filling, usual_syrup};
use crate::engine::formula::{Part, PartKind};
use crate::text::{Trouble, language::text, name, notice, tr, tr_noop};

/// Offers a part that the formula has not.
#[component]
pub fn AddPartCard(
    /// Which kind.
    kind: PartKind,
) -> impl IntoView {
    let state = use_app_state();
    let [title, says, asks] = if kind == PartKind::Topping {
        SYRUP
    } else {
        FILLING
    }
    .map(text);
    let add = move |()| {
        match begun(state, kind) {
            Ok(Some(_)) if !state.sheet().formula.has_room_for_a_part() => {
                announce(notice::parts_full());
            }
            Ok(Some(part)) => {
                state.edit(|sheet| {
                    sheet.formula.parts.push(part);
                    // In the order of the work; parts of one kind stay in theirs.
                    sheet.formula.parts.sort_by_key(|part| part.kind);
                });
                announce(tr!("Added to the formula. Undo takes it out again."));
            }
            Ok(None) => {}
            Err(said) => announce(&said),
        }
    };
    view! {
        <section class="card" aria-label=title>
            <header>
                <h2>{title}</h2>
            </header>
            <div class="body">
                <p>{asks}</p>
                <Button says picture=Picture::Add tapped=add />
            </div>
        </section>
    }
}

/// Title, button, and what it does.
const SYRUP: [&str; 3] = [
    tr_noop!("Syrup for the top"),
    tr_noop!("Add a syrup"),
    tr_noop!(
        "This formula has none. One of dark chocolate and water, thin enough to drizzle, is a start; change it from there."
    ),
];
const FILLING: [&str; 3] = [
    tr_noop!("Filling"),
    tr_noop!("Add a filling"),
    tr_noop!(
        "This formula has none. Dark chocolate, 9 g to 100 g of dough, is a start; change it from there."
    ),
];

fn begun(state: AppState, kind: PartKind) -> Result<Option<Part>, String> {
    let sheet = state.sheet();
    let name = name::part_kind(kind).to_owned();
    let dough = sheet.formula.dough();
    if kind == PartKind::Topping {
        usual_syrup(dough, name, sheet.batch.syrup_at)
            .map_err(|error| error.sentence(state.options.get_untracked()))
    } else {
        Ok(usual_filling(dough, name))
    }
}
