//! Targets: a figure is set exactly and one ingredient makes up the difference; tried, not saved.

use leptos::prelude::*;

use crate::app::part::{NumberBox, PickOne, WorkingButton};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::{Figure, LineAt, Reached};
use crate::results::formula::{Adjuster, figures, gives_way, reached};
use crate::text::{ErrorText, format, line, name, read, tr};

/// A figure is set, and one ingredient makes up the difference.
#[component]
pub fn TargetFields() -> impl IntoView {
    let state = use_app_state();
    let figure = RwSignal::new(Figure::TrueWater);
    let asked = RwSignal::new(None::<LineAt>);
    let gives_way = memo(move || {
        let (figure, asked) = (figure.get(), asked.get());
        state.with(|sheet| gives_way(sheet, figure, asked))
    });
    let choices = Figure::SETTABLE
        .map(|figure| (figure, name::figure(figure).to_owned()))
        .to_vec();
    let lines = memo(move || {
        state.with(|sheet| {
            let named = line::all_of_dough(&sheet.formula)
                .into_iter()
                .map(|(at, says)| (Some(at), says));
            named.collect::<Vec<_>>()
        })
    });
    let choose = move |chosen: Figure| {
        figure.set(chosen);
        asked.set(None);
        state.end_step();
        state.reset_inputs();
    };
    view! {
        <div class="fields">
            <PickOne id="target-figure" label=tr!("Which") choices=Signal::stored(choices) selected=figure on_select=choose />
            <TargetBox figure gives_way />
            <PickOne id="target-line" label=tr!("Adjust by changing") choices=lines selected=gives_way on_select=move |at| asked.set(at) />
        </div>
    }
}

/// The current figure, to be set.
#[component]
fn TargetBox(
    /// Which figure.
    figure: RwSignal<Figure>,
    /// The line that makes up the difference.
    gives_way: Memo<Option<LineAt>>,
) -> impl IntoView {
    let state = use_app_state();
    let current = memo(move || {
        let (options, figure) = (state.options.get(), figure.get());
        let share = state.with(|sheet| figures(sheet).share(figure));
        share
            .map(|share| format::box_figure(share, options))
            .unwrap_or_default()
    });
    let last = RwSignal::new(None::<Reached>);
    let is_set = memo(move || {
        last.with(|last| {
            let now = |last: &Reached| state.with(|sheet| sheet.formula == last.formula);
            last.as_ref().is_some_and(now)
        })
    });
    let worked = move |()| {
        let options = state.options.get();
        last.with(|last| {
            let Some(last) = last else {
                return Default::default();
            };
            let what = line::adjuster(&last.formula, Adjuster::Line(last.at));
            let shown = format!("{what}: {}", format::mass(last.after, options));
            (shown, last.working())
        })
    };
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        let (figure, at) = (figure.get_untracked(), gives_way.get_untracked());
        let base = state.entered("target");
        let found = reached(&base, figure, share, at).map_err(|error| error.sentence(options))?;
        state.begin_trial();
        state.put(base.with_formula(found.formula.clone()), Some("target"));
        last.set(Some(found));
        Ok(())
    };
    let label = Signal::derive(move || tr!("Target: {value}", value = name::figure(figure.get())));
    view! {
        <NumberBox id="target" label unit="%" figure=current store=Callback::new(store) />
        <Show when=move || is_set.get()>
            <WorkingButton title=label worked=Callback::new(worked) />
        </Show>
    }
}
