//! The dough this morning: how warm it comes off the mixer, and what brings it to what is wanted.

use leptos::prelude::*;

use super::HeatContext;
use super::bowl_balance::Balance;
use super::factor_card::FactorMethodBoxes;
use super::fields::{MIXING, MIXING_BOWL, STANDING, WANTED};
use super::flour_box::FlourBox;
use super::fold::Fold;
use super::remedy_lines::RemedyLines;
use super::standing_fold::StandingTimes;
use super::temperatures::Temperatures;
use super::ways::Ways;
use crate::app::part::{AnswerRow, FieldBox, SafetyLine, Verdict};
use crate::app::state::{memo, use_app_state};
use crate::results::heat::DoughFit;
use crate::text::{ErrorText, caution::Hazard, heat, tr};

/// The dough this morning.
#[component]
pub fn DoughRow() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context
            .results
            .with(|results| match (&results.dough, &results.mixing) {
                (Some(dough), _) => heat::dough_answer(dough, options),
                (None, Err(error)) => error.sentence(options),
                (None, Ok(_)) => String::new(),
            })
    });
    let verdict = memo(move || {
        context.results.with(|results| match &results.dough {
            Some(dough) if dough.fit() == DoughFit::Fits => Verdict::Good,
            Some(_) | None => Verdict::Wrong,
        })
    });
    view! {
        <AnswerRow title=tr!("The dough this morning") answer verdict>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let trust = memo(move || {
        state.options.track();
        context
            .read_mixing(|mixing| heat::trust_dough(mixing.friction_is_learnt()))
            .unwrap_or_default()
    });
    let development = memo(move || {
        let options = state.options.get();
        context
            .read_mixing(|mixing| heat::development(&mixing.development, options))
            .unwrap_or_default()
    });
    view! {
        <div class="body">
            <RemedyLines />
            <div class="boxes">
                <FieldBox field=WANTED />
                <FieldBox field=MIXING />
                <FieldBox field=STANDING />
                <FieldBox field=MIXING_BOWL />
                <FlourBox />
            </div>
            <SafetyLine step=Hazard::Mixing />
        </div>
        <Fold title=tr!("All that helps") aside=tr!("the simplest first")>
            <div class="body">
                <Ways />
                <p class="follows">{development}</p>
            </div>
        </Fold>
        <Fold title=tr!("Where the heat comes from")>
            <div class="body">
                <Balance />
                <p class="quiet">{trust}</p>
            </div>
        </Fold>
        <Fold title=tr!("Temperatures one by one") aside=tr!("empty: as stored")>
            <Temperatures />
        </Fold>
        <Fold title=tr!("How long out of the fridge") aside=tr!("each in one ball, out of the fridge")>
            <StandingTimes />
        </Fold>
        <Fold title=tr!("Textbook water temperature") aside=tr!("for those who teach it")>
            <FactorMethodBoxes />
        </Fold>
    }
}
