//! What-if sheet: a figure is tried half a point up or down, with what follows; kept or dropped.

use std::sync::Arc;

use leptos::prelude::*;

use super::hold_button::HoldButton;
use crate::app::browser::live_region::announce;
use crate::app::page::Day;
use crate::app::part::{Button, NumberBox, Shown, WorkingList};
use crate::app::state::{AppState, after_frame, memo, use_app_state};
use crate::engine::formula::Figure;
use crate::engine::quantity::Share;
use crate::engine::working::WorkingLine;
use crate::results::formula::{
    Adjuster, adjusted_working, adjusters, figures, nudged, try_adjusted, working,
};
use crate::sheet::Sheet;
use crate::text::{DoughFigures, ErrorText, format, line, name, read, tr, trial};

/// The id of the box of the sheet, and the name of its steps.
const ID: &str = "what-if";

/// The state of the sheet.
#[derive(Clone, Copy)]
struct Trying {
    state: AppState,
    figure: Figure,
    /// The formula as it was when the sheet was opened: every change begins from it.
    base: StoredValue<Arc<Sheet>>,
    /// What makes up the difference.
    adjuster: RwSignal<Option<Adjuster>>,
    /// Why the last step was refused; empty where it was not.
    refused: RwSignal<String>,
}

impl Trying {
    /// Sets the figure by the chosen ingredient, as a trial.
    fn set(self, share: Share) -> Result<(), String> {
        let state = self.state;
        let options = state.options.get_untracked();
        let Some(adjuster) = self.adjuster.get_untracked() else {
            return Ok(());
        };
        let tried = self
            .base
            .with_value(|base| try_adjusted(base, self.figure, share, adjuster))
            .map_err(|error| error.sentence(options))?;
        self.refused.set(String::new());
        state.begin_trial();
        state.put(tried, Some(ID));
        Ok(())
    }

    /// Half a point more or less.
    fn nudge(self, is_more: bool) {
        let now = figures(&self.state.sheet()).share(self.figure);
        let Ok(now) = now else { return };
        match self.set(nudged(now, is_more)) {
            Ok(()) => {
                self.state.reset_inputs();
                self.say();
            }
            Err(why) => self.refuse(why),
        }
    }

    /// Another ingredient makes up the difference that is tried.
    fn choose(self, adjuster: Adjuster) {
        self.adjuster.set(Some(adjuster));
        if let Ok(now) = figures(&self.state.sheet()).share(self.figure)
            && self.state.trial.with_untracked(Option::is_some)
            && let Err(why) = self.set(now)
        {
            self.refuse(why);
        }
    }

    /// The step that leads to the weight of what makes up the difference.
    fn adjustment(self, tried: &Sheet) -> Vec<WorkingLine> {
        let (share, adjuster) = (figures(tried).share(self.figure), self.adjuster.get());
        let (Ok(share), Some(adjuster)) = (share, adjuster) else {
            return Vec::new();
        };
        self.base
            .with_value(|base| adjusted_working(base, self.figure, share, adjuster))
    }

    fn refuse(self, why: String) {
        announce(&why);
        self.refused.set(why);
    }

    /// Reads out what is changed.
    fn say(self) {
        let options = self.state.options.get_untracked();
        let tried = self.state.sheet();
        let changed = untrack(|| {
            self.state
                .with_saved(|saved| trial::changed(saved, &tried, options))
        });
        announce(&changed);
    }
}

/// Tries a figure of the dough.
#[component]
pub fn WhatIfSheet(
    /// Which figure.
    figure: Figure,
) -> impl IntoView {
    let state = use_app_state();
    let base = Arc::new(state.sheet());
    let choices = adjusters(&base, figure);
    let trying = Trying {
        state,
        figure,
        adjuster: RwSignal::new(choices.first().copied()),
        base: StoredValue::new(base),
        refused: RwSignal::new(String::new()),
    };
    view! {
        <div class="what-if">
            <Target trying />
            <p class="error" role="status">{trying.refused}</p>
            <Adjusters trying choices />
            <Follows trying />
            <Decide state />
            <Working trying />
        </div>
    }
}

