//! The bowls of a kitchen: what they are called, made of and weigh, and which is for what.

use leptos::prelude::*;

use crate::app::part::{Button, NumberBox, PickOne, Picture, TextBox};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::Material;
use crate::sheet::{Bowl, Kitchen};
use crate::text::{ErrorText, format, language::tr_dynamic, name, read, tr};

/// The bowls, and which of them is for paste and which for dough.
#[component]
pub fn Bowls() -> impl IntoView {
    let state = use_app_state();
    let count = memo(move || state.kitchen.with(|kitchen| kitchen.bowls.len()));
    let names = memo(move || {
        state.kitchen.with(|kitchen| {
            let numbered = kitchen.bowls.iter().enumerate();
            let mut names: Vec<(Option<usize>, String)> = numbered
                .map(|(at, bowl)| (Some(at), name::called(&bowl.name).into_owned()))
                .collect();
            names.push((None, tr!("none that counts").to_owned()));
            names
        })
    });
    let paste = memo(move || state.kitchen.with(|kitchen| kitchen.paste_bowl));
    let mixing = memo(move || state.kitchen.with(|kitchen| kitchen.mixing_bowl));
    view! {
        <div class="boxes">
            <PickOne id="kitchen-paste-bowl" label=tr!("Bowl for the paste") choices=names selected=paste on_select=move |bowl| change(state, |kitchen| kitchen.paste_bowl = bowl) />
            <PickOne id="kitchen-mixing-bowl" label=tr!("Bowl for mixing") choices=names selected=mixing on_select=move |bowl| change(state, |kitchen| kitchen.mixing_bowl = bowl) />
        </div>
        <For each=move || 0..count.get() key=|bowl| *bowl let(bowl)>
            <OneBowl bowl />
        </For>
        <Button label=tr!("Add a bowl") class="bare" picture=Picture::Add on_tap=move |()| change(state, Kitchen::add_bowl) disabled=Signal::derive(move || count.get() >= Kitchen::MOST_BOWLS) />
    }
}

fn change(state: AppState, change: impl FnOnce(&mut Kitchen)) {
    let mut kitchen = state.kitchen.get_untracked();
    change(&mut kitchen);
    state.set_kitchen(kitchen);
}

/// Changes a bowl, as typed or picked in the box `from`.
fn on_bowl(state: AppState, bowl: usize, from: &str, alter: impl FnOnce(&mut Bowl)) {
    let mut kitchen = state.kitchen.get_untracked();
    if let Some(own) = kitchen.bowls.get_mut(bowl) {
        alter(own);
    }
    state.type_kitchen(&format!("{from}-{bowl}"), kitchen);
}

#[component]
fn OneBowl(
    /// Which one.
    bowl: usize,
) -> impl IntoView {
    let state = use_app_state();
    let own = move |kitchen: &Kitchen| kitchen.bowls.get(bowl).cloned();
    let words = memo(move || {
        state
            .kitchen
            .with(own)
            .map(|own| tr_dynamic(&own.name).into_owned())
            .unwrap_or_default()
    });
    let material = memo(move || {
        state
            .kitchen
            .with(own)
            .map_or(Material::Steel, |own| own.material)
    });
    let figure = memo(move || {
        let options = state.options.get();
        state
            .kitchen
            .with(own)
            .map(|own| format::box_mass(own.mass, options))
            .unwrap_or_default()
    });
    let materials = Signal::derive(|| {
        Material::ALL
            .map(|one| (one, name::material(one).to_owned()))
            .to_vec()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        on_bowl(state, bowl, "bowl-mass", |own| own.mass = mass);
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    let label = Signal::derive(move || tr!("{value}, empty", value = name::called(&words.get())));
    view! {
        <fieldset class="phase">
            <legend class="visually-hidden">{move || name::called(&words.get()).into_owned()}</legend>
            <div class="boxes">
                <TextBox id=format!("bowl-name-{bowl}") label=tr!("Name") text=words on_input=move |name: String| on_bowl(state, bowl, "bowl-name", |own| own.name = name) max_length=Kitchen::NAME_LENGTH />
                <PickOne id=BOWL_MATERIALS.get(bowl).copied().unwrap_or("bowl-material") label=tr!("Made of") choices=materials selected=material on_select=move |made_of| on_bowl(state, bowl, "bowl-material", |own| own.material = made_of) />
                <NumberBox id=format!("bowl-mass-{bowl}") label unit figure store=Callback::new(store) />
            </div>
            <Button label=tr!("Remove this bowl") class="bare danger" on_tap=move |()| change(state, |kitchen| kitchen.remove_bowl(bowl)) />
        </fieldset>
    }
}

/// The ids of the lists of materials, one for each bowl there can be.
const BOWL_MATERIALS: [&str; Kitchen::MOST_BOWLS] = [
    "bowl-material-0",
    "bowl-material-1",
    "bowl-material-2",
    "bowl-material-3",
    "bowl-material-4",
    "bowl-material-5",
    "bowl-material-6",
    "bowl-material-7",
    "bowl-material-8",
    "bowl-material-9",
    "bowl-material-10",
    "bowl-material-11",
];
