//! At the bench: how the bake moves against its plan, and what makes up for it, each with one tap.

use leptos::prelude::*;

use super::conflicts::InTheWay;
use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::Temperature;
use crate::results::day::{WhichRise, rise_off};
use crate::text::{day as told, tr};

/// What goes otherwise than planned at a step, and what makes up for it.
#[component]
pub fn MakeUps(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::here();
    let late = memo(move || {
        let options = day.state.options.get();
        let begins = begins(day, step)?;
        let bench = day.own_bench.get()?;
        let promised = bench.promised(step)?.begins.instant();
        day.zone
            .with_value(|zone| told::off_time(promised, begins, zone, options))
    });
    let moved = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let bench = day.own_bench.get();
        let said = bench.and_then(|bench| {
            day.read(|planned| {
                day.zone
                    .with_value(|zone| told::moved(planned, &bench, &formula, zone, options))
            })
        });
        said.unwrap_or_default()
    });
    let of_bulk = matches!(
        step.work,
        StepKind::Mix | StepKind::ButterIn | StepKind::Bulk
    );
    let of_proof = matches!(step.work, StepKind::Shape | StepKind::Tin | StepKind::Proof);
    let rise = if of_bulk {
        Some(WhichRise::Bulk)
    } else {
        of_proof.then_some(WhichRise::Proof)
    };
    view! {
        <div class="make-ups">
            {rise.map(|which| view! { <RiseMadeUp which /> })}
            <div role="status">
                {move || late.get().map(|said| view! { <p>{said}</p> })}
                {move || moved.get().into_iter().map(|said| view! { <p>{said}</p> }).collect_view()}
            </div>
            <InTheWay />
        </div>
    }
}

/// When a step began, or begins by the plan as it stands.
fn begins(day: Day, step: StepAt) -> Option<crate::engine::quantity::Instant> {
    let began = day.own_bench.with(|bench| {
        let mut done = bench.as_ref()?.bake.steps.iter();
        done.find(|done| done.step == step)
            .map(|done| done.began.instant())
    });
    let planned = || {
        day.read(|planned| {
            let place = planned.plan.place(step)?;
            planned.solved.steps.get(place).map(|timed| timed.begins)
        })
        .flatten()
    };
    began.or_else(planned)
}

/// What is off about a rise, and a place that makes up for it.
#[component]
fn RiseMadeUp(
    /// Which rise.
    which: WhichRise,
) -> impl IntoView {
    let day = Day::here();
    let off = memo(move || {
        let sheet = day.state.current();
        day.planned.with(|planned| {
            let planned = planned.as_ref().ok()?;
            day.asked(&sheet, |asked| rise_off(asked, planned, which))
        })
    });
    let said = memo(move || {
        let options = day.state.options.get();
        let wished = day.state.with(|sheet| sheet.heat.dough);
        let got = day
            .own_bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bake.noted.dough));
        let dough = got.map(|got| (wished, got));
        match (off.get(), dough) {
            (Some(off), dough) => told::rise_off(&off, dough, options),
            (None, Some((wished, got))) if which == WhichRise::Bulk => {
                vec![told::dough_off(wished, got, options)]
            }
            (None, _) => Vec::new(),
        }
    });
    let place = memo(move || {
        let options = day.state.options.get();
        off.get().and_then(|off| told::place_for(&off, options))
    });
    let put = move |at: Option<Temperature>| {
        day.change_bench(|bench| match which {
            WhichRise::Bulk => bench.bulk_place = at,
            WhichRise::Proof => bench.proof_place = at,
        });
    };
    let is_put = memo(move || off.get().is_some_and(|off| off.chosen.is_some()));
    view! {
        <div role="status">
            {move || said.get().into_iter().map(|said| view! { <p>{said}</p> }).collect_view()}
        </div>
        <div class="buttons">
            {move || place.get().map(|(at, said)| view! { <Button says=said tapped=move |()| put(Some(at)) /> })}
            <Show when=move || is_put.get()>
                <Button says=tr!("Leave it where it usually stands") tapped=move |()| put(None) />
            </Show>
        </div>
    }
}