/// Minus, the figure, plus.
#[component]
fn Target(
    /// The state of the sheet.
    trying: Trying,
) -> impl IntoView {
    let state = trying.state;
    let current = memo(move || {
        let options = state.options.get();
        let share = state.with(|sheet| figures(sheet).share(trying.figure));
        share
            .map(|share| format::box_figure(share, options))
            .unwrap_or_default()
    });
    let changed = memo(move || {
        state.is_trial()
            && state.with(|sheet| figures(sheet).share(trying.figure).ok())
                != state.with_saved(|saved| figures(saved).share(trying.figure).ok())
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        trying.set(share)
    };
    view! {
        <div class="target">
            <HoldButton sign="−" name=tr!("Half a point less") step=Callback::new(move |()| trying.nudge(false)) />
            <NumberBox id=ID label=tr!("Target: {value}", value = name::figure(trying.figure)) unit="%" figure=current changed store=Callback::new(store) />
            <HoldButton sign="+" name=tr!("Half a point more") step=Callback::new(move |()| trying.nudge(true)) />
        </div>
    }
}

/// Which ingredient makes up the difference, where there is a choice.
#[component]
fn Adjusters(
    /// The state of the sheet.
    trying: Trying,
    /// What can.
    choices: Vec<Adjuster>,
) -> impl IntoView {
    let is_one = choices.len() < 2;
    let button = move |adjuster: Adjuster| {
        let called = trying
            .base
            .with_value(|base| line::adjuster(&base.formula, adjuster));
        let checked = move || trying.adjuster.get() == Some(adjuster);
        view! {
            <label>
                <input type="radio" name="adjuster" prop:checked=checked on:change=move |_| trying.choose(adjuster) />
                {called}
            </label>
        }
    };
    (!is_one).then(|| {
        let buttons = choices.into_iter().map(button).collect_view();
        view! {
            <fieldset class="choice">
                <legend class="quiet">{tr!("by changing")}</legend>
                {buttons}
            </fieldset>
        }
    })
}

/// What follows: the line that changed, the dough, the poured water at once; temperature and rise
/// after the frame.
#[component]
fn Follows(
    /// The state of the sheet.
    trying: Trying,
) -> impl IntoView {
    let state = trying.state;
    let changed = memo(move || {
        let options = state.options.get();
        state.with(|tried| state.with_saved(|saved| trial::changed(saved, tried, options)))
    });
    let figure = move |select: fn(&DoughFigures) -> Option<&Shown>| {
        memo(move || {
            let select =
                |figures: &DoughFigures| select(figures).cloned().unwrap_or_else(Shown::missing);
            state.figures.with(select)
        })
    };
    let dough = figure(|figures| figures.mass(Figure::Dough));
    let poured = figure(|figures| figures.mass(Figure::PouredWater));
    // The run takes some milliseconds: it follows when the keys rest.
    let asked = memo(move || Some(state.current()));
    let settled = after_frame(asked, |sheet: &Arc<Sheet>| Some(Arc::clone(sheet)));
    let day = Day::from_context();
    let before = memo(move || day.planned_run_of(&state.saved()));
    let later = memo(move || {
        let options = state.options.get();
        let now = settled.get().map(|sheet| day.planned_run_of(&sheet));
        let follows = now.map(|now| before.with(|before| trial::follows(&now, before, options)));
        follows.unwrap_or_default()
    });
    view! {
        <p class="follows changed-line">{changed}</p>
        <dl class="consequences">
            {move || row(name::figure(Figure::Dough), dough.get())}
            {move || row(name::figure(Figure::PouredWater), poured.get())}
            {move || later.get().into_iter().map(|(name, shown)| row(name, shown)).collect_view()}
        </dl>
    }
}

/// A figure with what it was.
fn row(name: &'static str, shown: Shown) -> impl IntoView {
    view! {
        <div>
            <dt>{name}</dt>
            <dd>{shown.value}</dd>
            <dd class="quiet">{shown.was}</dd>
        </div>
    }
}

/// Drop or keep.
#[component]
fn Decide(
    /// The state of the page.
    state: AppState,
) -> impl IntoView {
    let drop_it = move |()| {
        state.drop_trial();
        announce(tr!("Trial dropped. The formula is as saved."));
        state.close();
    };
    let keep_it = move |()| {
        // Where another tab has changed the formula, the trial's own bar asks what to do.
        if !untrack(|| state.has_diverged()) {
            state.save_trial();
            announce(tr!("Trial kept."));
        }
        state.close();
    };
    let disabled = Signal::derive(move || state.is_stale() || !state.is_trial());
    view! {
        <div class="decide">
            <Button label=tr!("Drop") on_tap=drop_it />
            <Button label=tr!("Keep") class="primary" disabled on_tap=keep_it />
        </div>
    }
}

/// How what makes up the difference and the figure come about, worked out once it is asked for.
#[component]
fn Working(
    /// The state of the sheet.
    trying: Trying,
) -> impl IntoView {
    let state = trying.state;
    let is_open = RwSignal::new(false);
    let steps = move || {
        let sheet = state.current();
        let mut lines = trying.adjustment(&sheet);
        lines.extend(working(&sheet, Some(trying.figure)));
        view! { <WorkingList lines options=state.options.get() /> }
    };
    view! {
        <details on:toggle=move |_| is_open.update(|open| *open = !*open)>
            <summary>{tr!("How this is worked out")}</summary>
            {move || is_open.get().then(steps)}
        </details>
    }
}
