//! Ways to the wanted temperature: each in numbers, and taken by a tap.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::browser::live_region::announce;
use crate::app::part::Button;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::heat::{DoughRemedy, DoughStep, LiquidAnswer};
use crate::engine::quantity::Temperature;
use crate::results::heat::{MixingResult, apply_step, offered_remedies, set_liquid_temperature};
use crate::text::{Trouble, chart::begun, heat, tr};

/// The first ways out of an unreachable target, each a button: the liquid at its best, and a step.
#[component]
pub fn TakeIt(
    /// What else brings the dough there, once that is worked out.
    remedies: RwSignal<Option<Vec<DoughRemedy>>>,
) -> impl IntoView {
    let answers = HeatAnswers::here();
    let ways = memo(move || {
        let found = answers.read_mixing(|mixing| match &mixing.liquid {
            Ok(LiquidAnswer::OutOfReach(out)) => remedies.with(|remedies| {
                let offered = offered_remedies(remedies.as_deref().unwrap_or_default());
                let offered = offered.into_iter();
                offered.map(|remedy| (Some(out.best), remedy)).collect()
            }),
            Ok(LiquidAnswer::At { .. }) | Err(_) => Vec::new(),
        });
        found.unwrap_or_default()
    });
    view! {
        <div class="buttons ways">
            {move || ways.get().into_iter().map(|(liquid, remedy)| view! { <Way liquid remedy /> }).collect_view()}
        </div>
    }
}

#[component]
fn Way(
    /// How warm the liquid is made with it; none leaves it.
    liquid: Option<Temperature>,
    /// The step.
    remedy: DoughRemedy,
) -> impl IntoView {
    let state = use_app_state();
    let answers = HeatAnswers::here();
    let label = memo(move || {
        let options = state.options.get();
        let said = answers.read_mixing(|mixing| {
            let standing = heat::standing_names(&mixing.load).unwrap_or_default();
            heat::step(remedy.step, &standing, options)
        });
        begun(&said.unwrap_or_default())
    });
    view! { <Button label on_tap=move |()| take(state, answers, liquid, Some(remedy.step)) /> }
}

/// Makes the liquid as warm as said, and takes a step.
pub fn take(
    state: AppState,
    answers: HeatAnswers,
    liquid: Option<Temperature>,
    step: Option<DoughStep>,
) {
    let mixes = untrack(|| answers.read_mixing(|mixing: &MixingResult| mixing.load.dough.minutes));
    let Some(mixes) = mixes else { return };
    let mut sheet = state.sheet();
    let poured = liquid.map_or(Ok(()), |liquid| {
        set_liquid_temperature(&mut sheet.formula, liquid)
    });
    let taken = poured.and_then(|()| {
        step.map_or(Ok(()), |step| {
            apply_step(&mut sheet.formula, &mut sheet.heat, mixes, step)
        })
    });
    match taken {
        Ok(()) => {
            state.edit(|saved| *saved = sheet);
            announce(tr!("Done. Undo takes it back."));
        }
        Err(error) => announce(&error.sentence(state.options.get_untracked())),
    }
}
