//! What the bakes of this kitchen taught, with how many bakes each figure rests on.

use leptos::prelude::*;

use super::results::{Day, clock_now};
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::learn::LearntShare;
use crate::engine::quantity::Mass;
use crate::sheet::day::Resets;
use crate::text::{day as told, tr};

/// What bakes taught.
#[component]
pub fn LearntCard() -> impl IntoView {
    let day = Day::here();
    let figures = memo(move || {
        day.learnt
            .with(|learnt| told::figure(learnt, day.state.options.get()))
    });
    let learns = memo(move || figures.with(|figures| !figures.is_empty()));
    let friction = memo(move || {
        day.learnt
            .with(|learnt| learnt.friction.as_ref().map(|it| it.rate))
    });
    let take = move |()| {
        if let Some(rate) = friction.get_untracked() {
            let mut kitchen = day.state.kitchen.get_untracked();
            kitchen.mixer.friction = rate;
            day.state.set_kitchen(kitchen);
        }
    };
    let losses = memo(move || {
        day.learnt.with(|learnt| {
            let share = |learnt: &Option<LearntShare>| learnt.as_ref().map(|it| it.share);
            (share(&learnt.residue), share(&learnt.oven_loss))
        })
    });
    let take_losses = move |()| {
        let (residue, oven) = losses.get_untracked();
        day.state.edit(|sheet| {
            let losses = &mut sheet.batch.losses;
            // What was learnt is all that stays behind, however large the batch.
            if let Some(residue) = residue {
                losses.residue = Mass::ZERO;
                losses.residue_share = residue;
            }
            losses.bake = oven.unwrap_or(losses.bake);
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
        <Show when=move || learns.get()>
            <section class="card" aria-label=tr!("What your bakes taught")>
                <header>
                    <h2>{tr!("What your bakes taught")}</h2>
                </header>
                <dl class="body learnt">
                    {move || figures.get().into_iter().map(|(name, value, rests)| view! {
                        <div>
                            <dt>{name}</dt>
                            <dd class="number">{value}</dd>
                            <dd class="quiet">{rests}</dd>
                        </div>
                    }).collect_view()}
                </dl>
                <div class="body buttons">
                    <Show when=move || friction.get().is_some()>
                        <Button says=tr!("Use this friction for the kitchen") tapped=take />
                    </Show>
                    <Show when=move || losses.get() != (None, None)>
                        <Button says=tr!("Use these losses for the batch") tapped=take_losses />
                    </Show>
                    <Button says=tr!("Forget it and learn anew") class="risky" tapped=forget />
                </div>
            </section>
        </Show>
    }
}
