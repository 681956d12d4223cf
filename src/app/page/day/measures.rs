//! What is measured at a step: the dough's temperature, its weight, the bread's.

use leptos::prelude::*;

use super::photo_box::PhotoBox;
use super::results::Day;
use crate::app::page::BatchAnswers;
use crate::app::part::NumberBox;
use crate::app::state::memo;
use crate::engine::plan::StepKind;
use crate::engine::quantity::Mass;
use crate::results::day::{note_bread, note_dough, unmixed};
use crate::text::{Trouble, day as told, format, read, tr};

/// The boxes of a step, where something is measured at it.
#[component]
pub fn Measures(
    /// What is done.
    work: StepKind,
) -> impl IntoView {
    if matches!(work, StepKind::Mix | StepKind::ButterIn) {
        view! { <DoughBoxes /> }.into_any()
    } else if work == StepKind::Divide {
        view! { <DoughWeight /> }.into_any()
    } else if work == StepKind::Cool {
        view! { <BreadWeight /> }.into_any()
    } else {
        ().into_any()
    }
}

/// How warm the dough is, and how long it was mixed.
#[component]
fn DoughBoxes() -> impl IntoView {
    let day = Day::here();
    let noted = move || {
        day.bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.noted))
            .unwrap_or_default()
    };
    let warm = memo(move || {
        let options = day.state.options.get();
        noted()
            .dough
            .map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    });
    let minutes = memo(move || {
        let options = day.state.options.get();
        let wished = day.state.with(|sheet| sheet.heat.mixing);
        let usual = day.state.kitchen.with(|kitchen| kitchen.mixer.minutes);
        format::box_minutes(noted().mixing.or(wished).unwrap_or(usual), options)
    });
    let take_warm = move |text: String| {
        let options = day.state.options.get_untracked();
        let warm = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        let sheet = day.state.sheet();
        let kitchen = day.state.kitchen.get_untracked();
        let usual = sheet.heat.mixing.unwrap_or(kitchen.mixer.minutes);
        let unmixed = unmixed(&sheet, &kitchen);
        day.change_bench(|bench| {
            let noted = &mut bench.bake.noted;
            noted.dough = Some(warm);
            noted.unmixed = unmixed;
            noted.mixing = noted.mixing.or(Some(usual));
        });
        Ok(())
    };
    let take_minutes = move |text: String| {
        let options = day.state.options.get_untracked();
        let minutes = read::minutes(&text, options).map_err(|error| error.sentence(options))?;
        day.change_bench(|bench| bench.bake.noted.mixing = Some(minutes));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.temperature.symbol());
    view! {
        <div class="boxes">
            <NumberBox id="real-dough" label=tr!("Dough came off at") unit figure=warm take=Callback::new(take_warm) />
            <NumberBox id="real-mixing" label=tr!("Mixed for") unit=tr!("min") figure=minutes take=Callback::new(take_minutes) />
        </div>
    }
}

/// What lies on the bench to be divided.
#[component]
fn DoughWeight() -> impl IntoView {
    let day = Day::here();
    let answers = BatchAnswers::here();
    let figure = memo(move || {
        let options = day.state.options.get();
        let bowl = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.bowl));
        bowl.map(|bowl| format::box_mass(bowl.after, options))
            .unwrap_or_default()
    });
    let take = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        let into = untrack(|| answers.read_rounded(|rounded| Some(rounded.dough_weighed)));
        day.change_bench(|bench| note_dough(&mut bench.bake, into.unwrap_or(Mass::ZERO), mass));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    view! {
        <div class="boxes">
            <NumberBox id="real-on-bench" label=tr!("Dough on the bench") unit figure take=Callback::new(take) />
        </div>
    }
}

/// What comes out of the oven.
#[component]
fn BreadWeight() -> impl IntoView {
    let day = Day::here();
    let figure = memo(move || {
        let options = day.state.options.get();
        let lost = day
            .bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.oven_loss));
        lost.map(|lost| format::box_mass(lost.after, options))
            .unwrap_or_default()
    });
    let take = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        day.change_bench(|bench| note_bread(&mut bench.bake, mass));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    view! {
        <div class="boxes">
            <NumberBox id="real-bread" label=tr!("Bread out of the oven") unit figure take=Callback::new(take) />
        </div>
        <BreadPhoto />
    }
}

/// A photo of the bread, kept with the bake.
#[component]
fn BreadPhoto() -> impl IntoView {
    let day = Day::here();
    let bake = untrack(|| {
        day.own_bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.clone()))
    });
    let has = Callback::new(move |photo: bool| day.change_bench(|bench| bench.bake.photo = photo));
    bake.map(|bake| {
        let date = day
            .zone
            .with_value(|zone| format::date(bake.began.instant(), zone));
        let alt = Signal::stored(told::photo_of(&bake.name, &date));
        view! { <PhotoBox bake=bake.id alt has /> }
    })
}
