//! The user's own tins: saved, chosen, and the dough carried over to another.

use leptos::prelude::*;

use crate::app::browser::live_region::announce;
use crate::app::part::{Button, Figure, PickOne, Shown};
use crate::app::state::{AppState, WorkspaceStore, memo, use_app_state};
use crate::engine::tin::{Converted, Tin};
use crate::results::batch::{scale, tins};
use crate::sheet::SavedTin;
use crate::text::{ErrorText, format, name, tins::measures, tr};

/// The user's own tins.
#[component]
pub fn SavedTins() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let current = memo(move || state.with(|sheet| sheet.batch.tin.map(|used| used.tins.tin)));
    let is_saved = memo(move || {
        let tin = current.get();
        tin.is_some_and(|tin| {
            workspace
                .tins
                .with(|saved| tins::is_saved(&tin, &saved.tins))
        })
    });
    let save = move |()| {
        if let Some(tin) = current.get_untracked() {
            workspace.tins.change(|all| {
                all.tins.push(SavedTin {
                    name: name::tin_kind(tin.kind()).to_owned(),
                    tin,
                });
            });
            announce(tr!("Saved to your tins."));
        }
    };
    let forget = move |()| {
        workspace.tins.change(|all| {
            all.tins
                .retain(|saved| Some(saved.tin) != current.get_untracked());
        });
        announce(tr!("Removed from your tins."));
    };
    let listed = memo(move || {
        let options = state.options.get();
        let mut all: Vec<(Option<usize>, String)> =
            vec![(None, tr!("choose one of your tins").to_owned())];
        workspace.tins.with(|saved| {
            for (at, saved) in saved.tins.iter().enumerate() {
                all.push((
                    Some(at),
                    format!("{}: {}", saved.name, measures(&saved.tin, options)),
                ));
            }
        });
        all
    });
    let some = memo(move || workspace.tins.with(|saved| !saved.tins.is_empty()));
    let carried = RwSignal::new(None::<Converted>);
    let carry = move |at| carried.set(take(state, workspace, at, true));
    let is_carried = memo(move || {
        let still = |carried| state.with(|sheet| tins::is_carried(&sheet.batch, &carried));
        carried.get().is_some_and(still)
    });
    let dough = memo(move || {
        let options = state.options.get();
        let shown = |carried: Converted| Shown::plain(format::mass(carried.now, options));
        carried.get().map(shown).unwrap_or_default()
    });
    let working = move |()| {
        let lines = carried.with_untracked(|carried| carried.as_ref().map(Converted::working));
        lines.unwrap_or_default()
    };
    let has_tin = memo(move || current.get().is_some());
    view! {
        <div class="buttons">
            <Show when=move || has_tin.get() && !is_saved.get()>
                <Button label=tr!("Save tin") on_tap=save />
            </Show>
            <Show when=move || is_saved.get()>
                <Button label=tr!("Remove from my tins") on_tap=forget />
            </Show>
        </div>
        <Show when=move || some.get()>
            <div class="boxes">
                <PickOne id="tin-saved" label=tr!("Bake this dough in another tin") choices=listed selected=Signal::stored(None) on_select=Callback::new(move |at| carried.set(take(state, workspace, at, false))) />
                <PickOne id="tin-carry" label=tr!("Scale the dough to another tin") choices=listed selected=Signal::stored(None) on_select=Callback::new(carry) />
            </div>
            <Show when=move || is_carried.get()>
                <div class="figures">
                    <Figure label=tr!("Dough for this tin") shown=dough working=Callback::new(working) />
                </div>
            </Show>
        </Show>
    }
}

/// Takes one of the user's tins; with `carry` the dough grows from the old tin to the new. Returns
/// what was carried over.
fn take(
    state: AppState,
    workspace: WorkspaceStore,
    at: Option<usize>,
    carry: bool,
) -> Option<Converted> {
    let found = workspace
        .tins
        .with_untracked(|all| at.and_then(|at| all.tins.get(at).map(|saved| saved.tin)));
    let tin = found?;
    let carried = if carry {
        match carried_over(state, tin) {
            Ok(carried) => carried,
            Err(says) => {
                announce(&says);
                return None;
            }
        }
    } else {
        None
    };
    let dough = carried.map(|carried| carried.now);
    state.edit(|sheet| sheet.batch = tins::in_tin(&sheet.batch, tin, dough));
    announce(tr!(
        "The formula is now baked in this tin. Undo brings the old one back."
    ));
    carried
}

/// The dough that fills the new tins as the old ones were filled; none where there were none.
fn carried_over(state: AppState, tin: Tin) -> Result<Option<Converted>, String> {
    let (sheet, options) = (state.sheet(), state.options.get_untracked());
    if sheet.batch.tin.is_none() {
        return Ok(None);
    }
    let scaled = scale(&sheet).map_err(|error| error.sentence(options))?;
    tins::carried_over(&sheet, &scaled, tin).map_err(|error| error.sentence(options))
}
