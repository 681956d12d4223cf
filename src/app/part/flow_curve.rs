//! Flow curve: thickness against liquid, the point of this syrup, and where it seizes.

use leptos::prelude::*;

use crate::text::{
    chart::{Band, FlowDrawing, Mark, Spot, Tick},
    tr,
};

/// The flow curve, with its text twin.
#[component]
pub fn FlowCurve(
    /// The drawing.
    drawing: FlowDrawing,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    let FlowDrawing {
        across_width,
        names_x,
        bands,
        up,
        across,
        seizes,
        rule,
        line,
        current,
    } = drawing;
    let field = format!("0 0 {} {}", FlowDrawing::WIDTH, FlowDrawing::HEIGHT);
    view! {
        <figure class="flow">
            <svg viewBox=field role="img" aria-label=description>
                <defs>
                    <pattern id="flow-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                        <line class="hatch" x1="0" y1="0" x2="0" y2="6" />
                    </pattern>
                </defs>
                {bands.into_iter().map(|one| band(one, names_x, across_width)).collect_view()}
                {seizes.map(zone)}
                {up.into_iter().map(tick_up).collect_view()}
                {across.into_iter().map(tick_across).collect_view()}
                <text class="unit" x=FlowDrawing::LEFT y="272">{tr!("liquid to 100 of chocolate, by weight")}</text>
                <text class="unit ends" x=FlowDrawing::FIGURES y="49">{tr!("Pa·s")}</text>
                {rule.map(handbook)}
                <path class="curve" d=line />
                {spot(current)}
            </svg>
        </figure>
    }
}

fn band(band: Band, names_x: f64, wide: f64) -> impl IntoView {
    let name = band
        .name_y
        .map(|y| view! { <text class="band-name" x=names_x y=y>{band.name}</text> });
    view! {
        <rect class="band" class:shaded=band.shaded x=FlowDrawing::LEFT y=band.y width=wide height=band.height />
        {name}
    }
}

fn zone(mark: Mark) -> impl IntoView {
    let width = mark.beyond_left();
    view! {
        <rect class="seizes" x=FlowDrawing::LEFT y=FlowDrawing::TOP width=width height=FlowDrawing::DOWN />
        <line class="seizing-edge" x1=mark.x x2=mark.x y1=FlowDrawing::TOP y2=FlowDrawing::BOTTOM />
        <text class="seizes-name" x=FlowDrawing::LEFT y="14">{mark.text}</text>
    }
}

fn handbook(mark: Mark) -> impl IntoView {
    let word_x = mark.word_x();
    view! {
        <line class="rule" x1=mark.x x2=mark.x y1="22" y2=FlowDrawing::BOTTOM />
        <text class="rule-name" class:ends=mark.ends x=word_x y="32">{mark.text}</text>
    }
}

fn tick_up(tick: Tick) -> impl IntoView {
    view! { <text class="tick ends" x=FlowDrawing::FIGURES y=tick.at>{tick.text}</text> }
}

fn tick_across(tick: Tick) -> impl IntoView {
    view! { <text class="tick middle" x=tick.at y="255">{tick.text}</text> }
}

fn spot(spot: Spot) -> impl IntoView {
    let second_y = spot.second_y();
    let [first, second] = spot.lines;
    view! {
        <circle class="here" cx=spot.x cy=spot.y r="6" />
        <text class="here-name" class:ends=spot.ends x=spot.words_x y=spot.words_y>{first}</text>
        <text class="here-name" class:ends=spot.ends x=spot.words_x y=second_y>{second}</text>
    }
}
