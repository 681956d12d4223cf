//! A number of the batch that can be typed.

use leptos::prelude::*;

use super::answers::scale_sheet;
use crate::app::part::NumberBox;
use crate::app::state::{State, memo};
use crate::sheet::Batch;
use crate::words::{Manner, Trouble, language::text, read::ReadError};

/// The unit of a number.
#[derive(Clone, Copy)]
pub enum Unit {
    /// The unit of weights on this device.
    Mass,
    /// Any other, as printed.
    Other(&'static str),
}

/// A number of the batch: where it stands, how it is written and read.
#[derive(Clone, Copy)]
pub struct Field {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for.
    pub label: &'static str,
    /// Its unit.
    pub unit: Unit,
    /// The number, written for a box.
    pub look: fn(&Batch, Manner) -> String,
    /// Reads a text into the batch.
    pub set: fn(&mut Batch, &str, Manner) -> Result<(), ReadError>,
}

/// The box of a number of the batch. What makes a batch impossible is told at the box, and not
/// taken.
#[component]
pub fn FieldBox(
    /// Which number.
    field: Field,
) -> impl IntoView {
    let state = State::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        state.with(|sheet| (field.look)(&sheet.batch, manner))
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mut sheet = state.sheet();
        (field.set)(&mut sheet.batch, &text, manner).map_err(|error| error.sentence(manner))?;
        scale_sheet(&sheet).map_err(|error| error.sentence(manner))?;
        state.put(sheet, Some(field.id));
        Ok(())
    };
    let unit = Signal::derive(move || match field.unit {
        Unit::Mass => state.manner.get().units.mass.symbol(),
        Unit::Other(unit) => unit,
    });
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}
