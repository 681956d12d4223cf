//! Part menu: name, kind, order and steam of one part.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::part::{Button, NumberBox, PickOne, Picture, TextBox};
use crate::app::state::use_app_state;
use crate::engine::formula::PartKind;
use crate::sheet::Sheet;
use crate::text::{ErrorText, format, name, read, tr};

/// What can be done with a part.
#[component]
pub fn PartMenu(
    /// Which one.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let words = Signal::derive(move || {
        state.with(|sheet| {
            sheet
                .formula
                .parts
                .get(part)
                .map(|own| own.name.clone())
                .unwrap_or_default()
        })
    });
    let typed = move |typed: String| {
        state.type_in(&format!("part-name-{part}"), |sheet| {
            if let Some(own) = sheet.formula.parts.get_mut(part) {
                own.name = typed;
            }
        });
    };
    view! {
        <TextBox id="part-name" label=tr!("Name") text=words on_input=typed max_length=Sheet::PART_NAME_LENGTH />
        <Kind part />
        <Steam part />
        <Arrange part name=words />
    }
}

/// Moves the part up, or removes it.
#[component]
fn Arrange(
    /// Which part.
    part: usize,
    /// Its name.
    name: Signal<String>,
) -> impl IntoView {
    let state = use_app_state();
    let earlier = move |()| {
        state.edit(|sheet| {
            sheet.part_earlier(part);
        });
        state.close();
    };
    let remove = move |()| {
        let gone = name.get_untracked();
        state.edit(|sheet| {
            sheet.remove_part(part);
        });
        state.close();
        announce(&tr!("{gone} removed. Undo brings it back.", gone = gone));
    };
    view! {
        <div class="menu">
            <Button label=tr!("Move up") on_tap=earlier disabled=Signal::derive(move || part == 0) />
            <Button label=tr!("Remove the part with everything in it") class="danger" picture=Picture::Remove on_tap=remove />
        </div>
    }
}

/// Changes the kind of the part.
#[component]
fn Kind(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let selected = Signal::derive(move || {
        state.with(|sheet| sheet.formula.parts.get(part).map(|own| own.kind))
    });
    let chosen = move |kind: Option<PartKind>| {
        state.edit(|sheet| {
            if let (Some(own), Some(kind)) = (sheet.formula.parts.get_mut(part), kind) {
                own.kind = kind;
            }
        });
    };
    let kinds = PartKind::ALL
        .map(|kind| (Some(kind), name::part_kind(kind).to_owned()))
        .to_vec();
    view! { <PickOne id="part-kind" label=tr!("Kind") choices=Signal::stored(kinds) selected on_select=chosen /> }
}

/// The steam that was lost, found by weighing.
#[component]
fn Steam(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let figure = Signal::derive(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let own = sheet.formula.parts.get(part);
            own.map(|own| format::box_mass(own.steam, options))
                .unwrap_or_default()
        })
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let steam = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        state.type_in(&format!("steam-{part}"), |sheet| {
            if let Some(own) = sheet.formula.parts.get_mut(part) {
                own.steam = steam;
            }
        });
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    let is_paste = move || {
        state.with(|sheet| {
            sheet
                .formula
                .parts
                .get(part)
                .is_some_and(|own| own.kind == PartKind::Paste)
        })
    };
    view! {
        <Show when=is_paste>
            <NumberBox id=format!("steam-{part}") label=tr!("Lost as steam, weighed") unit figure store=Callback::new(store) />
        </Show>
    }
}
