//! Which flour is the hundred per cent of the percentages, behind a row.

use leptos::prelude::*;

use crate::app::part::{AnswerRow, Choice};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::Basis;
use crate::text::{name, tr};

/// The basis of the percentages.
#[component]
pub fn BasisRow() -> impl IntoView {
    let state = use_app_state();
    let answer = memo(move || name::basis(state.basis.get()).to_owned());
    let choose = move |basis| {
        state.basis.set(basis);
        state.reset_inputs();
    };
    let choices = || [Basis::AllFlour, Basis::OwnPart].map(|basis| (basis, name::basis(basis)));
    view! {
        <AnswerRow title=tr!("Percentages") answer>
            <div class="body">
                <Choice id="basis" label=tr!("Percentages") choices=choices().to_vec() selected=state.basis on_select=choose />
            </div>
        </AnswerRow>
    }
}
