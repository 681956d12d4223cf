//! Scale boxes: the divisions of the kitchen scale and of a pocket scale, if there is one.

use leptos::prelude::*;

use super::PickOne;
use crate::app::state::{memo, use_app_state};
use crate::engine::quantity::Division;
use crate::sheet::Scales;
use crate::text::{format, tr};

/// The scales of this kitchen.
#[component]
pub fn ScaleBoxes() -> impl IntoView {
    let state = use_app_state();
    let scales = memo(move || state.kitchen.with(|kitchen| kitchen.scales));
    let main = memo(move || Division::from_mass(scales.get().main).ok());
    let pocket = memo(move || {
        scales
            .get()
            .pocket
            .and_then(|mass| Division::from_mass(mass).ok())
    });
    let steps = move || {
        let options = state.options.get();
        Division::ALL
            .map(|step| (Some(step), format::division(step, options)))
            .to_vec()
    };
    let pocket_steps = memo(move || {
        let mut steps = steps();
        steps.insert(0, (None, tr!("none").to_owned()));
        steps
    });
    let set = move |change: &dyn Fn(&mut Scales)| {
        let mut kitchen = state.kitchen.get_untracked();
        change(&mut kitchen.scales);
        state.set_kitchen(kitchen);
    };
    let set_main = move |step: Option<Division>| {
        if let Some(step) = step {
            set(&|scales| scales.main = step.mass());
        }
    };
    let set_pocket =
        move |step: Option<Division>| set(&|scales| scales.pocket = step.map(Division::mass));
    view! {
        <div class="boxes">
            <PickOne id="scale-main" label=tr!("Kitchen scale") choices=memo(steps) selected=main on_select=Callback::new(set_main) />
            <PickOne id="scale-pocket" label=tr!("Pocket scale, for yeast and salt") choices=pocket_steps selected=pocket on_select=Callback::new(set_pocket) />
        </div>
    }
}
