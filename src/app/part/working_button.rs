//! Working button: opens the working of a figure that is written in a sentence or in a box.

use leptos::prelude::*;

use crate::app::state::{DialogKind, use_app_state};
use crate::engine::working::WorkingLine;
use crate::text::tr;

/// A figure as it is shown, and the steps that lead to it.
pub type Worked = (String, Vec<WorkingLine>);

/// A button that opens the working of a figure beside it.
#[component]
pub fn WorkingButton(
    /// What the figure is: the title of its working.
    #[prop(into)]
    title: Signal<String>,
    /// The figure and its working, computed on a tap.
    #[prop(into)]
    worked: Callback<(), Worked>,
) -> impl IntoView {
    let state = use_app_state();
    let label = tr!("How this is worked out");
    // Several of them stand in one list: the name read out says of what.
    let name = move || title.with(|title| format!("{title}: {label}"));
    let open = move |_| {
        let (value, lines) = untrack(|| worked.run(()));
        state.open(DialogKind::Working {
            title: title.get_untracked(),
            value,
            lines,
        });
    };
    view! {
        <button type="button" class="button bare" aria-label=name aria-haspopup="dialog" on:click=open>
            {label}
        </button>
    }
}
