//! The phases of the baking programme: minutes, oven, where the heat comes from, fan.

use crate::engine::numerics::saturating_u32;
use leptos::prelude::*;

use super::HeatContext;
use crate::app::page::Day;
use crate::app::part::{Button, Choice, NumberBox, Picture, degrees, minutes};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::{HeatFrom, Phase};
use crate::results::heat::{shown_phases, type_minutes};
use crate::sheet::{BakeLength, BakeSettings};
use crate::text::{
    ErrorText, FormatOptions, format, heat, name,
    read::{self, ReadError},
    tr,
};

/// The phases of the programme.
#[component]
pub fn Phases() -> impl IntoView {
    let state = use_app_state();
    let count = memo(move || state.with(|sheet| sheet.heat.bake.phases.len()));
    let add = move |()| {
        let oven = state.kitchen.with_untracked(|kitchen| kitchen.oven);
        state.edit(|sheet| sheet.heat.bake.add_phase(oven));
    };
    let length = memo(move || state.with(|sheet| sheet.heat.bake.length));
    let lengths = BakeLength::ALL
        .map(|length| (length, name::bake_length(length)))
        .to_vec();
    let set_length = move |length: BakeLength| {
        state.edit(|sheet| sheet.heat.bake.length = length);
    };
    view! {
        <Choice id="bake-length" label=tr!("Minutes of the plan") choices=lengths selected=length on_select=Callback::new(set_length) />
        <For each=move || 0..count.get() key=|phase| *phase let(phase)>
            <OnePhase phase />
        </For>
        <Button label=tr!("Add a phase") class="bare" picture=Picture::Add on_tap=add disabled=Signal::derive(move || count.get() >= BakeSettings::MOST_PHASES) />
    }
}

#[component]
fn OnePhase(
    /// Which one.
    phase: usize,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let own = move |select: fn(&Phase) -> HeatFrom| {
        state.with(|sheet| {
            sheet
                .heat
                .bake
                .phases
                .get(phase)
                .map_or(HeatFrom::Both, select)
        })
    };
    let from = memo(move || own(|own| own.from));
    let fan = memo(move || {
        state.with(|sheet| sheet.heat.bake.phases.get(phase).is_some_and(|own| own.fan))
    });
    let wording = memo(move || {
        let options = state.options.get();
        reviewed(context, phase, |one| heat::phase(one, options)).unwrap_or_default()
    });
    let advice =
        memo(move || reviewed(context, phase, |one| heat::phase_advice(one.advice)).flatten());
    let choices = HeatFrom::ALL
        .map(|from| (from, name::heat_from(from)))
        .to_vec();
    let fans = vec![(false, tr!("Conventional")), (true, tr!("Fan"))];
    let set = move |change: fn(&mut Phase, HeatFrom, bool), from: HeatFrom, fan: bool| {
        state.edit(|sheet| {
            if let Some(own) = sheet.heat.bake.phases.get_mut(phase) {
                change(own, from, fan);
            }
        });
    };
    let remove = move |()| {
        state.edit(|sheet| sheet.heat.bake.remove_phase(phase));
    };
    let label = tr!(
        "Phase {value}",
        value = format::count(place(phase), FormatOptions::default())
    );
    view! {
        <fieldset class="phase">
            <legend>{label}</legend>
            <div class="boxes">
                <MinutesBox phase />
                <PhaseBox phase label=tr!("Oven") unit=degrees select=|own, options| format::box_temperature(own.temperature, options)
                    set=|own, text, options| read::temperature(text, options).map(|read| own.temperature = read) />
            </div>
            <Choice id=format!("phase-from-{phase}") label=tr!("Heat from") choices=choices selected=from on_select=move |from| set(|own, from, _| own.from = from, from, false) />
            <Choice id=format!("phase-fan-{phase}") label=tr!("Air") choices=fans selected=fan on_select=move |fan| set(|own, _, fan| own.fan = fan, HeatFrom::Both, fan) />
            <p class="quiet follows">{wording}</p>
            {move || advice.get().map(|wording| view! { <p class="caution">{wording}</p> })}
            <Button label=tr!("Remove phase") class="bare danger" on_tap=remove />
        </fieldset>
    }
}

fn place(phase: usize) -> u32 {
    saturating_u32(phase).saturating_add(1)
}

fn reviewed<T>(
    context: HeatContext,
    phase: usize,
    select: impl FnOnce(&crate::engine::heat::ReviewedPhase) -> T,
) -> Option<T> {
    context.results.with(|results| {
        let planned = results.baking.as_ref().ok()?.planned.as_ref().ok()?;
        planned.phases.get(phase).map(select)
    })
}

/// Its minutes: as the plan has them; what is typed is the baker's own, for this phase and, as they
/// are shown, for the others.
#[component]
fn MinutesBox(
    /// Which phase.
    phase: usize,
) -> impl IntoView {
    let state = use_app_state();
    let day = Day::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let shown = day
            .run
            .with(|run| state.with(|sheet| shown_phases(run, &sheet.heat.bake)));
        let own = shown.get(phase);
        own.map(|own| format::box_minutes(*own, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let typed = read::minutes(&text, options).map_err(|error| error.sentence(options))?;
        let mut sheet = state.sheet();
        let shown = untrack(|| day.run.with(|run| shown_phases(run, &sheet.heat.bake)));
        type_minutes(&mut sheet.heat.bake, &shown, (phase, typed));
        state.put(sheet, Some(&format!("phase-minutes-{phase}")));
        Ok(())
    };
    let unit = Signal::derive(move || minutes(state.options.get()));
    view! { <NumberBox id=format!("phase-minutes-{phase}") label=tr!("Minutes") unit figure store=Callback::new(store) /> }
}

#[component]
fn PhaseBox(
    /// Which phase.
    phase: usize,
    /// What is asked for.
    label: &'static str,
    /// Its unit.
    unit: fn(FormatOptions) -> &'static str,
    /// The number, written for a box.
    select: fn(&Phase, FormatOptions) -> String,
    /// Reads a text into the phase.
    set: fn(&mut Phase, &str, FormatOptions) -> Result<(), ReadError>,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("phase-{}-{phase}", label.to_lowercase());
    let from = id.clone();
    let figure = memo(move || {
        let options = state.options.get();
        state
            .with(|sheet| {
                sheet
                    .heat
                    .bake
                    .phases
                    .get(phase)
                    .map(|own| select(own, options))
            })
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let mut sheet = state.sheet();
        if let Some(own) = sheet.heat.bake.phases.get_mut(phase) {
            set(own, &text, options).map_err(|error| error.sentence(options))?;
            state.put(sheet, Some(&from));
        }
        Ok(())
    };
    let unit = Signal::derive(move || unit(state.options.get()));
    view! { <NumberBox id label unit figure store=Callback::new(store) /> }
}
