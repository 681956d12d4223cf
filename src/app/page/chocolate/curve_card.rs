//! The card of the flow curve, the distance to seizing, and the handbook's minimum of water.

use leptos::prelude::*;

use super::ChocolateContext;
use super::key_figures::SyrupFigure;
use crate::app::part::FlowCurve;
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::{Flow, Syrup, SyrupCaution};
use crate::text::{caution, chart, format, name, tr};

/// Will it run?
#[component]
pub fn CurveCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let at = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            tr!(
                "at {value}",
                value = format::temperature(sheet.batch.syrup_at, options)
            )
        })
    });
    let drawing = memo(move || {
        let options = state.options.get();
        context.read_curve(|found| chart::FlowDrawing::of(&found.syrup, &found.curve, options))
    });
    let description = memo(move || {
        let options = state.options.get();
        context
            .read_curve(|found| chart::flow_curve(&found.syrup, &found.curve, options))
            .unwrap_or_default()
    });
    let does = memo(move || {
        context
            .read_syrup(|syrup| does(syrup.flow))
            .unwrap_or_default()
    });
    let far = memo(move || {
        let options = state.options.get();
        context
            .read_syrup(|syrup| caution::from_seizing(syrup, options))
            .unwrap_or_default()
    });
    let trust = memo(move || {
        caution::syrup(&SyrupCaution::WithinAFactorOfTwo, state.options.get()).sentence()
    });
    view! {
        <section class="card" aria-label=tr!("Will it run?")>
            <header>
                <h2>{tr!("Will it run?")}</h2>
                <span class="quiet">{at}</span>
            </header>
            <div class="body follows">
                <p role="status">{does}</p>
                {move || drawing.get().map(|drawing| view! { <FlowCurve drawing description=description /> })}
                <p>{far}</p>
                <p class="quiet">{trust}</p>
            </div>
            <div class="figures">
                <SyrupFigure label=tr!("Least liquid that flows") select=|syrup, options| least(syrup, |mass| format::mass(mass, options)) working=Syrup::seizing_working />
                <SyrupFigure label=tr!("Handbook’s least water") select=|syrup, options| format::mass(syrup.rule.needed, options) working=|syrup| syrup.rule.working(syrup.chocolate) />
            </div>
        </section>
    }
}

/// What it does, in a sentence that changes with the kind only.
fn does(flow: Flow) -> String {
    match flow {
        Flow::MeltedOnly => {
            tr!("No water is added: melted chocolate, which flows in its own fat.").to_owned()
        }
        Flow::Seized => tr!("It seizes.").to_owned(),
        Flow::Flows { handling, .. } => tr!("It {value}.", value = name::handling_looks(handling)),
    }
}

fn least(syrup: &Syrup, write: impl Fn(crate::engine::quantity::Mass) -> String) -> String {
    syrup
        .least_liquid
        .map_or_else(|| tr!("none").to_owned(), write)
}
