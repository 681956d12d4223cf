//! Stream menu: name, kind, order and steam of one stream.

use leptos::prelude::*;

use super::add_stream::KINDS;
use crate::app::browser::announce::announce;
use crate::app::part::{Button, NumberBox, Picture, TextBox};
use crate::app::state::State;
use crate::engine::formula::StreamKind;
use crate::sheet::Sheet;
use crate::words::{Trouble, name, read, say, write};

/// What can be done with a stream.
#[component]
pub fn StreamMenu(
    /// Which one.
    stream: usize,
) -> impl IntoView {
    let state = State::here();
    let words = Signal::derive(move || {
        state.with(|sheet| {
            sheet
                .formula
                .streams
                .get(stream)
                .map(|own| own.name.clone())
                .unwrap_or_default()
        })
    });
    let typed = move |typed: String| {
        state.type_in("stream-name", |sheet| {
            if let Some(own) = sheet.formula.streams.get_mut(stream) {
                own.name = typed;
            }
        });
    };
    view! {
        <TextBox id="stream-name" label=say!("Name") words typed most=Sheet::STREAM_NAME_LENGTH />
        <Kind stream />
        <Steam stream />
        <Arrange stream name=words />
    }
}

/// Earlier, or away.
#[component]
fn Arrange(
    /// Which stream.
    stream: usize,
    /// As the user calls it.
    name: Signal<String>,
) -> impl IntoView {
    let state = State::here();
    let earlier = move |()| {
        state.edit(|sheet| {
            sheet.stream_earlier(stream);
        });
        state.close();
    };
    let remove = move |()| {
        let gone = name.get_untracked();
        state.edit(|sheet| {
            sheet.remove_stream(stream);
        });
        state.close();
        announce(&say!("{gone} removed. Undo brings it back.", gone));
    };
    view! {
        <div class="menu">
            <Button says=say!("Earlier in the order of work") tapped=earlier idle=Signal::derive(move || stream == 0) />
            <Button says=say!("Remove with all that is in it") class="risky" picture=Picture::Remove tapped=remove />
        </div>
    }
}

/// What becomes of it.
#[component]
fn Kind(
    /// Which stream.
    stream: usize,
) -> impl IntoView {
    let state = State::here();
    let holds = move || state.with(|sheet| sheet.formula.streams.get(stream).map(|own| own.kind));
    let chosen = move |kind: Option<StreamKind>| {
        state.edit(|sheet| {
            if let (Some(own), Some(kind)) = (sheet.formula.streams.get_mut(stream), kind) {
                own.kind = kind;
            }
        });
    };
    let options = StreamKind::ALL
        .into_iter()
        .map(|kind| {
            view! {
                <option value=name::stream_kind(kind) prop:selected=move || holds() == Some(kind)>{name::stream_kind(kind)}</option>
            }
        })
        .collect_view();
    view! {
        <div class="text-box">
            <label for="stream-kind">{say!("What it is")}</label>
            <select id="stream-kind" on:change:target=move |event| chosen(KINDS.called(&event.target().value()))>
                {options}
            </select>
        </div>
    }
}

/// The steam that was lost, found by weighing.
#[component]
fn Steam(
    /// Which stream.
    stream: usize,
) -> impl IntoView {
    let state = State::here();
    let figure = Signal::derive(move || {
        let manner = state.manner.get();
        state.with(|sheet| {
            let own = sheet.formula.streams.get(stream);
            own.map(|own| write::box_mass(own.steam, manner))
                .unwrap_or_default()
        })
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let steam = read::mass(&text, manner).map_err(|error| error.sentence(manner))?;
        state.type_in("steam", |sheet| {
            if let Some(own) = sheet.formula.streams.get_mut(stream) {
                own.steam = steam;
            }
        });
        Ok(())
    };
    let unit = Signal::derive(move || state.manner.get().units.mass.symbol());
    let is_paste = move || {
        state.with(|sheet| {
            sheet
                .formula
                .streams
                .get(stream)
                .is_some_and(|own| own.kind == StreamKind::Paste)
        })
    };
    view! {
        <Show when=is_paste>
            <NumberBox id=format!("steam-{stream}") label=say!("Lost as steam, by weighing") unit figure take=Callback::new(take) />
        </Show>
    }
}
