//! The class: what each bench weighs out, everything together, bowls and oven loads.

use std::num::NonZeroU32;

use leptos::prelude::*;

use super::class_boxes::ClassBoxes;
use crate::app::browser::focus;
use crate::app::browser::live_region::announce;
use crate::app::page::{BatchAnswers, HEADING};
use crate::app::part::{AdviceCard, Button, weigh_table};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::engine::batch::BatchTarget;
use crate::engine::class::{class, oven};
use crate::sheet::Place;
use crate::text::{
    Trouble,
    class::{BenchView, ClassView, class as told_of},
    tr,
};

/// The class.
#[component]
pub fn ClassCard() -> impl IntoView {
    let state = use_app_state();
    let desk = WorkspaceStore::here();
    let answers = BatchAnswers::here();
    let loads = memo(move || {
        let settings = desk.settings.get();
        let loaves = NonZeroU32::new(settings.loaves_in_all()).unwrap_or(NonZeroU32::MIN);
        oven(loaves, settings.oven)
    });
    let told = memo(move || {
        let (options, settings) = (state.options.get(), desk.settings.get());
        state.with(|sheet| {
            let made = class(
                &sheet.formula,
                settings,
                sheet.batch.losses,
                sheet.batch.pieces,
            )
            .map_err(|error| error.sentence(options))?;
            let loads = loads.get().map_err(|error| error.sentence(options))?;
            Ok(told_of(&made, &loads, answers.weighing.get(), options))
        })
    });
    let advice = memo(move || {
        told.with(|told: &Result<ClassView, String>| told.as_ref().ok()?.stagger.clone())
    });
    let make = move |()| {
        let settings = desk.settings.get_untracked();
        state.edit(|sheet| {
            sheet.batch.wanted = BatchTarget::Class {
                students: settings.students,
                loaves: settings.loaves,
                loaf: settings.loaf,
            };
        });
        announce(tr!("The batch is now the whole class’s."));
    };
    let plan = move |()| {
        let loads = loads.get_untracked().map(|loads| loads.as_planned());
        if loads.is_ok_and(|loads| desk.plan_loads(loads)) {
            state.place.set(Place::Day);
            focus::to_the_top();
            focus::move_to(HEADING);
            announce(tr!("The plan now has the class’s oven loads."));
        }
    };
    // A visitor's copy keeps no plan; there Day itself offers the loads.
    let is_kept = move || state.open_id.with(Option::is_some) && loads.with(Result::is_ok);
    view! {
        <details class="card fold" id="class">
            <summary>
                <span class="title">{tr!("Class")}</span>
                <span class="quiet">{move || told.with(|told| told.as_ref().map(|told| told.title.clone()).unwrap_or_default())}</span>
            </summary>
            <div class="body">
                <ClassBoxes />
                <AdviceCard title=tr!("The oven and the class") advice />
                {move || match told.get() {
                    Ok(told) => view! { <Sheet told /> }.into_any(),
                    Err(says) => view! { <p class="trouble">{says}</p> }.into_any(),
                }}
                <div class="buttons">
                    <Button says=tr!("Make the batch the whole class’s") tapped=make />
                    <Show when=is_kept>
                        <Button says=tr!("Plan the day with these oven loads") tapped=plan />
                    </Show>
                </div>
            </div>
        </details>
    }
}

/// The class as a sheet.
#[component]
fn Sheet(
    /// What is told.
    told: ClassView,
) -> impl IntoView {
    let bench = |bench: BenchView| view! { <h3>{bench.title}</h3> {bench.parts.into_iter().map(weigh_table).collect_view()} };
    let items = |all: Vec<String>| {
        all.into_iter()
            .map(|one| view! { <li>{one}</li> })
            .collect_view()
    };
    view! {
        {told.benches.into_iter().map(bench).collect_view()}
        <h3>{tr!("Everything together")}</h3>
        {told.total.into_iter().map(weigh_table).collect_view()}
        <h3>{tr!("Bowls")}</h3>
        <ul class="plain">{items(told.bowls)}</ul>
        <h3>{tr!("Oven")}</h3>
        <ul class="plain">{items(told.loads)}</ul>
    }
}
