//! What helps a visitor with the weights: lines that the scale shows too coarsely, cups and spoons, the
//! visitor's own tin.

use leptos::prelude::*;

use crate::app::page::{BatchContext, TargetBoxes, TinBody, WeighingAids};
use crate::app::part::{Button, weigh_row};
use crate::app::state::{memo, use_app_state};
use crate::results::batch::tins;
use crate::text::share::in_cups;
use crate::text::{self, tr};

/// What helps to weigh.
#[component]
pub fn WeighingHelp() -> impl IntoView {
    view! {
        <div class="body">
            <WeighingAids />
        </div>
        <Measures />
    }
}

/// The tin that the visitor has, and other ways to say how much.
#[component]
pub fn OwnTin() -> impl IntoView {
    view! {
        <TinBody />
        <div class="body">
            <TargetBoxes />
        </div>
    }
}

/// That the weights are not yet for the visitor's tin, with the tap that makes them so.
#[component]
pub fn NotYetForTin() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let takes = memo(move || {
        let tins = state.with(|sheet| context.read_scaled(|scaled| tins::of(sheet, scaled)));
        tins.flatten()?.another_dough()
    });
    let fill = move |()| {
        if let Some(dough) = takes.get_untracked() {
            BatchContext::fill_tins(state, dough);
        }
    };
    let says = move |takes| text::tins::not_yet(takes, state.options.get());
    move || {
        takes.get().map(|takes| {
            view! {
                <div class="advice" role="status">
                    <p>{says(takes)}</p>
                    <div class="buttons"><Button label=tr!("Weigh for my tin") on_tap=fill /></div>
                </div>
            }
        })
    }
}

/// The same in cups and spoons, where a table says what they weigh.
#[component]
fn Measures() -> impl IntoView {
    let context = BatchContext::from_context();
    let rows = memo(move || {
        let lines = context.read_rounded(|rounded| Some(in_cups(rounded)));
        lines.unwrap_or_default()
    });
    view! {
        <details class="fold within">
            <summary>
                <span class="title">{tr!("In cups and spoons, only about")}</span>
            </summary>
            <div class="body">
                <p class="quiet">{tr!("A cup holds more or less with every hand; weigh where you can. By the table of weights of the USDA, release 28.")}</p>
                <table class="label-table">
                    <tbody>{move || rows.get().into_iter().map(weigh_row).collect_view()}</tbody>
                </table>
            </div>
        </details>
    }
}
