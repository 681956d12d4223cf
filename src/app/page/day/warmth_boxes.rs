//! How warm pastes and preferments really are at a step: what they still need, to be taken with one
//! tap.

use leptos::prelude::*;

use super::results::{Day, clock_now};
use crate::app::part::{Button, NumberBox};
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::engine::quantity::Minutes;
use crate::results::heat::{StillNeeds, measured_at, time_to_target};
use crate::sheet::Moment;
use crate::sheet::day::Measured;
use crate::text::{Trouble, day as told, format, read, tr};

/// A box for each paste and preferment of a step.
#[component]
pub fn WarmthBoxes(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::here();
    let parts = untrack(|| {
        day.state
            .with(|sheet| measured_at(step.work, step.of, &sheet.formula))
    });
    parts
        .into_iter()
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
    let day = Day::here();
    let of = u16::try_from(part).unwrap_or(u16::MAX);
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
    let take = move |text: String| {
        let options = day.state.options.get_untracked();
        let at = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        let when = clock_now();
        day.change_bench(|bench| {
            bench.measure(Measured {
                step,
                part: of,
                at,
                when,
            });
        });
        Ok(())
    };
    let needs = memo(move || {
        let found = found.get()?;
        let kitchen = day.state.kitchen.get();
        Some(day.state.with(|sheet| {
            let at = (step.work, part);
            time_to_target(&sheet.formula, &kitchen, &sheet.heat, at, found.at)
        }))
    });
    let said = memo(move || {
        let options = day.state.options.get();
        let (found, needs) = (found.get()?, needs.get()?);
        Some(match needs {
            Ok(needs) => name.with(|name| told::time_to_target(name, found.at, &needs, options)),
            Err(error) => error.sentence(options),
        })
    });
    let ways = memo(move || {
        let options = day.state.options.get();
        let needs = needs.get().and_then(Result::ok);
        let needs = needs.filter(|needs| needs.there.minutes() >= 1.0);
        needs.map(|needs| ways(&needs, options)).unwrap_or_default()
    });
    // It lasts from its beginning until then, and its timer rings then.
    let wait = move |minutes: Minutes| {
        let now = clock_now();
        let ends = Moment::from_instant(now.instant().later(minutes));
        day.change_bench(|bench| {
            bench.bake.begin(step, now);
            let began = bench.bake.steps.iter().find(|done| done.step == step);
            let began = began.map_or(now, |done| done.began);
            bench.let_last(step, ends.instant().since(began.instant()));
            bench.set_timer(step, ends);
        });
    };
    let unit = Signal::derive(move || day.state.options.get().units.temperature.symbol());
    let label = Signal::derive(move || tr!("{value} is at", value = name.get()));
    let way = move |(minutes, said): (Minutes, String)| view! { <Button says=said tapped=move |()| wait(minutes) /> };
    view! {
        <div class="boxes">
            <NumberBox id=format!("warmth-{part}") label unit figure take=Callback::new(take) />
        </div>
        <p role="status">{move || said.get()}</p>
        <div class="buttons">{move || ways.get().into_iter().map(way).collect_view()}</div>
    }
}

/// What can be tapped.
fn ways(needs: &StillNeeds, options: crate::text::FormatOptions) -> Vec<(Minutes, String)> {
    let mut ways = vec![(needs.there, told::wait_for(needs.there, options))];
    if let Some(ice) = needs.in_ice {
        ways.push((ice, told::ice_for(ice, options)));
    }
    ways
}
