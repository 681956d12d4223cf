//! When: on the table at, or start at; when the baker sleeps, and who helps.

use leptos::prelude::*;

use super::fields::NIGHT;
use super::loads_box::LoadsBox;
use super::results::Day;
use crate::app::part::{AnswerRow, Choice, ClockBox, FieldBox};
use crate::app::state::memo;
use crate::engine::plan::Aim;
use crate::sheet::Moment;
use crate::sheet::civil::Clock;
use crate::sheet::day::{Sleep, Target};
use crate::text::{ErrorText, day as day_text, format, read, tr};

/// When the bread is on the table, and what times are found from.
#[component]
pub fn WhenCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.results.with(|results| match results {
            Ok(results) => day
                .zone
                .with_value(|zone| day_text::when_answer(results, zone)),
            Err(error) => error.sentence(options),
        })
    });
    view! {
        <AnswerRow title=tr!("When") answer>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let day = Day::from_context();
    let backwards = memo(move || {
        !matches!(
            day.settings.with(|settings| settings.target),
            Target::From(_)
        )
    });
    let aim = memo(move || {
        day.read(|planned| {
            let (Aim::Table(at) | Aim::From(at)) = planned.aim;
            day.zone
                .with_value(|zone| format::box_date_and_clock(at, zone))
        })
        .unwrap_or_default()
    });
    let aim_at = move |at: Moment| {
        let back = backwards.get_untracked();
        day.change_settings(|settings| {
            settings.target = if back {
                Target::Table(at)
            } else {
                Target::From(at)
            };
        });
    };
    let typed = move |text: String| {
        if let Some((date, clock)) = read::date_and_clock(&text) {
            let at = day
                .zone
                .with_value(|zone| zone.instant(date, clock).first());
            aim_at(Moment::from_instant(at));
        }
    };
    let turn = move |back: bool| {
        let solved = untrack(|| day.read(|planned| (planned.solved.table, planned.solved.begins)));
        let Some((table, begins)) = solved else {
            return;
        };
        day.change_settings(|settings| {
            settings.target = if back {
                Target::Table(Moment::from_instant(table))
            } else {
                Target::From(Moment::from_instant(begins))
            };
        });
    };
    view! {
        <div class="body">
            <Choice
                id="aim".to_owned()
                label=tr!("The time you set").to_owned()
                choices=vec![(true, tr!("Bread ready")), (false, tr!("Work starts"))]
                selected=backwards
                on_select=Callback::new(turn)
            />
            <ClockBox
                id="aim-at"
                label=Signal::derive(move || if backwards.get() { tr!("Ready by") } else { tr!("Start at") })
                dated=true
                figure=aim
                store=typed
            />
            <SleepBoxes />
            <Hands />
        </div>
    }
}

/// How long the preferment is cold, and how often the oven is filled.
#[component]
pub fn FridgeCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.state.with(|sheet| {
            day.settings
                .with(|settings| day_text::fridge_answer(settings, &sheet.formula, options))
        })
    });
    view! {
        <AnswerRow title=tr!("Fridge and oven") answer>
            <div class="body">
                <div class="boxes">
                    {NIGHT.map(|field| view! { <FieldBox field /> })}
                </div>
                <LoadsBox />
            </div>
        </AnswerRow>
    }
}

/// When the baker sleeps.
#[component]
fn SleepBoxes() -> impl IntoView {
    let day = Day::from_context();
    let sleep = memo(move || day.settings.with(|settings| settings.sleep));
    let shown = move |pick: fn(Sleep) -> Clock| {
        memo(move || {
            let clock = sleep.get().map(|sleep| format::box_clock(pick(sleep)));
            clock.unwrap_or_default()
        })
    };
    let set = move |text: String, put: fn(&mut Sleep, Clock)| {
        if let Some(clock) = read::clock(&text) {
            day.change_settings(|settings| {
                if let Some(sleep) = &mut settings.sleep {
                    put(sleep, clock);
                }
            });
        }
    };
    let usual = crate::sheet::day::DaySettings::default().sleep;
    view! {
        <div class="tick-box">
            <label>
                <input
                    type="checkbox"
                    prop:checked=move || sleep.get().is_some()
                    on:change:target=move |event| {
                        let sleeps = event.target().checked();
                        day.change_settings(|settings| settings.sleep = if sleeps { usual } else { None });
                    }
                />
                {tr!("No work while I sleep")}
            </label>
        </div>
        <Show when=move || sleep.get().is_some()>
            <div class="clock-boxes">
                <ClockBox id="sleep-from" label=tr!("Asleep from") figure=shown(|sleep| sleep.from) store=move |text| set(text, |sleep, clock| sleep.from = clock) />
                <ClockBox id="sleep-until" label=tr!("until") figure=shown(|sleep| sleep.until) store=move |text| set(text, |sleep, clock| sleep.until = clock) />
            </div>
        </Show>
    }
}

/// Whether somebody helps.
#[component]
fn Hands() -> impl IntoView {
    let day = Day::from_context();
    let helped = memo(move || !day.settings.with(|settings| settings.one_pair_of_hands));
    view! {
        <div class="tick-box">
            <label>
                <input
                    type="checkbox"
                    prop:checked=helped
                    on:change:target=move |event| {
                        let helped = event.target().checked();
                        day.change_settings(|settings| settings.one_pair_of_hands = !helped);
                    }
                />
                {tr!("I have a helper")}
            </label>
        </div>
    }
}
