//! The phases of the baking programme: minutes, oven, where the heat comes from, fan.

use crate::engine::numerics::saturating_u32;
use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::part::{Button, Choice, NumberBox, Picture, degrees, minutes};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::{HeatFrom, Phase};
use crate::sheet::BakeSettings;
use crate::text::{
    FormatOptions, Trouble, format, heat, name,
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
    view! {
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
    let answers = HeatAnswers::here();
    let own = move |look: fn(&Phase) -> HeatFrom| {
        state.with(|sheet| {
            sheet
                .heat
                .bake
                .phases
                .get(phase)
                .map_or(HeatFrom::Both, look)
        })
    };
    let from = memo(move || own(|own| own.from));
    let fan = memo(move || {
        state.with(|sheet| sheet.heat.bake.phases.get(phase).is_some_and(|own| own.fan))
    });
    let said = memo(move || {
        let options = state.options.get();
        reviewed(answers, phase, |one| heat::phase(one, options)).unwrap_or_default()
    });
    let advice =
        memo(move || reviewed(answers, phase, |one| heat::phase_advice(one.advice)).flatten());
    let ways = HeatFrom::ALL
        .map(|from| (from, name::heat_from(from)))
        .to_vec();
    let fans = vec![(false, tr!("Still")), (true, tr!("Fan"))];
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
                <PhaseBox phase label=tr!("Minutes") unit=minutes look=|own, options| format::box_minutes(own.minutes, options)
                    set=|own, text, options| read::minutes(text, options).map(|read| own.minutes = read) />
                <PhaseBox phase label=tr!("Oven") unit=degrees look=|own, options| format::box_temperature(own.temperature, options)
                    set=|own, text, options| read::temperature(text, options).map(|read| own.temperature = read) />
            </div>
            <Choice id=format!("phase-from-{phase}") label=tr!("Heat from") answers=ways selected=from on_select=move |from| set(|own, from, _| own.from = from, from, false) />
            <Choice id=format!("phase-fan-{phase}") label=tr!("Air") answers=fans selected=fan on_select=move |fan| set(|own, _, fan| own.fan = fan, HeatFrom::Both, fan) />
            <p class="quiet follows">{said}</p>
            {move || advice.get().map(|said| view! { <p class="caution">{said}</p> })}
            <Button label=tr!("Take this phase away") class="bare danger" on_tap=remove />
        </fieldset>
    }
}

fn place(phase: usize) -> u32 {
    saturating_u32(phase).saturating_add(1)
}

fn reviewed<T>(
    answers: HeatAnswers,
    phase: usize,
    look: impl FnOnce(&crate::engine::heat::ReviewedPhase) -> T,
) -> Option<T> {
    answers.results.with(|results| {
        let programme = results.baking.as_ref().ok()?.programme.as_ref().ok()?;
        programme.phases.get(phase).map(look)
    })
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
    look: fn(&Phase, FormatOptions) -> String,
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
                    .map(|own| look(own, options))
            })
            .unwrap_or_default()
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let mut sheet = state.sheet();
        if let Some(own) = sheet.heat.bake.phases.get_mut(phase) {
            set(own, &text, options).map_err(|error| error.sentence(options))?;
            state.put(sheet, Some(&from));
        }
        Ok(())
    };
    let unit = Signal::derive(move || unit(state.options.get()));
    view! { <NumberBox id label unit figure take=Callback::new(take) /> }
}
