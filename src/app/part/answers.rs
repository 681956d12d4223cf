//! The answers of a choice by index, so that a choice of any type is drawn by the same code.

use leptos::prelude::*;

/// The labels of the answers, the index of the selected one, and what is called with another.
#[derive(Clone, Copy)]
pub(super) struct Answers {
    /// The labels, in their order.
    pub(super) labels: Signal<Vec<String>>,
    /// The index of the selected answer.
    pub(super) selected: Signal<Option<usize>>,
    /// Called with the index of another.
    pub(super) on_select: Callback<usize>,
}

impl Answers {
    /// Answers of any type, by index.
    pub(super) fn new<T>(
        answers: Signal<Vec<(T, String)>>,
        selected: Signal<T>,
        on_select: Callback<T>,
    ) -> Self
    where
        T: Copy + PartialEq + Send + Sync + 'static,
    {
        let index = move || {
            let selected = selected.get();
            answers.with(|answers| answers.iter().position(|(answer, _)| *answer == selected))
        };
        let labels = move || {
            answers.with(|answers| answers.iter().map(|(_, label)| label.clone()).collect())
        };
        let select = move |index: usize| {
            let at = |answers: &Vec<(T, String)>| answers.get(index).map(|(answer, _)| *answer);
            if let Some(answer) = answers.with_untracked(at) {
                on_select.run(answer);
            }
        };
        Self {
            labels: Signal::derive(labels),
            selected: Signal::derive(index),
            on_select: Callback::new(select),
        }
    }
}
