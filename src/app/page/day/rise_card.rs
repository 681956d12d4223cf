//! The rises: when the dough is up here, beside the known rise; what the numbers rest on.

use leptos::prelude::*;

use super::fields::RISES;
use super::results::Day;
use crate::app::part::{Button, FieldBox, Figure, RiseCurve, Shown};
use crate::app::state::memo;
use crate::engine::rise::{RiseError, Risen};
use crate::results::day::Planned;
use crate::text::{Trouble, chart, day as told, format, tr};

/// When the dough is up.
#[component]
pub fn RiseCard() -> impl IntoView {
    let day = Day::here();
    let nights = memo(move || {
        let options = day.state.options.get();
        let nights = day.read(|planned| {
            let nights = planned.rising.nights.iter();
            let nights = nights.map(|night| match night {
                Ok(night) => told::night(night, options),
                Err(error) => error.sentence(options),
            });
            nights.collect::<Vec<_>>()
        });
        nights.unwrap_or_default()
    });
    let trust = memo(move || told::trust(day.state.options.get()));
    view! {
        <section class="card" aria-label=tr!("Rise")>
            <header>
                <h2>{tr!("Rise")}</h2>
            </header>
            <div class="figures">
                <RiseFigure label=tr!("Bulk rise") pick=bulk />
                <RiseFigure label=tr!("Proof") pick=proof />
            </div>
            <div class="body follows">
                <BulkPicture />
                <OtherDough />
                {move || nights.get().into_iter().map(|said| view! { <p>{said}</p> }).collect_view()}
                <p class="quiet">{trust}</p>
            </div>
        </section>
        <details class="card fold">
            <summary>
                <span class="title">{tr!("Known rises")}</span>
                <span class="quiet">{tr!("what the formula says of itself")}</span>
            </summary>
            <div class="body boxes">
                {RISES.map(|field| view! { <FieldBox field /> })}
            </div>
        </details>
    }
}

/// What yeast, sugar and salt make of the known rises, where the dough is not the one they are of.
#[component]
fn OtherDough() -> impl IntoView {
    let day = Day::here();
    let said = memo(move || {
        let options = day.state.options.get();
        day.read(|planned| {
            let (now, then) = planned.doughs.as_ref()?;
            told::yeast_activity((now, then), planned.known.yeast_activity, options)
        })
        .flatten()
    });
    let differs = memo(move || said.with(Option::is_some));
    view! {
        <p role="status">{move || said.get()}</p>
        <Show when=move || differs.get()>
            <div class="buttons">
                <Button says=tr!("The known rises are of this dough") tapped=move |()| day.know_this_dough() />
            </div>
        </Show>
    }
}

type Picked = fn(&Planned) -> &Result<Risen, RiseError>;

fn bulk(planned: &Planned) -> &Result<Risen, RiseError> {
    &planned.rising.bulk
}

fn proof(planned: &Planned) -> &Result<Risen, RiseError> {
    &planned.rising.proof
}

/// A rise as a range, which opens to its working.
#[component]
fn RiseFigure(
    /// What it is called.
    label: &'static str,
    /// Which rise.
    pick: Picked,
) -> impl IntoView {
    let day = Day::here();
    let shown = memo(move || {
        let options = day.state.options.get();
        let value = day.read(|planned| match pick(planned) {
            Ok(risen) => told::rise_range(risen, options),
            Err(_) => tr!("not known").to_owned(),
        });
        Shown {
            value: value.unwrap_or_else(|| tr!("not known").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        untrack(|| {
            let lines = day.read(|planned| {
                let mut lines = pick(planned).as_ref().map(Risen::working).ok()?;
                if let Some((now, then)) = &planned.doughs {
                    lines.extend(now.working(then, planned.known.yeast_activity));
                }
                Some(lines)
            });
            lines.flatten().unwrap_or_default()
        })
    };
    view! { <Figure label=Signal::stored(label.to_owned()) shown working=Callback::new(working) /> }
}

/// The bulk rise drawn, what it rests on, what to look for.
#[component]
fn BulkPicture() -> impl IntoView {
    let day = Day::here();
    let drawing = memo(move || {
        let options = day.state.options.get();
        day.read(|planned| {
            let risen = planned.rising.bulk.as_ref().ok()?;
            Some(chart::RiseDrawing::of(risen, options))
        })
        .flatten()
    });
    let twin = memo(move || {
        let options = day.state.options.get();
        let twin = day.read(|planned| match &planned.rising.bulk {
            Ok(risen) => chart::rise_curve(risen, options),
            Err(error) => error.sentence(options),
        });
        twin.unwrap_or_default()
    });
    // Where the dough rises: where this bake put it, else where it usually stands, else the room.
    let place = memo(move || {
        let put = day
            .own_bench
            .with(|bench| bench.as_ref().and_then(|bench| bench.bulk_place));
        let usual = day.settings.with(|settings| settings.rises.bulk_place);
        let room = day.state.kitchen.with(|kitchen| kitchen.room);
        put.or(usual).unwrap_or(room)
    });
    let said = memo(move || {
        let options = day.state.options.get();
        let place = place.get();
        day.read(|planned| match &planned.rising.bulk {
            Ok(risen) => vec![
                told::room_against_anchor(risen, place, options),
                told::rests(&risen.asked.anchor, options),
                told::looks(crate::engine::plan::StepKind::Bulk).to_owned(),
            ],
            Err(error) => vec![error.sentence(options)],
        })
        .unwrap_or_default()
    });
    let current = memo(move || {
        let at = format::temperature(place.get(), day.state.options.get());
        tr!("It is {at} where the dough rises.", at = at)
    });
    view! {
        <p class="quiet">{current}</p>
        {move || drawing.get().map(|drawing| view! { <RiseCurve drawing told=twin /> })}
        {move || said.get().into_iter().map(|said| view! { <p>{said}</p> }).collect_view()}
    }
}
