//! Preferments that are not ripe when they leave the fridge, with a button that lets them stand longer.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::quantity::Minutes;
use crate::text::{day as day_text, tr};

/// The preferments that are not ripe in time, and what makes each ripe.
#[component]
pub fn PrefermentConflicts() -> impl IntoView {
    let day = Day::from_context();
    let found = memo(move || {
        let options = day.state.options.get();
        if day.read(|results| results.preferment_conflicts.is_empty()) != Some(false) {
            return Vec::new();
        }
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let found = day.read(|results| {
            let conflicts = results.preferment_conflicts.iter();
            let conflicts = conflicts.map(|one| {
                let wording = day.zone.with_value(|zone| {
                    day_text::preferment_conflict(one, results, &formula, zone, options)
                });
                let cure = day_text::preferment_cure(one, options);
                (wording, one.stand.zip(cure))
            });
            conflicts.collect::<Vec<_>>()
        });
        found.unwrap_or_default()
    });
    let stand =
        move |minutes: Minutes| day.change_settings(|settings| settings.rises.bench = minutes);
    let one = move |(wording, cure): (String, Option<(Minutes, String)>)| {
        view! {
            <p>{wording}</p>
            {cure.map(|(minutes, label)| view! { <Button label on_tap=move |()| stand(minutes) /> })}
        }
    };
    move || {
        let conflicts = found.get();
        (!conflicts.is_empty()).then(|| {
            view! {
                <div class="advice" role="status">
                    <h3>{tr!("Not ripe in time")}</h3>
                    {conflicts.into_iter().map(one).collect_view()}
                </div>
            }
        })
    }
}
