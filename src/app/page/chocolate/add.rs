//! Adding a filling or a syrup to a formula that has none.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Picture};
use crate::app::state::use_app_state;
use crate::engine::formula::PartKind;
use crate::results::chocolate::usual_part;
use crate::text::{ErrorText, language::text, name, notice, tr, tr_noop};

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
        let sheet = state.sheet();
        match usual_part(&sheet, kind, name::part_kind(kind).to_owned()) {
            Ok(Some(_)) if !sheet.formula.has_room_for_a_part() => {
                announce(notice::parts_full());
            }
            Ok(Some(part)) => {
                state.edit(|sheet| {
                    sheet.formula.add_part(part);
                });
                announce(tr!("Added to the formula. Undo removes it."));
            }
            Ok(None) => {}
            Err(error) => announce(&error.sentence(state.options.get_untracked())),
        }
    };
    view! {
        <section class="card" aria-label=title>
            <header>
                <h2>{title}</h2>
            </header>
            <div class="body">
                <p>{asks}</p>
                <Button label=says picture=Picture::Add on_tap=add />
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
