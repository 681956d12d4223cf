//! The water: its sources, four measures of it, and its parts.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::part::{AnswerRow, Choice, MoistureFigure, ShareFigure, WaterLedger};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{Figure, Form, WaterLedger as Ledger};
use crate::results::formula::{WaterResults, water};
use crate::text::{DoughFigures, ErrorText, chart, name, tr};

/// The water of the dough.
#[component]
pub fn WaterCard() -> impl IntoView {
    let state = use_app_state();
    let answer = memo(move || state.figures.with(DoughFigures::water_answer));
    view! {
        <AnswerRow title=tr!("Where the water comes from") answer>
            {lazy::water_content()}
        </AnswerRow>
    }
}

/// What the row opens to.
#[component]
pub fn WaterContent() -> impl IntoView {
    let state = use_app_state();
    let form = RwSignal::new(Form::AsWritten);
    let water = memo(move || state.with(water));
    let why = memo(move || {
        let (options, form) = (state.options.get(), form.get());
        water.with(|water| water.of(form).err().map(|error| error.sentence(options)))
    });
    view! {
        <div class="body follows">
            <Show when=move || why.with(Option::is_none) fallback=move || view! { <p>{why.get()}</p> }>
                <Bar water form />
                <Misses water form />
            </Show>
            <h3>{tr!("Hydration, counted four ways")}</h3>
            <div class="figures">
                <ShareFigure figure=Figure::PouredWater />
                <ShareFigure figure=Figure::Liquids />
                <ShareFigure figure=Figure::TrueWater />
                <MoistureFigure />
            </div>
            <h3>{tr!("Where the water is")}</h3>
            <div class="figures">
                <ShareFigure figure=Figure::WaterInPaste />
                <ShareFigure figure=Figure::WaterInPreferment />
                <ShareFigure figure=Figure::WaterInFinal />
            </div>
        </div>
    }
}

/// The bar, where there is one.
#[component]
fn Bar(
    /// The water of the dough.
    water: Memo<WaterResults>,
    /// Which weights are counted.
    form: RwSignal<Form>,
) -> impl IntoView {
    let state = use_app_state();
    let bar = memo(move || {
        let (options, form) = (state.options.get(), form.get());
        let drawn = |ledger: &Ledger| chart::water_bar(ledger, options);
        water.with(|water| water.of(form).map(drawn).unwrap_or_default())
    });
    let twin = memo(move || {
        let (options, form) = (state.options.get(), form.get());
        let describe = |ledger: &Ledger| chart::water_ledger(ledger, options);
        water.with(|water| water.of(form).map(describe).unwrap_or_default())
    });
    view! { <WaterLedger bar twin /> }
}

/// Steam and missed weighings in it or not, where there are any.
#[component]
fn Misses(
    /// The water of the dough.
    water: Memo<WaterResults>,
    /// Which weights are counted.
    form: RwSignal<Form>,
) -> impl IntoView {
    let any = memo(move || water.with(|water| water.has_misses));
    let answers = move || {
        [Form::AsWritten, Form::AsMade]
            .map(|form| (form, name::form(form)))
            .to_vec()
    };
    view! {
        <Show when=move || any.get()>
            <Choice id="form" label=tr!("Counted") choices=answers() selected=form on_select=move |chosen| form.set(chosen) />
        </Show>
    }
}
