//! The numbers of a kitchen that can be typed.

use leptos::prelude::*;

use crate::app::part::{Field, FieldData, FieldError, degrees, minutes};
use crate::app::state::{AppState, use_app_state};
use crate::sheet::{BoilsBy, Kitchen};
use crate::text::{
    FormatOptions, format,
    read::{self, ReadError},
    tr_noop,
    unit::HeightUnit,
};

impl FieldData for Kitchen {
    type Source = AppState;
    type Error = ReadError;

    fn source() -> AppState {
        use_app_state()
    }

    fn read(state: AppState, get: &dyn Fn(&Self) -> String) -> String {
        state.kitchen.with(get)
    }

    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        let mut kitchen = state.kitchen.get_untracked();
        set(&mut kitchen)?;
        state.type_kitchen(from, kitchen);
        Ok(())
    }
}

/// A temperature of the kitchen.
const fn temperature(
    id: &'static str,
    label: &'static str,
    get: fn(&Kitchen, &Kitchen, FormatOptions) -> String,
    set: fn(&mut Kitchen, &str, FormatOptions) -> Result<(), ReadError>,
) -> Field<Kitchen> {
    Field {
        id,
        label,
        unit: degrees,
        get,
        set,
    }
}

/// Room, flour, fridge, tap.
pub const TEMPERATURES: [Field<Kitchen>; 4] = [
    temperature(
        "kitchen-room",
        tr_noop!("Room"),
        |kitchen, _, options| format::box_temperature(kitchen.room, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.room = read),
    ),
    temperature(
        "kitchen-flour",
        tr_noop!("Flour"),
        |kitchen, _, options| format::box_temperature(kitchen.flour_at(), options),
        |kitchen, text, options| {
            kitchen.flour = match read::temperature(text, options) {
                Err(ReadError::Empty) => None,
                read => Some(read?),
            };
            Ok(())
        },
    ),
    temperature(
        "kitchen-fridge",
        tr_noop!("Fridge"),
        |kitchen, _, options| format::box_temperature(kitchen.fridge, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.fridge = read),
    ),
    temperature(
        "kitchen-tap",
        tr_noop!("Tap"),
        |kitchen, _, options| format::box_temperature(kitchen.tap, options),
        |kitchen, text, options| read::temperature(text, options).map(|read| kitchen.tap = read),
    ),
];

/// Friction and minutes of the mixer.
pub const MIXER: [Field<Kitchen>; 2] = [
    Field {
        id: "kitchen-friction",
        label: tr_noop!("Friction warms dough by"),
        unit: |options| format::rate_symbol(options.units.temperature),
        get: |kitchen, _, options| format::box_warming_rate(kitchen.mixer.friction, options),
        set: |kitchen, text, options| {
            read::warming_rate(text, options).map(|read| kitchen.mixer.set_friction(read))
        },
    },
    Field {
        id: "kitchen-mixing",
        label: tr_noop!("Mixing usually takes"),
        unit: minutes,
        get: |kitchen, _, options| format::box_minutes(kitchen.mixer.minutes, options),
        set: |kitchen, text, options| {
            read::minutes(text, options).map(|read| kitchen.mixer.minutes = read)
        },
    },
];

/// Its altitude.
pub const ALTITUDE: Field<Kitchen> = Field {
    id: "kitchen-altitude",
    label: tr_noop!("Altitude"),
    unit: |options| HeightUnit::of(options.units).symbol(),
    get: |kitchen, _, options| match kitchen.boils_by {
        BoilsBy::Altitude(altitude) => format::box_altitude(altitude, options),
        BoilsBy::Pressure(_) => String::new(),
    },
    set: |kitchen, text, options| {
        read::altitude(text, options).map(|read| kitchen.boils_by = BoilsBy::Altitude(read))
    },
};

/// What a barometer shows.
pub const PRESSURE: Field<Kitchen> = Field {
    id: "kitchen-pressure",
    label: tr_noop!("Air pressure here today"),
    unit: |_| "hPa",
    get: |kitchen, _, options| match kitchen.boils_by {
        BoilsBy::Pressure(pressure) => format::box_pressure(pressure, options),
        BoilsBy::Altitude(_) => String::new(),
    },
    set: |kitchen, text, options| {
        read::pressure(text, options).map(|read| kitchen.boils_by = BoilsBy::Pressure(read))
    },
};
