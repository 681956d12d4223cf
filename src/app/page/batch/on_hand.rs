//! Which ingredient is on hand.

use leptos::prelude::*;

use super::BatchAnswers;
use super::results::scale_sheet;
use crate::app::part::PickOne;
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::BatchTarget;
use crate::engine::formula::{Formula, LineAt};
use crate::text::{name, tr};

/// A choice of the formula's ingredients, each once.
#[component]
pub fn OnHandPick() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let foods = memo(move || state.with(|sheet| each_once(&sheet.formula)));
    let holds = memo(move || {
        state.with(|sheet| {
            let BatchTarget::OnHand { at, .. } = sheet.batch.wanted else {
                return None;
            };
            first_alike(&sheet.formula, at)
        })
    });
    let chosen = move |at: Option<LineAt>| {
        let mut sheet = state.sheet();
        let scaled = answers.scaled.get_untracked();
        if let (Some(at), Ok(scaled)) = (at, scaled) {
            sheet.batch.wanted = scaled.of_one(at);
            if scale_sheet(&sheet).is_ok() {
                state.put(sheet, None);
                state.reset_inputs();
            }
        }
    };
    view! { <PickOne id="wanted-food" label=tr!("Which ingredient") answers=foods holds chosen=Callback::new(chosen) /> }
}

/// Each ingredient that weighs something, where it stands first, with its name and kind.
fn each_once(formula: &Formula) -> Vec<(Option<LineAt>, String)> {
    let mut found: Vec<(Option<LineAt>, String)> = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        for (number, one) in own.lines.iter().enumerate() {
            let at = LineAt { part, line: number };
            let is_first = first_alike(formula, at) == Some(at);
            if is_first && one.mass > crate::engine::quantity::Mass::ZERO {
                found.push((Some(at), name::food(&one.food)));
            }
        }
    }
    found
}

/// Where the ingredient of a line stands first.
fn first_alike(formula: &Formula, at: LineAt) -> Option<LineAt> {
    let food = &formula.line(at)?.food;
    formula.parts.iter().enumerate().find_map(|(part, own)| {
        let line = own.lines.iter().position(|line| line.food == *food)?;
        Some(LineAt { part, line })
    })
}
