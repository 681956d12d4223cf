//! Pastes that cool too slowly for the kitchen's rules, with a button that cures it.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::text::{day as day_text, tr};

/// The pastes that cool too slowly, and what cures each.
#[component]
pub fn PasteConflicts() -> impl IntoView {
    let day = Day::from_context();
    let found = memo(move || {
        let options = day.state.options.get();
        if day.read(|results| results.paste_conflicts.is_empty()) != Some(false) {
            return Vec::new();
        }
        let rules = day.state.kitchen.with(|kitchen| kitchen.rules);
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let found = day.read(|results| {
            let conflicts = results.paste_conflicts.iter();
            let conflicts = conflicts.map(|one| {
                let wording = day_text::paste_conflict(one, rules, &formula, options);
                (wording, day_text::paste_cure(one, options))
            });
            conflicts.collect::<Vec<_>>()
        });
        found.unwrap_or_default()
    });
    // The way of cooling applies to all pastes of the formula.
    let cure = move |()| day.state.edit(|sheet| sheet.heat.cooling.set_own(false));
    let one = move |(wording, label): (String, Option<String>)| {
        view! {
            <p>{wording}</p>
            {label.map(|label| view! { <Button label on_tap=cure /> })}
        }
    };
    move || {
        let conflicts = found.get();
        (!conflicts.is_empty()).then(|| {
            view! {
                <div class="advice" role="status">
                    <h3>{tr!("Not safe as it is planned")}</h3>
                    {conflicts.into_iter().map(one).collect_view()}
                </div>
            }
        })
    }
}
