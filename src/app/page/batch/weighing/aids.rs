//! Weighing aids: each line that the scale shows too coarsely, with what helps.

use leptos::prelude::*;

use crate::app::page::BatchContext;
use crate::app::part::Button;
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::engine::batch::Rounded;
use crate::engine::formula::LineAt;
use crate::results::batch::BatchResults;
use crate::results::batch::weighing::HardToWeigh;
use crate::text::{caution, name, tr};

/// Every line that is hard to weigh, in one card.
#[component]
pub fn WeighingAids() -> impl IntoView {
    let context = BatchContext::from_context();
    let lines = memo(move || context.results.with(BatchResults::hard_to_weigh));
    let some = memo(move || lines.with(|lines| !lines.is_empty()));
    view! {
        <Show when=move || some.get()>
            <div class="cures follows" role="group" aria-label=tr!("Hard to weigh")>
                <For each=move || lines.get() key=|line| *line let(line)>
                    <WeighingAid line />
                </For>
            </div>
        </Show>
    }
}

/// One line and what helps; open at once where the scale shows nothing of it.
#[component]
fn WeighingAid(
    /// Which line.
    line: HardToWeigh,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let at = line.at;
    let title = memo(move || context.read_rounded(|rounded| title(rounded, at)));
    let advice = memo(move || {
        let options = state.options.get();
        let found = context.read_rounded(|rounded| {
            let food = name::food_short(&rounded.formula.line(at)?.food);
            caution::rounding(&food, rounded.line(at)?, options)
        });
        found.map(|advice| (advice.means.into_owned(), advice.to_do.into_owned()))
    });
    let means = move || advice.with(|advice| advice.as_ref().map(|advice| advice.0.clone()));
    let to_do = move || advice.with(|advice| advice.as_ref().map(|advice| advice.1.clone()));
    let open = move |()| {
        state.open(DialogKind::Working {
            title: title.get_untracked().unwrap_or_default(),
            value: untrack(means).unwrap_or_default(),
            lines: context
                .results
                .with_untracked(|results| results.aid_working(at)),
        });
    };
    view! {
        <details class="cure" open=line.below_scale>
            <summary>{move || title.get()}</summary>
            <div class="body">
                <p>{means}</p>
                <p>{to_do}</p>
                <Button label=tr!("How this is worked out") class="bare" on_tap=open />
            </div>
        </details>
    }
}

/// "Instant yeast, Night dough".
fn title(rounded: &Rounded, at: LineAt) -> Option<String> {
    let part = rounded.formula.parts.get(at.part)?;
    let food = name::food_short(&part.lines.get(at.line)?.food);
    Some(tr!("{food}, {part}", food = food, part = name::part(part)))
}
