//! The numbers of a kitchen that can be typed.

use leptos::prelude::*;

use crate::app::part::{NumberBox, degrees, minutes};
use crate::app::state::{memo, use_app_state};
use crate::engine::kitchen::{BoilsBy, Kitchen};
use crate::text::{
    FormatOptions, Trouble, format,
    language::text,
    read::{self, ReadError},
    tr_noop,
    unit::HeightUnit,
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
    let state = use_app_state();
    let figure = memo(move || {
        let options = state.options.get();
        state.kitchen.with(|kitchen| (field.look)(kitchen, options))
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let mut kitchen = state.kitchen.get_untracked();
        (field.set)(&mut kitchen, &text, options).map_err(|error| error.sentence(options))?;
        state.type_kitchen(field.id, kitchen);
        Ok(())
    };
    let unit = Signal::derive(move || (field.unit)(state.options.get()));
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}

const fn saved(
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
    saved(
        "kitchen-room",
        tr_noop!("Room"),
        |kitchen, options| format::box_temperature(kitchen.room, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.room = read),
    ),
    saved(
        "kitchen-flour",
        tr_noop!("Flour"),
        |kitchen, options| format::box_temperature(kitchen.flour, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.flour = read),
    ),
    saved(
        "kitchen-fridge",
        tr_noop!("Fridge"),
        |kitchen, options| format::box_temperature(kitchen.fridge, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.fridge = read),
    ),
    saved(
        "kitchen-tap",
        tr_noop!("Tap"),
        |kitchen, options| format::box_temperature(kitchen.tap, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.tap = read),
    ),
];

/// Friction and minutes of the mixer.
pub const MIXER: [KitchenField; 2] = [
    KitchenField {
        id: "kitchen-friction",
        label: tr_noop!("Mixing warms dough by"),
        unit: |options| format::rate_symbol(options.units.temperature),
        look: |kitchen, options| format::box_warming_rate(kitchen.mixer.friction, options),
        set: |kitchen, text, options| {
            read::warming_rate(text, options).map(|read| kitchen.mixer.friction = read)
        },
    },
    KitchenField {
        id: "kitchen-mixing",
        label: tr_noop!("Mixing usually takes"),
        unit: minutes,
        look: |kitchen, options| format::box_minutes(kitchen.mixer.minutes, options),
        set: |kitchen, text, options| {
            read::minutes(text, options).map(|read| kitchen.mixer.minutes = read)
        },
    },
];

/// How high it stands.
pub const ALTITUDE: KitchenField = KitchenField {
    id: "kitchen-altitude",
    label: tr_noop!("Above the sea"),
    unit: |options| HeightUnit::of(options.units).symbol(),
    look: |kitchen, options| match kitchen.boils_by {
        BoilsBy::Altitude(altitude) => format::box_altitude(altitude, options),
        BoilsBy::Pressure(_) => String::new(),
    },
    set: |kitchen, text, options| {
        read::altitude(text, options).map(|read| kitchen.boils_by = BoilsBy::Altitude(read))
    },
};

/// What a barometer shows.
pub const PRESSURE: KitchenField = KitchenField {
    id: "kitchen-pressure",
    label: tr_noop!("Air pressure here today"),
    unit: |_| "hPa",
    look: |kitchen, options| match kitchen.boils_by {
        BoilsBy::Pressure(pressure) => format::box_pressure(pressure, options),
        BoilsBy::Altitude(_) => String::new(),
    },
    set: |kitchen, text, options| {
        read::pressure(text, options).map(|read| kitchen.boils_by = BoilsBy::Pressure(read))
    },
};
