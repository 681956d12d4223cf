//! Field box: the box of a number that belongs to something larger, which is read and changed as a
//! whole: the batch, what is asked of heat, what a plan goes by.

use leptos::prelude::*;

use super::NumberBox;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::kitchen::Kitchen;
use crate::text::{FormatOptions, Trouble, language::text, read::ReadError};

/// What numbers belong to.
pub trait Held: Sized + 'static {
    /// What it is reached through; found where the box is drawn.
    type Through: Copy + Send + Sync + 'static;

    /// What it is reached through here.
    fn through() -> Self::Through;

    /// Looks at it as it stands, and follows it.
    fn now(through: Self::Through, look: &dyn Fn(&Self) -> String) -> String;

    /// Looks at it as it is kept, while a trial of it is on.
    fn saved(through: Self::Through, look: &dyn Fn(&Self) -> String) -> Option<String>;

    /// Changes it, as typed into the box `from`.
    ///
    /// # Errors
    /// Why it cannot be so, in words; then nothing is changed.
    fn change(
        through: Self::Through,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), String>;
}

/// A number: where it stands, how it is written and read.
#[derive(Debug)]
pub struct Field<T: 'static> {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for.
    pub label: &'static str,
    /// Its unit.
    pub unit: fn(FormatOptions) -> &'static str,
    /// The number, written for a box; what the kitchen has where nothing is wished.
    pub look: fn(&T, &Kitchen, FormatOptions) -> String,
    /// Reads a text into what it belongs to.
    pub set: fn(&mut T, &str, FormatOptions) -> Result<(), ReadError>,
}

impl<T> Clone for Field<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Field<T> {}

/// The unit of weights on this device.
pub fn of_mass(options: FormatOptions) -> &'static str {
    options.units.mass.symbol()
}

/// The unit of temperatures on this device.
pub fn degrees(options: FormatOptions) -> &'static str {
    options.units.temperature.symbol()
}

/// The unit of times.
pub const fn minutes(_manner: FormatOptions) -> &'static str {
    "min"
}

/// The box of a number. What makes the whole impossible is told at the box, and not taken.
#[component]
pub fn FieldBox<T: Held>(
    /// Which number.
    field: Field<T>,
) -> impl IntoView {
    let state = use_app_state();
    let through = T::through();
    let written = move |of: &T| {
        let options = state.options.get();
        state
            .kitchen
            .with(|kitchen| (field.look)(of, kitchen, options))
    };
    let figure = memo(move || T::now(through, &written));
    let changed = memo(move || {
        let saved = T::saved(through, &written);
        saved.is_some_and(|saved| figure.with(|now| *now != saved))
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        T::change(through, field.id, &|held| (field.set)(held, &text, options))
    };
    let unit = Signal::derive(move || (field.unit)(state.options.get()));
    view! { <NumberBox id=field.id label=text(field.label) unit figure changed take=Callback::new(take) /> }
}

/// Why something cannot be, as it is told here.
pub fn told<E: Trouble>(state: AppState) -> impl Fn(E) -> String {
    move |error| error.sentence(state.options.get_untracked())
}
