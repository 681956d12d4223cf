//! What is cooled and how: which part, how hot, in what, by which way, by which rules.

use leptos::prelude::*;

use super::HeatContext;
use super::fields::{ACROSS, BENCH, ICE};
use crate::app::part::{Choice, FieldBox, NumberBox, PickOne, degrees};
use crate::app::state::{memo, use_app_state};
use crate::engine::heat::{CoolingVessel, RuleSet};
use crate::text::{
    ErrorText, format, name,
    read::{self, ReadError},
    tr,
};

/// Which part is cooled, where there are several; its temperature off the heat, where that is not
/// known.
#[component]
pub fn WhatCools() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let coolable = memo(move || context.results.with(|results| results.coolable.clone()));
    let several = memo(move || coolable.with(|parts| parts.len() > 1));
    let cools = memo(move || context.read_cooling(|cooling| cooling.part));
    let parts = memo(move || {
        coolable
            .get()
            .into_iter()
            .map(|part| (Some(part), state.with(|sheet| name_of(sheet, part))))
            .collect::<Vec<_>>()
    });
    let by_hand = memo(move || {
        let part = context.read_cooling(|cooling| (!cooling.is_paste).then_some(cooling.part));
        part.flatten()
    });
    view! {
        <div class="boxes">
            <Show when=move || several.get()>
                <PickOne id="cooling-part" label=tr!("What cools") choices=parts selected=cools on_select=move |part| context.picked.set(part) />
            </Show>
            {move || by_hand.get().map(|part| view! { <ComesOff part /> })}
        </div>
    }
}

fn name_of(sheet: &crate::sheet::Sheet, part: usize) -> String {
    sheet
        .formula
        .parts
        .get(part)
        .map(|own| own.name.clone())
        .unwrap_or_default()
}

/// The temperature of a filling off the heat; empty where it is not cooked.
#[component]
fn ComesOff(
    /// The index of its part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let figure = memo(move || {
        let options = state.options.get();
        let at = state.with(|sheet| sheet.formula.parts.get(part)?.temperature);
        at.map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    });
    let id = format!("cooling-from-{part}");
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let at = match read::temperature(&text, options) {
            Ok(at) => Some(at),
            Err(ReadError::Empty) => None,
            Err(error) => return Err(error.sentence(options)),
        };
        state.type_in(&from, |sheet| {
            if let Some(own) = sheet.formula.parts.get_mut(part) {
                own.temperature = at;
            }
        });
        Ok(())
    };
    let unit = Signal::derive(move || degrees(state.options.get()));
    view! { <NumberBox id label=tr!("Comes off the heat at") unit figure store=Callback::new(store) /> }
}

/// How it is cooled, and whose rules hold.
#[component]
pub fn CoolingBoxes() -> impl IntoView {
    let state = use_app_state();
    let vessels = CoolingVessel::ALL
        .map(|vessel| (vessel, name::cooling_vessel(vessel)))
        .to_vec();
    let vessel = memo(move || state.with(|sheet| sheet.heat.cooling.vessel));
    let own = memo(move || state.with(|sheet| sheet.heat.cooling.own_times().is_some()));
    let ways = vec![
        (false, tr!("Fastest safe way")),
        (true, tr!("My own times")),
    ];
    let lid = memo(move || state.with(|sheet| sheet.heat.cooling.lid));
    let lids = vec![(true, tr!("Film or lid")), (false, tr!("Open"))];
    let rules = memo(move || state.kitchen.with(|kitchen| kitchen.rules));
    let all_rules = Signal::derive(|| {
        RuleSet::ALL
            .map(|rules| (rules, name::rule_set(rules).to_owned()))
            .to_vec()
    });
    let set_rules = move |rules: RuleSet| {
        let mut kitchen = state.kitchen.get_untracked();
        kitchen.rules = rules;
        state.set_kitchen(kitchen);
    };
    view! {
        <Choice id="heat-way" label=tr!("Way") choices=ways selected=own on_select=move |own| state.edit(|sheet| sheet.heat.cooling.set_own(own)) />
        <Choice id="heat-vessel" label=tr!("Cools in") choices=vessels selected=vessel on_select=move |vessel| state.edit(|sheet| sheet.heat.cooling.set_vessel(vessel)) />
        <div class="boxes">
            <FieldBox field=ACROSS />
            <Show when=move || own.get()>
                <FieldBox field=BENCH />
                <FieldBox field=ICE />
            </Show>
            <PickOne id="heat-rules" label=tr!("Food-safety rules") choices=all_rules selected=rules on_select=Callback::new(set_rules) />
        </div>
        <Choice id="heat-lid" label=tr!("On the bench it is") choices=lids selected=lid on_select=move |lid| state.edit(|sheet| sheet.heat.cooling.lid = lid) />
    }
}
