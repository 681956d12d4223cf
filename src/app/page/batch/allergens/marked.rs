//! Marked allergens: those from packets or the kitchen, to be added and removed.

use leptos::prelude::*;

use crate::app::part::{Button, PickOne};
use crate::app::state::memo;
use crate::engine::ingredients::Allergen;
use crate::results::batch::allergens::unmarked;
use crate::text::{name, tr};

/// Marked allergens, to be added and removed.
#[component]
pub fn Marked(
    /// Unique on the page.
    id: &'static str,
    /// What they are marked as.
    label: &'static str,
    /// Those that are marked.
    #[prop(into)]
    selected: Signal<Vec<Allergen>>,
    /// Called with all of them when one is added or removed.
    changed: Callback<Vec<Allergen>>,
) -> impl IntoView {
    let choices = memo(move || {
        let marked = selected.get();
        let mut all: Vec<(Option<Allergen>, String)> = vec![(None, tr!("add one").to_owned())];
        let left = unmarked(&marked).into_iter();
        all.extend(left.map(|one| (Some(one), name::allergen(one).to_owned())));
        all
    });
    let add = move |one: Option<Allergen>| {
        if let Some(one) = one {
            let mut marked = selected.get_untracked();
            marked.push(one);
            changed.run(marked);
        }
    };
    let remove = move |one: Allergen| {
        let mut marked = selected.get_untracked();
        marked.retain(|other| *other != one);
        changed.run(marked);
    };
    let button = move |one: Allergen| {
        let label = tr!("Remove {value}", value = name::allergen(one));
        view! { <Button label on_tap=move |()| remove(one) /> }
    };
    view! {
        <PickOne id label choices selected=Signal::stored(None) on_select=Callback::new(add) />
        <div class="buttons">{move || selected.get().into_iter().map(button).collect_view()}</div>
    }
}
