//! This kitchen: all that is true of the room and its equipment, in one card; several by name.

use leptos::prelude::*;

use super::bowls::Bowls;
use super::fold::Fold;
use super::kitchen_boxes::{ALTITUDE, MIXER, PRESSURE, TEMPERATURES};
use crate::app::browser::live_region::announce;
use crate::app::part::{
    AnswerRow, Button, Choice, FieldBox, PickOne, Picture, ScaleBoxes, TextBox, WorkingButton,
};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::HeatFrom;
use crate::sheet;
use crate::sheet::{BoilsBy, Kitchen, Oven};
use crate::text::{format, heat, language::tr_dynamic, name, notice, tr};

/// The kitchen: its four temperatures first, all else in a fold.
#[component]
pub fn KitchenCard() -> impl IntoView {
    let state = use_app_state();
    let called = memo(move || {
        state
            .kitchen
            .with(|kitchen| name::called(&kitchen.name).into_owned())
    });
    let answer = memo(move || {
        let options = state.options.get();
        state
            .kitchen
            .with(|kitchen| heat::kitchen_answer(kitchen, options))
    });
    view! {
        <AnswerRow title=tr!("The kitchen") answer>
            <div class="body">
                <p class="quiet">{called}</p>
                <WhichKitchen />
                <div class="boxes">{TEMPERATURES.map(|field| view! { <FieldBox field /> })}</div>
            </div>
            <Fold title=tr!("Everything about this kitchen") aside=tr!("height, mixer, oven, scales, bowls, other kitchens")>
                <div class="body">
                    <Height />
                    <div class="boxes">{MIXER.map(|field| view! { <FieldBox field /> })}</div>
                    <OvenChoices />
                    <ScaleBoxes />
                    <Bowls />
                    <Kitchens />
                </div>
            </Fold>
        </AnswerRow>
    }
}

/// The kitchens by name, and which of them is this one.
fn names(state: AppState) -> Memo<Vec<(usize, String)>> {
    memo(move || {
        state.with_kitchens(|kitchens| {
            kitchens
                .all()
                .enumerate()
                .map(|(at, one)| (at, name::called(&one.name).into_owned()))
                .collect()
        })
    })
}

fn turn(state: AppState, change: impl FnOnce(sheet::Kitchens) -> sheet::Kitchens) {
    state.set_kitchens(change(untrack(|| state.with_kitchens(Clone::clone))));
    state.reset_inputs();
}

/// Which kitchen it is, where there are several.
#[component]
fn WhichKitchen() -> impl IntoView {
    let state = use_app_state();
    let names = names(state);
    let chosen = memo(move || state.with_kitchens(sheet::Kitchens::chosen));
    let several = memo(move || names.with(|names| names.len() > 1));
    view! {
        <Show when=move || several.get()>
            <PickOne id="kitchen-here" label=tr!("Bake in") choices=names selected=chosen on_select=move |at: usize| turn(state, |kitchens| kitchens.choose(at)) />
        </Show>
    }
}

/// Its name, and other kitchens.
#[component]
fn Kitchens() -> impl IntoView {
    let state = use_app_state();
    let words = memo(move || {
        state
            .kitchen
            .with(|kitchen| tr_dynamic(&kitchen.name).into_owned())
    });
    let count = memo(move || state.with_kitchens(|kitchens| kitchens.all().count()));
    let several = move || count.get() > 1;
    let full = Signal::derive(move || count.get() >= sheet::Kitchens::MOST);
    let take_away = move |()| {
        turn(state, sheet::Kitchens::remove_here);
        state.show_toast(notice::kitchen_gone());
    };
    let rename = move |name: String| {
        let mut kitchen = state.kitchen.get_untracked();
        kitchen.name = name;
        state.type_kitchen("kitchen-name", kitchen);
    };
    let add = move |()| {
        let like = state.kitchen.get_untracked().another();
        turn(state, |kitchens| kitchens.with(like));
        announce(tr!("Another kitchen, like the one before. Give it a name."));
    };
    view! {
        <TextBox id="kitchen-name" label=tr!("Name of the kitchen") text=words on_input=rename max_length=Kitchen::NAME_LENGTH />
        <div class="buttons">
            <Button label=tr!("Add a kitchen") class="bare" picture=Picture::Add on_tap=add disabled=full />
            <Show when=several>
                <Button label=tr!("Remove this kitchen") class="bare danger" on_tap=take_away />
            </Show>
        </div>
    }
}

/// What decides where water boils.
#[component]
fn Height() -> impl IntoView {
    let state = use_app_state();
    let by_altitude = memo(move || {
        state
            .kitchen
            .with(|kitchen| matches!(kitchen.boils_by, BoilsBy::Altitude(_)))
    });
    let choices = vec![
        (true, tr!("By altitude")),
        (false, tr!("By the day’s pressure")),
    ];
    let chosen = move |by_altitude: bool| {
        let mut kitchen = state.kitchen.get_untracked();
        kitchen.boil_by(by_altitude);
        state.set_kitchen(kitchen);
        state.reset_inputs();
    };
    let boils = memo(move || {
        let options = state.options.get();
        state
            .kitchen
            .with(|kitchen| {
                kitchen.boiling().map(|boiling| {
                    tr!(
                        "Water boils at {value} here.",
                        value = format::temperature(boiling.temperature, options)
                    )
                })
            })
            .unwrap_or_default()
    });
    let worked = move |()| {
        let options = state.options.get();
        let boiling = state.kitchen.with(Kitchen::boiling);
        boiling.map_or_else(
            |_| Default::default(),
            |boiling| {
                let shown = format::temperature(boiling.temperature, options);
                (shown, boiling.working())
            },
        )
    };
    view! {
        <Choice id="kitchen-boils-by" label=tr!("Where water boils") choices selected=by_altitude on_select=Callback::new(chosen) />
        <div class="boxes">
            <Show when=move || by_altitude.get() fallback=|| view! { <FieldBox field=PRESSURE /> }>
                <FieldBox field=ALTITUDE />
            </Show>
            <p class="quiet follows">{boils}</p>
            <WorkingButton title=tr!("Where water boils") worked=Callback::new(worked) />
        </div>
    }
}

/// What the oven can do.
#[component]
fn OvenChoices() -> impl IntoView {
    let state = use_app_state();
    let fan = memo(move || state.kitchen.with(|kitchen| kitchen.oven.fan));
    let from = memo(move || state.kitchen.with(|kitchen| kitchen.oven.from));
    let set = move |change: &dyn Fn(&mut Oven)| {
        let mut kitchen = state.kitchen.get_untracked();
        change(&mut kitchen.oven);
        state.set_kitchen(kitchen);
    };
    let fans = vec![(false, tr!("Conventional")), (true, tr!("Fan"))];
    let choices = HeatFrom::ALL
        .map(|from| (from, name::heat_from(from)))
        .to_vec();
    view! {
        <Choice id="kitchen-fan" label=tr!("Oven") choices=fans selected=fan on_select=move |fan| set(&|oven| oven.fan = fan) />
        <Choice id="kitchen-heat-from" label=tr!("Heat from") choices=choices selected=from on_select=move |from| set(&|oven| oven.from = from) />
    }
}
