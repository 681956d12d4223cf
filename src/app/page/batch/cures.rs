//! Cures: each line that the scale shows too coarsely, with what helps.

use leptos::prelude::*;

use super::BatchAnswers;
use crate::app::part::AdviceCard;
use crate::app::state::State;
use crate::engine::batch::{Rounded, SolutionCure};
use crate::engine::formula::LineAt;
use crate::engine::working::Line;
use crate::words::caution;

/// Each line in need of a cure.
#[component]
pub fn Cures() -> impl IntoView {
    let answers = BatchAnswers::here();
    let lines = Memo::new(move |_| {
        let found = answers.read_rounded(|rounded| {
            Some(
                rounded
                    .in_need_of_a_cure()
                    .map(|line| line.at)
                    .collect::<Vec<_>>(),
            )
        });
        found.unwrap_or_default()
    });
    view! {
        <For each=move || lines.get() key=|at| *at let(at)>
            <CureCard at />
        </For>
    }
}

#[component]
fn CureCard(
    /// Where the line stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
    let answers = BatchAnswers::here();
    let title = Memo::new(move |_| {
        let title = answers.read_rounded(|rounded| {
            let stream = rounded.formula.streams.get(at.stream)?;
            let food = stream.lines.get(at.line)?.food.name();
            Some(format!("Hard to weigh: {food}, {}", stream.name))
        });
        title.unwrap_or_default()
    });
    let advice = Memo::new(move |_| {
        let manner = state.manner.get();
        answers.read_rounded(|rounded| {
            let line = rounded.lines.iter().find(|line| line.at == at)?;
            caution::rounding(rounded.formula.line(at)?.food.name(), line, manner)
        })
    });
    let working = move |()| {
        answers.rounded.with_untracked(|rounded| {
            rounded
                .as_ref()
                .map(|rounded| worked(rounded, at))
                .unwrap_or_default()
        })
    };
    view! { <AdviceCard title advice working=Callback::new(working) /> }
}

/// How a line's weight and its cures came about.
fn worked(rounded: &Rounded, at: LineAt) -> Vec<Line> {
    let mut lines = rounded.line_working(at);
    let line = rounded.lines.iter().find(|line| line.at == at);
    if let Some(cures) = line.and_then(|line| line.cures) {
        lines.extend(cures.pocket_scale.iter().flat_map(|scale| scale.working()));
        if let Some(SolutionCure::Take(solution)) = cures.solution {
            lines.extend(solution.working());
        }
    }
    lines
}
