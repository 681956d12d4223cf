//! What to know about the formula before making it: a row for each caution.

use leptos::prelude::*;

use crate::app::part::{AnswerRow, SafetyLine, WorkingButton};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{Caution, Figure};
use crate::results::formula::{caution_working, cautions, figures, is_empty};
use crate::text::caution::Hazard;
use crate::text::{ErrorText, caution, notice, tr};

/// A caution, and in words: title, answer, meaning, what to do, source.
type Told = (Caution, [String; 5]);

/// Cautions about the formula, each one with what to do; why there are no figures, where there are
/// none. They come in the frame after the figures.
#[component]
pub fn Cautions() -> impl IntoView {
    // Half a number can ask for many cautions, which the next digit takes away.
    let state = use_app_state().a_frame_later();
    let found = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let found = cautions(sheet).unwrap_or_default();
            // Raw flour is in every dough: one line says so.
            let found = found.iter().filter(|one| **one != Caution::RawFlour);
            found
                .map(|one| {
                    let advice = caution::formula(one, &sheet.formula, options);
                    let title = caution::formula_title(one);
                    let wording = [
                        title,
                        caution::formula_answer(one, options),
                        advice.means.into_owned(),
                        advice.to_do.into_owned(),
                        advice.source.into_owned(),
                    ];
                    (*one, wording)
                })
                .collect::<Vec<Told>>()
        })
    });
    let empty = memo(move || state.with(is_empty));
    let missing = memo(move || {
        let options = state.options.get();
        if empty.get() {
            return Some(notice::nothing_in_it().to_owned());
        }
        let error = state.with(|sheet| figures(sheet).share(Figure::Flour).err());
        error.map(|error| error.sentence(options))
    });
    let count = memo(move || found.with(Vec::len));
    view! {
        {move || missing.get().map(|why| view! { <p class="advice">{why}</p> })}
        <For each=move || 0..count.get() key=|at| *at let(at)>
            <OneCaution found at />
        </For>
        <Show when=move || !empty.get()>
            <SafetyLine step=Hazard::RawDough />
        </Show>
    }
}

/// One of the cautions.
#[component]
fn OneCaution(
    /// All of them.
    found: Memo<Vec<Told>>,
    /// Which one.
    at: usize,
) -> impl IntoView {
    let state = use_app_state();
    let read = move |select: fn(&[String; 5]) -> &String| {
        memo(move || {
            let wording = |(_, wording): &Told| select(wording).clone();
            found.with(|found| found.get(at).map(wording).unwrap_or_default())
        })
    };
    let title = read(|[title, ..]| title);
    let answer = read(|[_, answer, ..]| answer);
    let worked = move |()| {
        let lines = |(one, _): &Told| state.with(|sheet| caution_working(sheet, one));
        let lines = found.with(|found| found.get(at).map(lines));
        (answer.get(), lines.unwrap_or_default())
    };
    view! {
        <AnswerRow title answer>
            <div class="body">
                <p>{read(|[_, _, means, ..]| means)}</p>
                <p>{read(|[.., to_do, _]| to_do)}</p>
                <p class="quiet">{tr!("Source: ")}{read(|[.., source]| source)}</p>
                <WorkingButton title worked=Callback::new(worked) />
            </div>
        </AnswerRow>
    }
}
