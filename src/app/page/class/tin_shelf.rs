//! The user's own tins: saved, taken, and the dough carried over to another.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::page::BatchAnswers;
use crate::app::part::{Button, PickOne};
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::engine::batch::BatchTarget;
use crate::engine::tin::{Tin, Tins, convert};
use crate::sheet::{SavedTin, TinUse};
use crate::text::{Trouble, class::tin_measures, name, tr};

/// The user's own tins.
#[component]
pub fn TinShelf() -> impl IntoView {
    let state = use_app_state();
    let desk = WorkspaceStore::here();
    let here = memo(move || state.with(|sheet| sheet.batch.tin.map(|used| used.tins.tin)));
    let is_saved = memo(move || {
        let tin = here.get();
        desk.tins
            .with(|tins| tins.iter().any(|saved| Some(saved.tin) == tin))
    });
    let save = move |()| {
        if let Some(tin) = here.get_untracked() {
            let mut tins = desk.tins.get_untracked();
            tins.push(SavedTin {
                name: name::tin_kind(tin.kind()).to_owned(),
                tin,
            });
            desk.set_tins(tins);
            announce(tr!("This tin is now among your tins."));
        }
    };
    let forget = move |()| {
        let mut tins = desk.tins.get_untracked();
        tins.retain(|saved| Some(saved.tin) != here.get_untracked());
        desk.set_tins(tins);
        announce(tr!("This tin is no longer among your tins."));
    };
    let listed = memo(move || {
        let options = state.options.get();
        let mut all: Vec<(Option<usize>, String)> =
            vec![(None, tr!("choose one of your tins").to_owned())];
        desk.tins.with(|tins| {
            for (at, saved) in tins.iter().enumerate() {
                all.push((
                    Some(at),
                    format!("{}: {}", saved.name, tin_measures(&saved.tin, options)),
                ));
            }
        });
        all
    });
    let some = memo(move || desk.tins.with(|tins| !tins.is_empty()));
    let is_here = memo(move || here.get().is_some());
    view! {
        <div class="buttons">
            <Show when=move || is_here.get() && !is_saved.get()>
                <Button says=tr!("Save this tin among mine") tapped=save />
            </Show>
            <Show when=move || is_saved.get()>
                <Button says=tr!("Take it from my tins") tapped=forget />
            </Show>
        </div>
        <Show when=move || some.get()>
            <div class="boxes">
                <PickOne id="tin-saved" label=tr!("Bake it in another tin, this dough") answers=listed holds=Signal::stored(None) chosen=Callback::new(move |at| take(state, desk, at, false)) />
                <PickOne id="tin-carry" label=tr!("Carry it over to another tin, the dough growing with it") answers=listed holds=Signal::stored(None) chosen=Callback::new(move |at| take(state, desk, at, true)) />
            </div>
        </Show>
    }
}

/// Takes one of the user's tins; with `carry` the dough grows from the old tin to the new.
fn take(state: AppState, desk: WorkspaceStore, at: Option<usize>, carry: bool) {
    let found = desk
        .tins
        .with_untracked(|tins| at.and_then(|at| tins.get(at).map(|saved| saved.tin)));
    let Some(tin) = found else { return };
    let before = state.sheet().batch.tin;
    let dough = match before {
        Some(before) if carry => match carried(before, tin) {
            Ok(dough) => Some(dough),
            Err(says) => {
                announce(&says);
                return;
            }
        },
        _ => None,
    };
    state.edit(|sheet| {
        let count = before.map(|before| before.tins.count);
        let mut used = before.unwrap_or_else(|| TinUse::of(tin));
        used.tins = Tins {
            tin,
            count: count.unwrap_or(used.tins.count),
        };
        sheet.batch.tin = Some(used);
        if let Some(dough) = dough {
            sheet.batch.wanted = BatchTarget::Dough(dough);
        }
    });
    announce(tr!(
        "The formula is now baked in this tin. Undo brings the old one back."
    ));
}

/// The dough that fills the new tins as the old ones were filled.
fn carried(before: TinUse, tin: Tin) -> Result<crate::engine::quantity::Mass, String> {
    let state = use_app_state();
    let options = state.options.get_untracked();
    let to = Tins {
        tin,
        count: before.tins.count,
    };
    let scaled = BatchAnswers::here().scaled.get_untracked();
    let needed = scaled.map_err(|error| error.sentence(options))?.needed;
    let carried = convert(before.tins, to, needed).map_err(|error| error.sentence(options))?;
    Ok(carried.now)
}
