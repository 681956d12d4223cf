//! The numbers of a kitchen that can be typed.

use leptos::prelude::*;

use crate::app::part::{NumberBox, degrees, minutes};
use crate::app::state::{State, memo};
use crate::engine::kitchen::{BoilsBy, Kitchen};
use crate::text::{
    FormatOptions, Trouble,
    language::text,
    tr_noop,
    read::{self, ReadError},
    unit::HeightUnit,
    format,
};

/// A number of the kitchen: where it stands, how it is written and read.
#[derive(Clone, Copy)]
pub struct KitchenField {
    /// Unique on the page.
    pub id: &'static str,
    /// What is asked for.
    pub label: &'static str,
    /// Its unit.
    pub unit: fn(FormatOptions) -> &'static str,
    /// The number, written for a box.
    pub look: fn(&Kitchen, FormatOptions) -> String,
    /// Reads a text into the kitchen.
    pub set: fn(&mut Kitchen, &str, FormatOptions) -> Result<(), ReadError>,
}

/// The box of a number of the kitchen.
#[component]
pub fn KitchenBox(
    /// Which number.
    field: KitchenField,
) -> impl IntoView {
    let state = State::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        state.kitchen.with(|kitchen| (field.look)(kitchen, manner))
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mut kitchen = state.kitchen.get_untracked();
        (field.set)(&mut kitchen, &text, manner).map_err(|error| error.sentence(manner))?;
        state.type_kitchen(field.id, kitchen);
        Ok(())
    };
    let unit = Signal::derive(move || (field.unit)(state.manner.get()));
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}

const fn kept(
    id: &'static str,
    label: &'static str,
    look: fn(&Kitchen, FormatOptions) -> String,
    set: fn(&mut Kitchen, &str, FormatOptions) -> Result<(), ReadError>,
) -> KitchenField {
    KitchenField {
        id,
        label,
        unit: degrees,
        look,
        set,
    }
}

/// Room, flour, fridge, tap.
pub const TEMPERATURES: [KitchenField; 4] = [
    kept(
        "kitchen-room",
        tr_noop!("Room"),
        |kitchen, manner| format::box_temperature(kitchen.room, manner),
        |kitchen, text, manner| read::temperature(text, manner).map(|read| kitchen.room = read),
    ),
    kept(
        "kitchen-flour",
        tr_noop!("Flour"),
        |kitchen, manner| format::box_temperature(kitchen.flour, manner),
        |kitchen, text, manner| read::temperature(text, manner).map(|read| kitchen.flour = read),
    ),
    kept(
        "kitchen-fridge",
        tr_noop!("Fridge"),
        |kitchen, manner| format::box_temperature(kitchen.fridge, manner),
        |kitchen, text, manner| read::temperature(text, manner).map(|read| kitchen.fridge = read),
    ),
    kept(
        "kitchen-tap",
        tr_noop!("Tap"),
        |kitchen, manner| format::box_temperature(kitchen.tap, manner),
        |kitchen, text, manner| read::temperature(text, manner).map(|read| kitchen.tap = read),
    ),
];

/// Friction and minutes of the mixer.
pub const MIXER: [KitchenField; 2] = [
    KitchenField {
        id: "kitchen-friction",
        label: tr_noop!("Mixing warms dough by"),
        unit: |manner| format::rate_symbol(manner.units.temperature),
        look: |kitchen, manner| format::box_warming_rate(kitchen.mixer.friction, manner),
        set: |kitchen, text, manner| {
            read::warming_rate(text, manner).map(|read| kitchen.mixer.friction = read)
        },
    },
    KitchenField {
        id: "kitchen-mixing",
        label: tr_noop!("Mixing usually takes"),
        unit: minutes,
        look: |kitchen, manner| format::box_minutes(kitchen.mixer.minutes, manner),
        set: |kitchen, text, manner| {
            read::minutes(text, manner).map(|read| kitchen.mixer.minutes = read)
        },
    },
];

/// How high it stands.
pub const ALTITUDE: KitchenField = KitchenField {
    id: "kitchen-altitude",
    label: tr_noop!("Above the sea"),
    unit: |manner| HeightUnit::of(manner.units).symbol(),
    look: |kitchen, manner| match kitchen.boils_by {
        BoilsBy::Altitude(altitude) => format::box_altitude(altitude, manner),
        BoilsBy::Pressure(_) => String::new(),
    },
    set: |kitchen, text, manner| {
        read::altitude(text, manner).map(|read| kitchen.boils_by = BoilsBy::Altitude(read))
    },
};

/// What a barometer shows.
pub const PRESSURE: KitchenField = KitchenField {
    id: "kitchen-pressure",
    label: tr_noop!("Air pressure here today"),
    unit: |_| "hPa",
    look: |kitchen, manner| match kitchen.boils_by {
        BoilsBy::Pressure(pressure) => format::box_pressure(pressure, manner),
        BoilsBy::Altitude(_) => String::new(),
    },
    set: |kitchen, text, manner| {
        read::pressure(text, manner).map(|read| kitchen.boils_by = BoilsBy::Pressure(read))
    },
};
