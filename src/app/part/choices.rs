//! Choices by index, so that choices of any type are drawn by the same code.

use leptos::prelude::*;

/// The labels of the choices, the index of the selected one, and what is called with another.
#[derive(Clone, Copy)]
pub(super) struct Choices {
    /// The labels, in their order.
    pub(super) labels: Signal<Vec<String>>,
    /// The index of the selected choice.
    pub(super) selected: Signal<Option<usize>>,
    /// Called with the index of another.
    pub(super) on_select: Callback<usize>,
}

impl Choices {
    /// Takes choices of any type.
    pub(super) fn new<T>(
        choices: Signal<Vec<(T, String)>>,
        selected: Signal<T>,
        on_select: Callback<T>,
    ) -> Self
    where
        T: Copy + PartialEq + Send + Sync + 'static,
    {
        let index = move || {
            let selected = selected.get();
            choices.with(|choices| choices.iter().position(|(choice, _)| *choice == selected))
        };
        let labels = move || {
            choices.with(|choices| choices.iter().map(|(_, label)| label.clone()).collect())
        };
        let select = move |index: usize| {
            let at = |choices: &Vec<(T, String)>| choices.get(index).map(|(choice, _)| *choice);
            if let Some(choice) = choices.with_untracked(at) {
                on_select.run(choice);
            }
        };
        Self {
            labels: Signal::derive(labels),
            selected: Signal::derive(index),
            on_select: Callback::new(select),
        }
    }
}
