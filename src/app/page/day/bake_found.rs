//! What is found as the bread comes out: how hot the middle is, how brown the crust.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Choice, NumberBox};
use crate::app::state::memo;
use crate::results::day::underbaked;
use crate::sheet::day::Crust;
use crate::text::{ErrorText, day as day_text, format, read, tr};

/// Core temperature and colour.
#[component]
pub fn BakeFound() -> impl IntoView {
    let day = Day::from_context();
    let found = memo(move || {
        day.bench
            .with(|bench| bench.as_ref().map(|bench| bench.bake.found))
            .unwrap_or_default()
    });
    let core = memo(move || {
        let options = day.state.options.get();
        let core = found.get().core;
        core.map(|core| format::box_temperature(core, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let core = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        day.change_bench(|bench| bench.bake.found.core = Some(core));
        Ok(())
    };
    let unit = Signal::derive(move || day.state.options.get().units.temperature.symbol());
    let choices = Crust::ALL.map(|crust| (Some(crust), day_text::crust(crust)));
    let selected = Signal::derive(move || found.get().crust);
    let select =
        move |crust: Option<Crust>| day.change_bench(|bench| bench.bake.found.crust = crust);
    let cold = memo(move || {
        let options = day.state.options.get();
        let found = day.read(|results| underbaked(&found.get(), results));
        found
            .flatten()
            .map(|found| day_text::underbaked(&found, options))
    });
    view! {
        <div class="boxes">
            <NumberBox id="real-core" label=tr!("Middle of the bread") unit figure=core store=Callback::new(store) />
        </div>
        {move || cold.get().map(|cold| view! { <p class="advice" role="status">{cold}</p> })}
        <Choice id="real-crust" label=tr!("Crust") choices=choices.to_vec() selected on_select=Callback::new(select) />
    }
}
