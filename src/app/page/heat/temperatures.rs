//! Temperatures one by one: of each thing that goes into the mixer, by its storage or as typed
//! here.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::engine::quantity::Temperature;
use crate::results::heat::LoadSource;
use crate::sheet::Sheet;
use crate::text::{
    ErrorText, format, name,
    read::{self, ReadError},
};

/// Every temperature of the bowl, each in a box.
#[component]
pub fn Temperatures() -> impl IntoView {
    let context = HeatContext::from_context();
    let rows = memo(move || {
        context
            .read_mixing(|mixing| mixing.load.from.clone())
            .unwrap_or_default()
    });
    let keyed = move || rows.get();
    view! {
        <div class="body boxes">
            <For each=keyed key=|from| spelt(*from) let(from)>
                <OneTemperature from />
            </For>
        </div>
    }
}

fn spelt(from: LoadSource) -> String {
    match from {
        LoadSource::Part(part) => format!("warm-{part}"),
        LoadSource::Line(at) => format!("warm-{}-{}", at.part, at.line),
    }
}

#[component]
fn OneTemperature(
    /// Whose.
    from: LoadSource,
) -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let name = memo(move || {
        state
            .with(|sheet| match from {
                LoadSource::Part(part) => sheet.formula.parts.get(part).map(|own| own.name.clone()),
                LoadSource::Line(at) => sheet
                    .formula
                    .line(at)
                    .map(|line| name::food_short(&line.food).into_owned()),
            })
            .unwrap_or_default()
    });
    let figure = memo(move || {
        let options = state.options.get();
        let at = context.read_mixing(|mixing| mixing.load.starts_at(from));
        at.flatten()
            .map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    });
    let id = spelt(from);
    let box_id = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let at = match read::temperature(&text, options) {
            Ok(at) => Some(at),
            Err(ReadError::Empty) => None,
            Err(error) => return Err(error.sentence(options)),
        };
        state.type_in(&box_id, |sheet| put(sheet, from, at));
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.temperature.symbol());
    view! { <NumberBox id label=name unit figure store=Callback::new(store) /> }
}

fn put(sheet: &mut Sheet, from: LoadSource, at: Option<Temperature>) {
    match from {
        LoadSource::Part(part) => {
            if let Some(own) = sheet.formula.parts.get_mut(part) {
                own.temperature = at;
            }
        }
        LoadSource::Line(place) => {
            if let Some(line) = sheet.formula.line_mut(place) {
                line.temperature = at;
            }
        }
    }
}
