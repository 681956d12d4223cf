//! Line menu: what can be done with one ingredient of one stream.

use leptos::prelude::*;

use crate::app::browser::announce::announce;
use crate::app::part::{Button, Choice, NumberBox, Picture};
use crate::app::state::{Opened, PickFor, State, memo};
use crate::engine::formula::{Line, LineAt};
use crate::words::{Trouble, name, read, say, write};

/// What can be done with a line.
#[component]
pub fn LineMenu(
    /// Where it stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
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
    /// Where the line stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
    let holds = Signal::derive(move || {
        state.with(|sheet| sheet.formula.line(at).is_some_and(Line::is_flour))
    });
    let chosen = move |counts: bool| {
        state.edit(|sheet| {
            if let Some(line) = sheet.formula.line_mut(at) {
                line.counts_as_flour = Some(counts);
            }
        });
    };
    let answers = vec![(true, say!("Yes")), (false, say!("No"))];
    view! { <Choice id="counts" label=say!("Counts as flour, so as part of the 100 %") answers holds chosen /> }
}

/// Another ingredient in its place.
#[component]
fn Change(
    /// Where the line stands.
    at: LineAt,
    /// What it is now.
    food: Memo<String>,
) -> impl IntoView {
    let state = State::here();
    let pick = move |()| {
        state.open(Opened::Pick {
            title: say!("In place of {}", food.get_untracked()),
            pick_for: PickFor::Swap(at),
        });
    };
    view! { <Button says=say!("Change the ingredient") tapped=pick /> }
}

/// Away with it.
#[component]
fn Remove(
    /// Where the line stands.
    at: LineAt,
    /// What it is.
    food: Memo<String>,
) -> impl IntoView {
    let state = State::here();
    let remove = move |()| {
        let gone = food.get_untracked();
        state.edit(|sheet| {
            sheet.remove_line(at);
        });
        state.close();
        announce(&say!("{gone} removed. Undo brings it back.", gone));
    };
    view! { <Button says=say!("Remove") class="risky" picture=Picture::Remove tapped=remove /> }
}

/// What really went in, where a weighing missed.
#[component]
fn Poured(
    /// Where the line stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
    let figure = Signal::derive(move || {
        let manner = state.manner.get();
        state.with(|sheet| {
            let poured = sheet.formula.line(at).and_then(|line| line.poured);
            poured
                .map(|mass| write::box_mass(mass, manner))
                .unwrap_or_default()
        })
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        // An empty box takes the note away again.
        let poured = match text.trim() {
            "" => None,
            text => Some(read::mass(text, manner).map_err(|error| error.sentence(manner))?),
        };
        state.type_in("poured", |sheet| {
            if let Some(line) = sheet.formula.line_mut(at) {
                line.poured = poured;
            }
        });
        Ok(())
    };
    let unit = Signal::derive(move || state.manner.get().units.mass.symbol());
    view! {
        <NumberBox id=format!("poured-{}-{}", at.stream, at.line) label=say!("Really poured, if it missed") unit figure take=Callback::new(take) />
    }
}

/// The other streams, each of which the line can be moved to.
#[component]
fn Moves(
    /// Where the line stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
    let others: Vec<(usize, String)> = state
        .sheet()
        .formula
        .streams
        .iter()
        .enumerate()
        .filter(|(stream, _)| *stream != at.stream)
        .map(|(stream, other)| (stream, other.name.clone()))
        .collect();
    let to = move |stream: usize| {
        state.edit(|sheet| {
            sheet.move_line(at, stream);
        });
        state.close();
        announce(say!("Moved."));
    };
    let buttons = others
        .into_iter()
        .map(|(stream, name)| view! { <Button says=say!("Move to {name}", name) tapped=move |()| to(stream) /> })
        .collect_view();
    view! { <div class="buttons">{buttons}</div> }
}
