//! The estimates from the log for this kitchen, with the evidence for each figure.

use leptos::prelude::*;

use super::local_time::clock_now;
use super::results::Day;
use crate::app::part::{AnswerRow, Button, Figure, Shown};
use crate::app::state::memo;
use crate::results::day::{with_learnt_friction, with_learnt_losses};
use crate::sheet::day::Resets;
use crate::text::{day as day_text, tr};

/// The estimates from bakes, where there are any.
#[component]
pub fn LearntCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.learnt
            .with(|learnt| day_text::learnt_answer(learnt, options))
    });
    let learns = memo(move || answer.with(|answer| !answer.is_empty()));
    view! {
        <Show when=move || learns.get()>
            <AnswerRow title=tr!("What your bakes taught") answer>
                <Content />
            </AnswerRow>
        </Show>
    }
}

#[component]
fn Content() -> impl IntoView {
    let day = Day::from_context();
    let figures = memo(move || {
        day.learnt
            .with(|learnt| day_text::learnt_figures(learnt, day.state.options.get()))
    });
    let losses = memo(move || {
        let losses = day.state.with(|sheet| sheet.batch.losses);
        day.learnt
            .with(|learnt| with_learnt_losses(losses, learnt).is_some())
    });
    let take_losses = move |()| {
        let learnt = day.learnt.get_untracked();
        day.state.edit(|sheet| {
            if let Some(losses) = with_learnt_losses(sheet.batch.losses, &learnt) {
                sheet.batch.losses = losses;
            }
        });
    };
    let forget = move |()| {
        let now = Some(clock_now());
        day.change_log(|log| {
            log.resets = Resets {
                friction: now,
                losses: now,
                rises: now,
                oven: now,
            };
        });
    };
    view! {
        <div class="body learnt">
            {move || figures.get().into_iter().map(|figure| view! {
                <div>
                    <Figure label=figure.name.to_owned() shown=Shown::plain(figure.value) working=move |()| figure.working.clone() />
                    <p class="quiet">{figure.rests}</p>
                </div>
            }).collect_view()}
        </div>
        <FrictionOffer />
        <div class="body buttons">
            <Show when=move || losses.get()>
                <Button label=tr!("Use these losses for the batch") on_tap=take_losses />
            </Show>
            <Button label=tr!("Reset") class="danger" on_tap=forget />
        </div>
    }
}

/// That plans go by the kitchen's friction until the learnt one is taken over, and the button for it.
#[component]
pub fn FrictionOffer() -> impl IntoView {
    let day = Day::from_context();
    let taught = memo(move || {
        let kitchen = day.state.kitchen.get();
        day.learnt
            .with(|learnt| with_learnt_friction(&kitchen, learnt))
    });
    let take = move |()| {
        if let Some(kitchen) = taught.get_untracked() {
            day.state.set_kitchen(kitchen);
        }
    };
    let wording = move || {
        let options = day.state.options.get();
        let now = day.state.kitchen.with(|kitchen| kitchen.mixer.friction);
        taught.with(|taught| {
            let learnt = taught.as_ref()?.mixer.friction;
            Some(day_text::friction_offer(learnt, now, options))
        })
    };
    let is_offered = memo(move || taught.with(Option::is_some));
    view! {
        <Show when=move || is_offered.get()>
            <div class="body">
                <p>{wording}</p>
                <Button label=tr!("Use this friction for the kitchen") on_tap=take />
            </div>
        </Show>
    }
}
