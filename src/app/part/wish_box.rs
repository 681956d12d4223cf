//! A number of what a formula asks of heat that can be typed.

use leptos::prelude::*;

use super::NumberBox;
use crate::app::state::{State, memo};
use crate::engine::kitchen::{HeatWishes, Kitchen};
use crate::words::{Manner, Trouble, language::text, read::ReadError};

/// A number of what is asked of heat: where it stands, how it is written and read.
#[derive(Clone, Copy)]
pub struct Wish {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for.
    pub label: &'static str,
    /// Its unit.
    pub unit: fn(Manner) -> &'static str,
    /// The number, written for a box; what the kitchen has where nothing is wished.
    pub look: fn(&HeatWishes, &Kitchen, Manner) -> String,
    /// Reads a text into what is asked.
    pub set: fn(&mut HeatWishes, &str, Manner) -> Result<(), ReadError>,
}

/// The box of a number of what is asked of heat.
#[component]
pub fn WishBox(
    /// Which number.
    wish: Wish,
) -> impl IntoView {
    let state = State::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        state
            .kitchen
            .with(|kitchen| state.with(|sheet| (wish.look)(&sheet.heat, kitchen, manner)))
    });
    let changed = memo(move || {
        let text = |sheet: &crate::sheet::Sheet| {
            let manner = state.manner.get();
            state
                .kitchen
                .with(|kitchen| (wish.look)(&sheet.heat, kitchen, manner))
        };
        state.is_trial() && state.with(text) != state.with_kept(text)
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mut sheet = state.sheet();
        (wish.set)(&mut sheet.heat, &text, manner).map_err(|error| error.sentence(manner))?;
        state.put(sheet, Some(wish.id));
        Ok(())
    };
    let unit = Signal::derive(move || (wish.unit)(state.manner.get()));
    view! { <NumberBox id=wish.id label=text(wish.label) unit figure changed take=Callback::new(take) /> }
}
