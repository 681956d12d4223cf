//! A number that a plan goes by, and can be typed.

use leptos::prelude::*;

use super::answers::Day;
use crate::app::part::NumberBox;
use crate::app::state::memo;
use crate::sheet::day::DayWishes;
use crate::words::{Manner, Trouble, language::text, read::ReadError};

/// The unit of a number.
#[derive(Clone, Copy)]
pub enum Unit {
    /// The unit of temperatures on this device.
    Degrees,
    /// Any other, as printed.
    Other(&'static str),
}

/// A number that a plan goes by: where it stands, how it is written and read.
#[derive(Clone, Copy)]
pub struct Field {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for.
    pub label: &'static str,
    /// Its unit.
    pub unit: Unit,
    /// The number, written for a box.
    pub look: fn(&DayWishes, Manner) -> String,
    /// Reads a text into the wishes.
    pub set: fn(&mut DayWishes, &str, Manner) -> Result<(), ReadError>,
}

/// The box of a number that a plan goes by.
#[component]
pub fn DayBox(
    /// Which number.
    field: Field,
) -> impl IntoView {
    let day = Day::here();
    let figure = memo(move || {
        let manner = day.state.manner.get();
        day.wishes.with(|wishes| (field.look)(wishes, manner))
    });
    let take = move |text: String| {
        let manner = day.state.manner.get_untracked();
        let mut wishes = day.wishes.get_untracked();
        (field.set)(&mut wishes, &text, manner).map_err(|error| error.sentence(manner))?;
        wishes.in_fridge().map_err(|error| error.sentence(manner))?;
        day.wish(|kept| *kept = wishes);
        Ok(())
    };
    let unit = Signal::derive(move || match field.unit {
        Unit::Degrees => day.state.manner.get().units.temperature.symbol(),
        Unit::Other(unit) => unit,
    });
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}
