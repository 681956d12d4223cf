//! Which ingredient is on hand.

use leptos::prelude::*;

use crate::app::part::PickOne;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::LineAt;
use crate::results::batch::target;
use crate::text::{name, tr};

/// A choice of the formula's ingredients, each once.
#[component]
pub fn OnHandPick() -> impl IntoView {
    let state = use_app_state();
    let foods = memo(move || {
        state.with(|sheet| {
            let lines = target::ingredients(&sheet.formula).into_iter();
            let named = lines.filter_map(|at| {
                let line = sheet.formula.line(at)?;
                Some((Some(at), name::food(&line.food)))
            });
            named.collect::<Vec<(Option<LineAt>, String)>>()
        })
    });
    let selected = memo(move || state.with(target::ingredient_on_hand));
    let chosen = move |at: Option<LineAt>| {
        let mut sheet = state.sheet();
        if let Some(wanted) = at.and_then(|at| target::by_ingredient(&sheet, at)) {
            sheet.batch = target::with_pieces_kept(&sheet, wanted);
            state.put(sheet, None);
            state.reset_inputs();
        }
    };
    view! { <PickOne id="wanted-food" label=tr!("Which ingredient") choices=foods selected on_select=Callback::new(chosen) /> }
}
