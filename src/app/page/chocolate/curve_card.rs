//! The card of the flow curve, the distance to seizing, and the handbook's minimum of water.

use leptos::prelude::*;

use super::ChocolateContext;
use super::key_figures::SyrupFigure;
use crate::app::part::FlowCurve;
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::{Syrup, SyrupCaution};
use crate::results::chocolate::ChocolateResults;
use crate::text::{caution, chart, chocolate_answer, format, tr};

/// Will it run?
#[component]
pub fn CurveCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
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
        let options = state.options.get();
        let at = state.with(|sheet| sheet.batch.syrup_at);
        let verdict = context.now.with(ChocolateResults::verdict);
        verdict
            .map(|verdict| chocolate_answer::syrup(verdict, at, options))
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
        <div role="group" aria-label=tr!("Will it run?")>
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
        </div>
    }
}

fn least(syrup: &Syrup, write: impl Fn(crate::engine::quantity::Mass) -> String) -> String {
    syrup
        .least_liquid
        .map_or_else(|| tr!("none").to_owned(), write)
}
