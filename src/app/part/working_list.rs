//! Working list: the working of a figure, step by step.

use leptos::prelude::*;

use crate::engine::working::WorkingLine;
use crate::text::{FormatOptions, tr, working};

/// Each step with its rule in letters, the numbers put in, the answer and the source.
#[component]
pub fn WorkingList(
    /// The steps.
    lines: Vec<WorkingLine>,
    /// How numbers are written here.
    options: FormatOptions,
) -> impl IntoView {
    let steps = lines
        .iter()
        .map(|line| {
            let step = working::worked(line, options);
            let letters = step
                .letters
                .into_iter()
                .map(|one| {
                    view! {
                        <div>
                            <dt>{one.letter}</dt>
                            <dd>{one.of}</dd>
                            <dd class="number">{one.figure}</dd>
                        </div>
                    }
                })
                .collect_view();
            view! {
                <li>
                    <p class="rule">{step.rule}</p>
                    <dl class="with">{letters}</dl>
                    <p class="sum">{step.put_in}" = "{step.result}</p>
                    <p class="quiet">{step.result_of}</p>
                    <p class="source">{tr!("Source: ")}{step.source}</p>
                </li>
            }
        })
        .collect_view();
    view! { <ol class="working">{steps}</ol> }
}
