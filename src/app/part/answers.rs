//! Answers: what is chosen among, by place, whatever it is.

use leptos::prelude::*;

/// Answers in words, which of them holds, and what to call with another.
#[derive(Clone, Copy)]
pub(super) struct Answered {
    /// Their words, in their order.
    pub(super) words: Signal<Vec<String>>,
    /// The place of the one that holds.
    pub(super) holds: Signal<Option<usize>>,
    /// Called with the place of another.
    pub(super) chosen: Callback<usize>,
}

/// Answers of any kind, by place.
pub(super) fn answered<T>(
    answers: Signal<Vec<(T, String)>>,
    holds: Signal<T>,
    chosen: Callback<T>,
) -> Answered
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let place = move || {
        let held = holds.get();
        answers.with(|answers| answers.iter().position(|(answer, _)| *answer == held))
    };
    let words =
        move || answers.with(|answers| answers.iter().map(|(_, words)| words.clone()).collect());
    let choose = move |place: usize| {
        let at = |answers: &Vec<(T, String)>| answers.get(place).map(|(answer, _)| *answer);
        if let Some(answer) = answers.with_untracked(at) {
            chosen.run(answer);
        }
    };
    Answered {
        words: Signal::derive(words),
        holds: Signal::derive(place),
        chosen: Callback::new(choose),
    }
}
