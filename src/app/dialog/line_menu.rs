//! Line menu: what can be done with one ingredient of one part.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Choice, NumberBox, Picture};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::engine::formula::{Line, LineAt};
use crate::text::{ErrorText, format, name, read, tr};

/// What can be done with a line.
#[component]
pub fn LineMenu(
    /// The line's place in the formula.
    at: LineAt,
) -> impl IntoView {
    let state = use_app_state();
    let food = memo(move || {
        state
            .with(|sheet| {
                sheet
                    .formula
                    .line(at)
                    .map(|line| name::food_short(&line.food).into_owned())
            })
            .unwrap_or_default()
    });
    view! {
        <h3>{food}</h3>
        <Poured at />
        <Counts at />
        <Moves at />
        <div class="menu">
            <Change at food />
            <Remove at food />
        </div>
    }
}

/// Whether it counts as flour.
#[component]
fn Counts(
    /// The line's place in the formula.
    at: LineAt,
) -> impl IntoView {
    let state = use_app_state();
    let selected = Signal::derive(move || {
        state.with(|sheet| sheet.formula.line(at).is_some_and(Line::is_flour))
    });
    let chosen = move |counts: bool| {
        state.edit(|sheet| {
            if let Some(line) = sheet.formula.line_mut(at) {
                line.counts_as_flour = Some(counts);
            }
        });
    };
    let choices = vec![(true, tr!("Yes")), (false, tr!("No"))];
    view! { <Choice id="counts" label=tr!("Counts as flour, so as part of the 100 %") choices selected on_select=chosen /> }
}

/// Replaces the ingredient.
#[component]
fn Change(
    /// The line's place in the formula.
    at: LineAt,
    /// What it is now.
    food: Memo<String>,
) -> impl IntoView {
    let state = use_app_state();
    let pick = move |()| {
        state.open(DialogKind::Pick {
            title: tr!("Replace {value}", value = food.get_untracked()),
            pick_for: PickFor::Swap(at),
        });
    };
    view! { <Button label=tr!("Replace the ingredient") on_tap=pick /> }
}

/// Removes the line.
#[component]
fn Remove(
    /// The line's place in the formula.
    at: LineAt,
    /// What it is.
    food: Memo<String>,
) -> impl IntoView {
    let state = use_app_state();
    let remove = move |()| {
        let gone = food.get_untracked();
        state.edit(|sheet| {
            sheet.remove_line(at);
        });
        state.close();
        announce(&tr!("{gone} removed. Undo brings it back.", gone = gone));
    };
    view! { <Button label=tr!("Remove") class="danger" picture=Picture::Remove on_tap=remove /> }
}

/// What really went in, where a weighing missed.
#[component]
fn Poured(
    /// The line's place in the formula.
    at: LineAt,
) -> impl IntoView {
    let state = use_app_state();
    let figure = Signal::derive(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let poured = sheet.formula.line(at).and_then(|line| line.poured);
            poured
                .map(|mass| format::box_mass(mass, options))
                .unwrap_or_default()
        })
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        // An empty box removes the note.
        let poured =
            read::optional(&text, options, read::mass).map_err(|error| error.sentence(options))?;
        state.type_in(&format!("poured-{}-{}", at.part, at.line), |sheet| {
            if let Some(line) = sheet.formula.line_mut(at) {
                line.poured = poured;
            }
        });
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! {
        <NumberBox id=format!("poured-{}-{}", at.part, at.line) label=tr!("Actual weight, if different") unit figure store=Callback::new(store) />
    }
}

/// The other parts, each of which the line can be moved to.
#[component]
fn Moves(
    /// The line's place in the formula.
    at: LineAt,
) -> impl IntoView {
    let state = use_app_state();
    let sheet = state.sheet();
    let others: Vec<(usize, String)> = sheet
        .formula
        .other_parts(at.part)
        .map(|(part, other)| (part, other.name.clone()))
        .collect();
    let to = move |part: usize| {
        state.edit(|sheet| {
            sheet.move_line(at, part);
        });
        state.close();
        announce(tr!("Moved."));
    };
    let buttons = others
        .into_iter()
        .map(|(part, name)| view! { <Button label=tr!("Move to {name}", name = name) on_tap=move |()| to(part) /> })
        .collect_view();
    view! { <div class="buttons">{buttons}</div> }
}
