//! How many: the pieces that are made, or the visitor's own tin, in one row.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::page::BatchContext;
use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::results::batch::target;
use crate::text::{ErrorText, format, read, tr};

/// The pieces in a box, and the tin behind a tap.
#[component]
pub fn HowMany(
    /// Whether the visitor looks at the own tin, or has.
    tin: RwSignal<bool>,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let count = context.read_scaled(|scaled| scaled.pieces.count.get());
        count
            .map(|count| format::box_count(count, options))
            .unwrap_or_default()
    });
    let each = memo(move || {
        let options = state.options.get();
        context.read_scaled(|scaled| format::mass(scaled.pieces.each, options))
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let count = read::count(&text, options).map_err(|error| error.sentence(options))?;
        let mut sheet = state.sheet();
        if let Some(wanted) = target::of_pieces(&sheet, count) {
            sheet.batch.wanted = wanted;
            state.put(sheet, Some("visit-pieces"));
        }
        Ok(())
    };
    let of = move || each.get().map(|each| tr!("of {each}", each = each));
    let toggled = move |_| tin.set(true);
    view! {
        <section class="card how-many" aria-label=tr!("How much?")>
            <div class="row">
                <NumberBox id="visit-pieces" label=tr!("Pieces") unit="" figure store=Callback::new(store) />
                <span class="follows">{of}</span>
            </div>
            <details class="fold within" on:toggle=toggled>
                <summary>
                    <span class="title">{tr!("or my tin")}</span>
                </summary>
                <Show when=move || tin.get()>
                    {lazy::own_tin()}
                </Show>
            </details>
        </section>
    }
}
