//! Measured temperatures of pastes and preferments at a step: the time they still need, set with
//! one tap.

use crate::engine::numerics::saturating_u16;
use leptos::prelude::*;

use super::local_time::clock_now;
use super::results::Day;
use crate::app::part::{Button, NumberBox};
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::engine::quantity::Minutes;
use crate::results::day::{FoundWarmth, found_warmth, measured_cooling};
use crate::results::heat::measured_at;
use crate::sheet::day::Measured;
use crate::text::{ErrorText, FormatOptions, day as day_text, format, read, tr};

/// A box for each paste and preferment of a step.
#[component]
pub fn WarmthBoxes(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let parts = untrack(|| {
        day.state
            .with(|sheet| measured_at(step.work, step.of, &sheet.formula))
    });
    let boxes = parts.into_iter();
    boxes
        .map(|part| view! { <WarmthBox step part /> })
        .collect_view()
}

#[component]
fn WarmthBox(
    /// At which step.
    step: StepAt,
    /// Which part.
    part: usize,
) -> impl IntoView {
    let day = Day::from_context();
    let of = saturating_u16(part);
    let name = memo(move || {
        day.state.with(|sheet| {
            let own = sheet.formula.parts.get(part);
            own.map(|own| own.name.clone()).unwrap_or_default()
        })
    });
    let found = memo(move || {
        day.own_bench
            .with(|bench| bench.as_ref()?.found(step, of).copied())
    });
    let figure = memo(move || {
        let options = day.state.options.get();
        found
            .get()
            .map(|found| format::box_temperature(found.at, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let at = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        let when = clock_now();
        let sheet = day.state.sheet();
        let cooling = untrack(|| {
            day.with_input(&sheet, |input| {
                measured_cooling(input, (step, part), at, when)
            })
        });
        day.change_bench(|bench| {
            bench.bake.noted.cooling = cooling.or(bench.bake.noted.cooling);
            bench.measure(Measured {
                step,
                part: of,
                at,
                when,
            });
        });
        Ok(())
    };
    let warmth = memo(move || {
        let sheet = day.state.current();
        day.with_input(&sheet, |input| found_warmth(input, step, part))
    });
    let wording = memo(move || {
        let options = day.state.options.get();
        let warmth = warmth.get()?;
        Some(name.with(|name| day_text::found_warmth(name, &warmth, options)))
    });
    let buttons = memo(move || {
        let options = day.state.options.get();
        warmth
            .get()
            .map(|warmth| buttons(&warmth, options))
            .unwrap_or_default()
    });
    let wait = move |minutes: Minutes| {
        day.change_bench(|bench| bench.wait(step, clock_now(), minutes));
    };
    let unit = Signal::derive(move || day.state.options.get().units.temperature.symbol());
    let label = Signal::derive(move || tr!("{value} is at", value = name.get()));
    let button = move |(minutes, wording): (Minutes, String)| view! { <Button label=wording on_tap=move |()| wait(minutes) /> };
    view! {
        <div class="boxes">
            <NumberBox id=format!("warmth-{part}") label unit figure store=Callback::new(store) />
        </div>
        <p role="status">{move || wording.get()}</p>
        <div class="buttons">{move || buttons.get().into_iter().map(button).collect_view()}</div>
    }
}

/// What can be tapped.
fn buttons(found: &FoundWarmth, options: FormatOptions) -> Vec<(Minutes, String)> {
    let FoundWarmth::Needs(warmth) = found else {
        return Vec::new();
    };
    let wait = warmth.wait.map(|it| (it, day_text::wait_for(it, options)));
    let ice = warmth.in_ice.map(|it| (it, day_text::ice_for(it, options)));
    wait.into_iter().chain(ice).collect()
}
