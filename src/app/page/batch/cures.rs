//! Cures: each line that the scale shows too coarsely, with what helps.

use leptos::prelude::*;

use super::BatchAnswers;
use crate::app::part::Button;
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::engine::batch::{Rounded, Shown, SolutionCure};
use crate::engine::formula::LineAt;
use crate::engine::working::Line;
use crate::text::{caution, name, tr};

/// A line in need of a cure, and whether the scale shows nothing of it.
type InNeed = (LineAt, bool);

/// Each line in need of a cure, in one card.
#[component]
pub fn Cures() -> impl IntoView {
    let answers = BatchAnswers::here();
    let lines = memo(move || {
        let found = answers.read_rounded(|rounded| {
            let lines = rounded.in_need_of_a_cure();
            let lines = lines.map(|line| (line.at, line.shown == Shown::BelowScale));
            Some(lines.collect::<Vec<InNeed>>())
        });
        found.unwrap_or_default()
    });
    let some = memo(move || lines.with(|lines| !lines.is_empty()));
    view! {
        <Show when=move || some.get()>
            <section class="advice cures follows" aria-label=tr!("Hard to weigh")>
                <h2>{tr!("Hard to weigh on these scales")}</h2>
                <div>
                    <For each=move || lines.get() key=|line| *line let((at, is_below))>
                        <Cure at is_below />
                    </For>
                </div>
            </section>
        </Show>
    }
}

/// One line and what helps; open at once where the scale shows nothing of it.
#[component]
fn Cure(
    /// Where the line stands.
    at: LineAt,
    /// Whether the scale shows nothing of it.
    is_below: bool,
) -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let title = memo(move || answers.read_rounded(|rounded| title(rounded, at)));
    let advice = memo(move || {
        let options = state.options.get();
        let found = answers.read_rounded(|rounded| {
            let line = rounded.lines.iter().find(|line| line.at == at)?;
            caution::rounding(
                &name::food_short(&rounded.formula.line(at)?.food),
                line,
                options,
            )
        });
        found.map(|advice| (advice.means.into_owned(), advice.to_do.into_owned()))
    });
    let means = move || advice.with(|advice| advice.as_ref().map(|advice| advice.0.clone()));
    let to_do = move || advice.with(|advice| advice.as_ref().map(|advice| advice.1.clone()));
    let open = move |()| {
        state.open(DialogKind::Working {
            title: title.get_untracked().unwrap_or_default(),
            value: untrack(means).unwrap_or_default(),
            lines: untrack(|| answers.read_rounded(|rounded| Some(worked(rounded, at))))
                .unwrap_or_default(),
        });
    };
    view! {
        <details class="cure" open=is_below>
            <summary>{move || title.get()}</summary>
            <div class="body">
                <p>{means}</p>
                <p>{to_do}</p>
                <Button says=tr!("How this came about") class="bare" tapped=open />
            </div>
        </details>
    }
}

/// "Instant yeast, Night dough".
fn title(rounded: &Rounded, at: LineAt) -> Option<String> {
    let part = rounded.formula.parts.get(at.part)?;
    let food = name::food_short(&part.lines.get(at.line)?.food);
    Some(format!("{food}, {}", part.name))
}

/// How a line's weight and its cures came about.
fn worked(rounded: &Rounded, at: LineAt) -> Vec<Line> {
    let mut lines = rounded.line_working(at);
    let line = rounded.lines.iter().find(|line| line.at == at);
    if let Some(cures) = line.and_then(|line| line.cures) {
        let pocket = cures.pocket_scale.iter();
        lines.extend(pocket.flat_map(|scale| scale.working()));
        if let Some(SolutionCure::Take(solution)) = cures.solution {
            lines.extend(solution.working());
        }
    }
    lines
}
