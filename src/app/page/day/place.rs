//! The place: the plan with its ribbon and steps, or the bench.

use leptos::prelude::*;

use super::bench_view::BenchView;
use super::conflicts::Conflicts;
use super::learnt_card::LearntCard;
use super::local_time::clock_now;
use super::log_card::LogCard;
use super::paste_conflicts::PasteConflicts;
use super::preferment_conflicts::PrefermentConflicts;
use super::results::Day;
use super::ribbon_card::RibbonCard;
use super::rise_card::{KnownRises, RiseCard};
use super::steps_card::StepsCard;
use super::summary_view::SummaryView;
use super::when_card::{FridgeCard, WhenCard};
use crate::app::browser::clock;
use crate::app::page::HEADING;
use crate::app::state::{memo, use_app_state};

use crate::sheet::Place;
use crate::text::{ErrorText, name, tr};

/// Returns the view of the place Day, whose clock begins with it.
pub fn day_place() -> AnyView {
    let state = use_app_state();
    let day = Day::from_context();
    if state.timer_alert.with_untracked(Option::is_some) {
        // Whoever comes because a timer rang wants the bench.
        day.at_bench.set(true);
    }
    state.timer_alert.set(None);
    state.bake_waits.set(false);
    day.now.set(clock_now());
    clock::every_second(move || day.now.set(clock_now()));
    // Another formula has a plan of its own.
    let of = move || {
        state.open_id.track();
        day.open();
        view! { <DayCards /> }
    };
    view! {
        <h1 class="visually-hidden" id=HEADING tabindex="-1">{name::place(Place::Day)}</h1>
        {of}
    }
    .into_any()
}

#[component]
fn DayCards() -> impl IntoView {
    let day = Day::from_context();
    let at_bench = move || day.at_bench.get() && day.own_bench.with(Option::is_some);
    let is_finished = move || day.finished.with(Option::is_some);
    view! {
        <Show when=is_finished>
            <SummaryView />
        </Show>
        <Show when=at_bench fallback=|| view! { <Plan /> }>
            <BenchView />
        </Show>
    }
}

#[component]
fn Plan() -> impl IntoView {
    let day = Day::from_context();
    let current = memo(move || day.results.with(Result::is_ok));
    view! {
        <div class="newspaper">
            <Why />
            <Conflicts />
            <PasteConflicts />
            <PrefermentConflicts />
            <WhenCard />
            <Show when=move || current.get()>
                <RibbonCard />
                <StepsCard />
                <RiseCard />
            </Show>
            <KnownRises />
            <FridgeCard />
            <LearntCard />
            <LogCard />
        </div>
    }
}

/// Why there is no plan, where there is none.
#[component]
fn Why() -> impl IntoView {
    let day = Day::from_context();
    let why = memo(move || {
        let options = day.state.options.get();
        day.results
            .with(|results| results.as_ref().err().map(|error| error.sentence(options)))
    });
    move || {
        why.get().map(|why| {
            view! {
                <section class="advice" role="status">
                    <h2>{tr!("No plan can be made")}</h2>
                    <p>{why}</p>
                </section>
            }
        })
    }
}
