//! One step of the plan: when, what, how long; opened, it can be changed.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Button, NumberBox, TextBox};
use crate::app::state::memo;
use crate::engine::numerics::saturating_u32;
use crate::engine::plan::{Edit, Step, StepAt};
use crate::results::day::step_count;
use crate::text::{
    ErrorText, caution,
    day::{self as day_text, StepLine, caution_of},
    format, read, tr,
};

/// One step of the plan.
#[component]
pub fn StepRow(
    /// Its index in the plan's list.
    place: usize,
) -> impl IntoView {
    let day = Day::from_context();
    let line = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        day.read(|results| {
            let (step, timed) = results.step(place)?;
            day.zone
                .with_value(|zone| Some(day_text::step_line(step, timed, &formula, zone, options)))
        })
        .flatten()
    });
    let number = memo(move || {
        let options = day.state.options.get();
        let number = day.read(|results| {
            let (step, _) = results.step(place)?;
            step_count(results, step.at)
        });
        let number = number.flatten().map(saturating_u32);
        number.map(|number| format::count(number, options))
    });
    let part = move |pick: fn(StepLine) -> String| move || line.get().map(pick).unwrap_or_default();
    let starts_day = memo(move || {
        let first = day.read(|results| {
            day.zone
                .with_value(|zone| day_text::first_of_day(results, place, zone))
        });
        first.flatten()
    });
    let waits = memo(move || line.with(|line| line.as_ref().is_some_and(|line| line.waits)));
    let opened = RwSignal::new(false);
    view! {
        <li class="step" class:waits=move || waits.get()>
            {move || starts_day.get().map(|date| view! { <h3 class="day">{date}</h3> })}
            <details on:toggle=move |_| opened.set(true)>
                <summary>
                    <span class="clock">{part(|line| line.clock)}</span>
                    <span class="name" data-step=number>{part(|line| line.name)}</span>
                    <span class="quiet">{part(|line| line.long)}</span>
                </summary>
                <Show when=move || opened.get()>
                    <p>{part(|line| line.lasts)}</p>
                    <p>{part(|line| line.signs.to_owned())}</p>
                    <Safety place />
                    <Change place />
                </Show>
            </details>
        </li>
    }
}

/// What safety asks for at it.
#[component]
fn Safety(
    /// Its index.
    place: usize,
) -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        let step = day.read(|results| results.step(place).map(|(step, _)| step.at.work));
        let step = step.flatten().and_then(caution_of)?;
        Some(caution::safety(step, options).sentence())
    });
    move || {
        wording
            .get()
            .map(|wording| view! { <p class="advice">{wording}</p> })
    }
}

/// How it is changed.
#[component]
fn Change(
    /// Its index.
    place: usize,
) -> impl IntoView {
    let day = Day::from_context();
    let at = memo(move || {
        day.read(|results| results.step(place).map(|(step, _)| step.at))
            .flatten()
    });
    let figure = memo(move || {
        let options = day.state.options.get();
        let lasts = day.read(|results| results.step(place).map(|(_, timed)| timed.lasts));
        lasts
            .flatten()
            .map(|lasts| format::box_minutes(lasts, options))
            .unwrap_or_default()
    });
    let change = move |edit: &dyn Fn(StepAt) -> Edit| {
        if let Some(step) = at.get_untracked() {
            day.edit(edit(step));
        }
    };
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let minutes = read::minutes(&text, options).map_err(|error| error.sentence(options))?;
        change(&|step| Edit::Duration { step, minutes });
        Ok(())
    };
    let new = RwSignal::new(String::new());
    let add = move |()| {
        let name = new.get_untracked();
        if let Some(after) = at.get_untracked()
            && !name.trim().is_empty()
        {
            day.edit(
                day.settings
                    .with_untracked(|settings| settings.own_step(after, &name)),
            );
            new.set(String::new());
        }
    };
    view! {
        <div class="boxes">
            <NumberBox id=format!("step-{place}-lasts") label=tr!("Lasts") unit=tr!("min") figure store=Callback::new(store) />
        </div>
        <div class="buttons">
            <Button label=tr!("Before the step above") on_tap=move |()| change(&|step| Edit::Sooner { step }) />
            <Button label=tr!("Leave out") class="danger" on_tap=move |()| change(&|step| Edit::LeftOut { step }) />
        </div>
        <TextBox id=format!("step-{place}-new") label=tr!("A step of your own after it") text=new on_input=Callback::new(move |text| new.set(text)) max_length=Step::NAME_LENGTH />
        <Button label=tr!("Add it") on_tap=add />
    }
}
