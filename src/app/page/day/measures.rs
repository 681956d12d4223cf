//! The boxes of a step for what is measured at it: dough temperature, masses of paste, dough, bread.

use leptos::prelude::*;

use super::bake_found::BakeFound;
use super::photo_box::PhotoBox;
use super::results::Day;
use crate::app::page::BatchContext;
use crate::app::part::NumberBox;
use crate::app::state::memo;
use crate::engine::batch::Scaled;
use crate::engine::plan::StepAt;
use crate::engine::quantity::Mass;
use crate::results::day::{
    Measurement, measured_steam, measurement_at, mixing_time, note_bread, note_dough,
    note_dough_temperature, note_mixing_time,
};
use crate::text::{ErrorText, day as day_text, format, read, tr};

/// The boxes of a step, where something is measured at it.
#[component]
pub fn Measures(
    /// Which.
    step: StepAt,
) -> impl IntoView {
    match measurement_at(step.work) {
        Some(Measurement::DoughTemperature) => view! { <DoughWarmth /> }.into_any(),
        Some(Measurement::PasteMass) => view! { <PasteMass step /> }.into_any(),
        Some(Measurement::DoughMass) => view! { <DoughMass /> }.into_any(),
        Some(Measurement::BreadMass) => view! { <BreadMass /> }.into_any(),
        None => ().into_any(),
    }
}

/// How warm the dough is.
#[component]
fn DoughWarmth() -> impl IntoView {
    let day = Day::from_context();
    let warm = memo(move || {
        let options = day.state.options.get();
        let dough = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.dough));
        dough
            .map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let warm = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        let sheet = day.state.sheet();
        let kitchen = day.state.kitchen.get_untracked();
        day.change_bench(|bench| {
            note_dough_temperature(&mut bench.bake, &sheet, &kitchen, warm);
        });
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.temperature.symbol());
    view! {
        <div class="boxes dough-warmth">
            <NumberBox id="real-dough" label=tr!("Dough temperature") unit figure=warm store=Callback::new(store) />
        </div>
    }
}

/// How long the dough was mixed, at the steps at which it is.
#[component]
pub fn MixedFor(
    /// At which step.
    step: StepAt,
) -> impl IntoView {
    let is_mixed = measurement_at(step.work) == Some(Measurement::DoughTemperature);
    is_mixed.then(|| view! { <MixingBox /> })
}

#[component]
fn MixingBox() -> impl IntoView {
    let day = Day::from_context();
    let minutes = memo(move || {
        let options = day.state.options.get();
        let kitchen = day.state.kitchen.get();
        let minutes = day.bench.with(|bench| {
            let bake = bench.as_ref().map(|bench| &bench.bake);
            day.state.with(|sheet| mixing_time(bake, sheet, &kitchen))
        });
        format::box_minutes(minutes, options)
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let minutes = read::minutes(&text, options).map_err(|error| error.sentence(options))?;
        let sheet = day.state.sheet();
        let kitchen = day.state.kitchen.get_untracked();
        day.change_bench(|bench| note_mixing_time(&mut bench.bake, &sheet, &kitchen, minutes));
        Ok(())
    };
    view! {
        <div class="boxes">
            <NumberBox id="real-mixing" label=tr!("Mixed for") unit=tr!("min") figure=minutes store=Callback::new(store) />
        </div>
    }
}

/// The mass of a paste on its way to the fridge.
#[component]
fn PasteMass(
    /// At which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let figure = memo(move || {
        let options = day.state.options.get();
        let steam = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.steam));
        steam
            .map(|steam| format::box_mass(steam.weighed.after, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let sheet = day.state.sheet();
        let steam = untrack(|| day.with_input(&sheet, |input| measured_steam(input, step, mass)));
        day.change_bench(|bench| bench.bake.noted.steam = steam);
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    view! {
        <div class="boxes">
            <NumberBox id=format!("real-paste-{}", step.of) label=tr!("Paste weight after scalding") unit figure store=Callback::new(store) />
        </div>
    }
}

/// The mass of dough on the bench, to be divided.
#[component]
fn DoughMass() -> impl IntoView {
    let day = Day::from_context();
    let context = BatchContext::from_context();
    let figure = memo(move || {
        let options = day.state.options.get();
        let bowl = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.bowl));
        bowl.map(|bowl| format::box_mass(bowl.after, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let into = untrack(|| context.read_rounded(|rounded| Some(rounded.dough_weighed)));
        day.change_bench(|bench| note_dough(&mut bench.bake, into.unwrap_or(Mass::ZERO), mass));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    view! {
        <div class="boxes">
            <NumberBox id="real-on-bench" label=tr!("Dough on the bench") unit figure store=Callback::new(store) />
        </div>
    }
}

/// The mass of bread out of the oven.
#[component]
fn BreadMass() -> impl IntoView {
    let day = Day::from_context();
    let context = BatchContext::from_context();
    let figure = memo(move || {
        let options = day.state.options.get();
        let bread = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.found.bread));
        bread
            .map(|bread| format::box_mass(bread, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let beside = untrack(|| context.read_scaled(Scaled::beside_dough));
        let beside = beside.unwrap_or(Mass::ZERO);
        day.change_bench(|bench| note_bread(&mut bench.bake, mass, beside));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    view! {
        <BakeFound />
        <div class="boxes">
            <NumberBox id="real-bread" label=tr!("Bread out of the oven") unit figure store=Callback::new(store) />
        </div>
    }
}

/// A photo of the bread, stored with the bake.
#[component]
pub fn BreadPhoto() -> impl IntoView {
    let day = Day::from_context();
    let bake = untrack(|| {
        day.own_bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.clone()))
    });
    let has = Callback::new(move |photo: bool| day.change_bench(|bench| bench.bake.photo = photo));
    bake.map(|bake| {
        let date = day
            .zone
            .with_value(|zone| format::date(bake.baked().instant(), zone));
        let alt = Signal::stored(day_text::photo_of(&bake.name, &date));
        view! { <PhotoBox bake=bake.id alt has /> }
    })
}
