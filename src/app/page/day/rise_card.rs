//! The rises: how long they take, beside the reference rise, and what they are scaled from.

use leptos::prelude::*;

use super::fields::RISES;
use super::results::Day;
use crate::app::part::{AnswerRow, Button, FieldBox, Figure, RiseCurve, Shown};
use crate::app::state::{DialogKind, memo};
use crate::engine::plan::StepKind;
use crate::results::day::{PrefermentRise, WhichRise};
use crate::text::{ErrorText, chart, day as day_text, tr};

/// When the dough is up.
#[component]
pub fn RiseCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.read(|results| day_text::rise_answer(results, options))
            .unwrap_or_default()
    });
    view! {
        <AnswerRow title=tr!("Rise") answer>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let day = Day::from_context();
    let preferments = memo(move || {
        let options = day.state.options.get();
        let formula = day.state.with(|sheet| sheet.formula.clone());
        let wording = day.read(|results| {
            let said = |rise: &PrefermentRise| {
                day.zone.with_value(|zone| {
                    day_text::preferment_rise(rise, results, &formula, zone, options)
                })
            };
            let rises = results.run.rises.preferments.iter();
            let rises = rises.map(|rise| match rise {
                Ok(rise) => said(rise),
                Err(error) => error.sentence(options),
            });
            rises.collect::<Vec<_>>()
        });
        wording.unwrap_or_default()
    });
    let how = move |()| {
        let lines = untrack(|| day.read(day_text::preferment_working));
        day.state.open(DialogKind::Working {
            title: tr!("Rise").to_owned(),
            value: preferments.with_untracked(|wording| wording.join(" ")),
            lines: lines.unwrap_or_default(),
        });
    };
    let trust = memo(move || day_text::trust(day.state.options.get()));
    view! {
        <div class="figures">
            <RiseFigure label=tr!("Bulk rise") which=WhichRise::Bulk />
            <RiseFigure label=tr!("Proof") which=WhichRise::Proof />
        </div>
        <div class="body follows">
            <BulkPicture />
            <OtherDough />
            {move || preferments.get().into_iter().map(|wording| view! { <p>{wording}</p> }).collect_view()}
            <Show when=move || preferments.with(|wording| !wording.is_empty())>
                <Button label=tr!("How this is worked out") class="bare" on_tap=how />
            </Show>
            <p class="quiet">{trust}</p>
        </div>
    }
}

/// What the formula says of its own rises.
#[component]
pub fn KnownRises() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        let references = day.read(|results| results.run.references);
        day.settings
            .with(|settings| day_text::known_answer(settings, references.as_ref(), options))
    });
    let taught = memo(move || {
        let taught = day.read(|results| day_text::taught_rises(&results.run.references));
        taught.flatten()
    });
    view! {
        <AnswerRow title=tr!("Known rises") answer>
            {move || taught.get().map(|wording| view! { <p class="body quiet">{wording}</p> })}
            <div class="body boxes">
                {RISES.map(|field| view! { <FieldBox field /> })}
            </div>
        </AnswerRow>
    }
}

/// The effect of yeast, sugar and salt, where the dough is not that of the known rises.
#[component]
fn OtherDough() -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        day.read(|results| {
            let doughs = results.run.doughs.as_ref()?;
            day_text::yeast_activity(doughs, results.run.references.yeast_activity, options)
        })
        .flatten()
    });
    let differs = memo(move || wording.with(Option::is_some));
    view! {
        <p role="status">{move || wording.get()}</p>
        <Show when=move || differs.get()>
            <div class="buttons">
                <Button label=tr!("The known rises are of this dough") on_tap=move |()| day.know_this_dough() />
            </div>
        </Show>
    }
}

/// A rise as a range, which opens to its working.
#[component]
fn RiseFigure(
    /// Its name.
    label: &'static str,
    /// Which rise.
    which: WhichRise,
) -> impl IntoView {
    let day = Day::from_context();
    let shown = memo(move || {
        let options = day.state.options.get();
        let value = day.read(|results| match results.run.rises.of(which) {
            Ok(risen) => day_text::rise_range(risen, options),
            Err(_) => tr!("not known").to_owned(),
        });
        Shown {
            value: value.unwrap_or_else(|| tr!("not known").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        untrack(|| {
            day.read(|results| day_text::rise_working(results, which))
                .unwrap_or_default()
        })
    };
    view! { <Figure label=Signal::stored(label.to_owned()) shown working=Callback::new(working) /> }
}

/// The bulk rise drawn, what it rests on, what to look for.
#[component]
fn BulkPicture() -> impl IntoView {
    let day = Day::from_context();
    let drawing = memo(move || {
        let options = day.state.options.get();
        day.read(|results| {
            let risen = results.run.rises.bulk.as_ref().ok()?;
            Some(chart::RiseDrawing::of(risen, options))
        })
        .flatten()
    });
    let twin = memo(move || {
        let options = day.state.options.get();
        let twin = day.read(|results| match &results.run.rises.bulk {
            Ok(risen) => chart::rise_curve(risen, options),
            Err(error) => error.sentence(options),
        });
        twin.unwrap_or_default()
    });
    let wording = memo(move || {
        let options = day.state.options.get();
        day.read(|results| match &results.run.rises.bulk {
            Ok(risen) => vec![
                day_text::rise_difference(risen, results.bulk_place, options),
                day_text::basis(&risen.asked.anchor, options),
                day_text::signs(StepKind::Bulk).to_owned(),
            ],
            Err(error) => vec![error.sentence(options)],
        })
        .unwrap_or_default()
    });
    let current = memo(move || {
        let options = day.state.options.get();
        day.read(|results| day_text::rise_begins(results, options))
    });
    view! {
        <p class="quiet">{current}</p>
        {move || drawing.get().map(|drawing| view! { <RiseCurve drawing description=twin /> })}
        {move || wording.get().into_iter().map(|wording| view! { <p>{wording}</p> }).collect_view()}
    }
}
