//! The loads of the oven: how many, how far apart, from one dough or each from its own.

use leptos::prelude::*;

use super::fields::{BETWEEN, LOADS};
use super::results::Day;
use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Choice, FieldBox};
use crate::app::state::{WorkspaceStore, memo};
use crate::results::day::{as_the_run_bakes, bake_difference, class_loads, load_times};
use crate::text::{day as day_text, tr};

/// The loads of the oven.
#[component]
pub fn LoadsBox() -> impl IntoView {
    let day = Day::from_context();
    let staggered = memo(move || day.settings.with(|settings| settings.loads.staggered));
    let several = memo(move || day.settings.with(|settings| settings.loads.are_several()));
    let wording = memo(move || {
        let options = day.state.options.get();
        let loads = day.settings.with(|settings| settings.loads);
        day.read(|results| load_times(loads, results.bake))
            .flatten()
            .map(|times| day_text::loads(&times, options))
            .unwrap_or_default()
    });
    let answers = vec![
        (false, tr!("are shaped together")),
        (true, tr!("are begun one after the other")),
    ];
    view! {
        <div class="boxes">
            <FieldBox field=LOADS />
            <FieldBox field=BETWEEN />
        </div>
        <Show when=move || several.get()>
            <Choice
                id="load-doughs"
                label=tr!("The doughs of all loads")
                choices=answers.clone()
                selected=staggered
                on_select=Callback::new(move |staggered| day.change_settings(|settings| settings.loads.staggered = staggered))
            />
        </Show>
        <p class="follows" role="status">{wording}</p>
        <ClassLoads />
    }
}

/// The loads of the class, with a button that copies them.
#[component]
fn ClassLoads() -> impl IntoView {
    let day = Day::from_context();
    let workspace = WorkspaceStore::from_context();
    let class = memo(move || workspace.settings.with(class_loads));
    let says = Signal::derive(move || {
        let options = day.state.options.get();
        class
            .get()
            .map(|class| day_text::class_loads(&class, options))
            .unwrap_or_default()
    });
    let differs = memo(move || {
        let options = day.state.options.get();
        let loads = day.settings.with(|settings| settings.loads);
        let bake = day.read(|results| results.bake)?;
        // Loads of one dough are not the class's: its run need not be followed.
        let class = loads.staggered.then(|| workspace.class())?;
        let (sheet, kitchen) = (day.state.current(), day.state.kitchen);
        let (settings, learnt) = (day.settings.get(), day.learnt.get());
        let of_day = (&settings, &learnt);
        let class = kitchen.with(|kitchen| as_the_run_bakes(&sheet, class, kitchen, of_day));
        let differs = bake_difference(&class, loads, bake)?;
        Some(day_text::bake_difference(differs, options))
    });
    let take = move |()| {
        if let Some(loads) = class.get_untracked().map(|class| class.as_planned()) {
            day.change_settings(|settings| settings.loads = loads);
            announce(tr!("The plan now has the class’s oven loads."));
        }
    };
    view! {
        <Show when=move || class.with(Option::is_some)>
            <div class="buttons"><Button label=says on_tap=take /></div>
        </Show>
        {move || differs.get().map(|wording| view! { <p class="quiet">{wording}</p> })}
    }
}
