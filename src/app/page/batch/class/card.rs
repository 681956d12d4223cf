//! The class: what each bench weighs out, everything together, bowls and oven loads.

use leptos::prelude::*;

use super::fields::ClassBoxes;
use crate::app::browser::focus;
use crate::app::browser::live_region::announce;
use crate::app::page::{Day, HEADING};
use crate::app::part::{AdviceCard, AnswerRow, Button, PickOne, weigh_table};
use crate::app::state::{DialogKind, WorkspaceStore, memo, use_app_state};
use crate::engine::class::{Ahead, ClassSettings};
use crate::results::batch::class::{self, ClassResults};
use crate::results::batch::class_batch;
use crate::results::day::as_the_run_bakes;
use crate::sheet::Place;
use crate::text::{
    self, ErrorText, batch_answer,
    class::{BenchView, ClassView},
    name, tr,
};

/// The class.
#[component]
pub fn ClassCard() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        let settings = workspace.class();
        let tin = state.with(|sheet| class::tin_difference(sheet, &settings));
        batch_answer::class(&settings, tin, options)
    });
    view! {
        <AnswerRow tucked=true title=tr!("Class") answer id="class">
            <Content />
        </AnswerRow>
    }
}

/// Its boxes, the benches, and the loads of the oven.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let day = Day::from_context();
    day.open();
    let results = memo(move || {
        let settings = workspace.class();
        let sheet = state.current();
        let (planned, learnt) = (day.settings.get(), day.learnt.get());
        state.kitchen.with(|kitchen| {
            let settings = as_the_run_bakes(&sheet, settings, kitchen, (&planned, &learnt));
            class::of(&sheet, &settings, kitchen.scales)
        })
    });
    let view = memo(move || {
        let options = state.options.get();
        results
            .with(|results| text::class::view(results, options))
            .map_err(|error| error.sentence(options))
    });
    let advice = memo(move || {
        view.with(|view: &Result<ClassView, String>| view.as_ref().ok()?.stagger.clone())
    });
    let ahead = Signal::derive(move || workspace.settings.get().ahead);
    let ways = Signal::derive(|| {
        let named = |way: Ahead| (way, name::ahead(way).to_owned());
        Ahead::ALL.map(named).to_vec()
    });
    let choose = move |ahead: Ahead| {
        workspace.settings.change(|settings| settings.ahead = ahead);
    };
    let loaf = memo(move || {
        let (settings, options) = (workspace.class(), state.options.get());
        let differs = state.with(|sheet| class::loaf_difference(sheet, &settings))?;
        Some(text::class::loaf_difference(differs, options))
    });
    let tin = memo(move || {
        let settings = workspace.class();
        state.with(|sheet| class::tin_difference(sheet, &settings))
    });
    let use_tin = move |()| {
        if let Some((each, _)) = tin.get_untracked() {
            workspace
                .settings
                .change(|settings| *settings = settings.with_loaf(each));
        }
    };
    let tin_says = move || {
        let options = state.options.get();
        tin.get()
            .map(|differs| text::class::tin_difference(differs, options))
    };
    let make = move |()| {
        let made = untrack(|| workspace.class());
        if workspace
            .settings
            .with_untracked(|settings| settings.of_batch)
        {
            let fixed = |settings: &mut ClassSettings| *settings = settings.with_loaf(made.loaf);
            workspace.settings.change(fixed);
        }
        state.edit(|sheet| sheet.batch = class_batch::of_all(sheet, &made));
        announce(tr!("The batch is now for the whole class."));
    };
    let plan = move |()| {
        let oven = results.with_untracked(|results| results.oven.clone());
        if oven.is_ok_and(|oven| workspace.plan_loads(oven.as_planned())) {
            state.go_to(Place::Day);
            focus::to_the_top();
            focus::move_to(HEADING);
            announce(tr!("The plan now has the class’s oven loads."));
        }
    };
    let how = move |()| {
        let title =
            |view: &Result<ClassView, String>| view.as_ref().ok().map(|one| one.title.clone());
        state.open(DialogKind::Working {
            title: tr!("Class").to_owned(),
            value: view.with_untracked(title).unwrap_or_default(),
            lines: results.with_untracked(ClassResults::working),
        });
    };
    // A visitor's copy keeps no plan; there Day itself offers the loads.
    let can_plan =
        move || state.open_id.with(Option::is_some) && results.with(|results| results.oven.is_ok());
    view! {
            <div class="body">
                <ClassBoxes />
                <PickOne id="class-ahead" label=tr!("Paste and preferment made") choices=ways selected=ahead on_select=Callback::new(choose) />
                <p class="follows">{move || view.with(|view| view.as_ref().map(|view| view.title.clone()).unwrap_or_default())}</p>
                <p class="quiet follows">{move || view.with(|view| view.as_ref().ok()?.weighed.clone())}</p>
                {move || loaf.get().map(|says| view! { <p>{says}</p> })}
                {move || tin_says().map(|says| view! { <p>{says}</p> <div class="buttons"><Button label=tr!("Use the tin’s weight") on_tap=use_tin /></div> })}
                <AdviceCard title=tr!("The oven and the class") advice />
                {move || match view.get() {
                    Ok(view) => view! { <Sheet view /> }.into_any(),
                    Err(says) => view! { <p class="error">{says}</p> }.into_any(),
                }}
                <Show when=move || view.with(Result::is_ok)>
                    <Button label=tr!("How this is worked out") class="bare" on_tap=how />
                </Show>
                <div class="buttons">
                    <Button label=tr!("Set the batch for the whole class") on_tap=make />
                    <Show when=can_plan>
                        <Button label=tr!("Plan the day with these oven loads") on_tap=plan />
                    </Show>
                </div>
            </div>
    }
}

/// The class as a sheet.
#[component]
fn Sheet(
    /// Its content.
    view: ClassView,
) -> impl IntoView {
    let bench = |bench: BenchView| {
        let portion = |(name, shows): (String, String)| view! { <li>{name} ": " {shows}</li> };
        view! {
            <h3>{bench.title}</h3>
            {bench.parts.into_iter().map(weigh_table).collect_view()}
            <ul class="plain">{bench.portions.into_iter().map(portion).collect_view()}</ul>
            {bench.aids.into_iter().map(|aid| view! { <p class="advice">{aid}</p> }).collect_view()}
        }
    };
    let items = |all: Vec<String>| {
        all.into_iter()
            .map(|one| view! { <li>{one}</li> })
            .collect_view()
    };
    view! {
        {view.bowl.into_iter().map(bench).collect_view()}
        {view.benches.into_iter().map(bench).collect_view()}
        <h3>{tr!("Everything together")}</h3>
        {view.total.into_iter().map(weigh_table).collect_view()}
        <h3>{tr!("Bowls")}</h3>
        <ul class="plain">{items(view.bowls)}</ul>
        <h3>{tr!("Oven")}</h3>
        <ul class="plain">{items(view.loads)}</ul>
        {view.evened.map(|says| view! { <p class="quiet">{says}</p> })}
    }
}
