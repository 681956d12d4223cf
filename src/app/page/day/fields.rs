//! The numbers that a plan goes by.

use std::num::NonZeroU16;

use super::field::DayField as Field;
use crate::app::part::{degrees, minutes};
use crate::engine::quantity::Temperature;
use crate::text::{FormatOptions, tr_noop, read, read::ReadError, format};

/// What a formula says of its rises.
pub const RISES: [Field; 7] = [
    Field {
        id: "bulk-time",
        label: tr_noop!("Known bulk rise"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.rises.bulk.time, manner),
        set: |wishes, text, manner| {
            wishes.rises.bulk.time = read::minutes(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "bulk-at",
        label: tr_noop!("Dough at"),
        unit: degrees,
        look: |wishes, _, manner| format::box_temperature(wishes.rises.bulk.at, manner),
        set: |wishes, text, manner| {
            wishes.rises.bulk.at = read::temperature(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "proof-time",
        label: tr_noop!("Known proof"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.rises.proof.time, manner),
        set: |wishes, text, manner| {
            wishes.rises.proof.time = read::minutes(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "proof-at",
        label: tr_noop!("Pieces at"),
        unit: degrees,
        look: |wishes, _, manner| format::box_temperature(wishes.rises.proof.at, manner),
        set: |wishes, text, manner| {
            wishes.rises.proof.at = read::temperature(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "bulk-place",
        label: tr_noop!("Dough rises in a place at"),
        unit: degrees,
        look: |wishes, kitchen, manner| {
            format::box_temperature(wishes.rises.bulk_place.unwrap_or(kitchen.room), manner)
        },
        set: |wishes, text, manner| {
            wishes.rises.bulk_place = or_room(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "proof-place",
        label: tr_noop!("Pieces proof in a place at"),
        unit: degrees,
        look: |wishes, kitchen, manner| {
            format::box_temperature(wishes.rises.proof_place.unwrap_or(kitchen.room), manner)
        },
        set: |wishes, text, manner| {
            wishes.rises.proof_place = or_room(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "bench-rest",
        label: tr_noop!("Bench rest"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.rises.rest, manner),
        set: |wishes, text, manner| {
            wishes.rises.rest = read::minutes(text, manner)?;
            Ok(())
        },
    },
];

/// The room where nothing is typed.
fn or_room(text: &str, manner: FormatOptions) -> Result<Option<Temperature>, ReadError> {
    match read::temperature(text, manner) {
        Ok(read) => Ok(Some(read)),
        Err(ReadError::Empty) => Ok(None),
        Err(error) => Err(error),
    }
}

/// The preferment's night.
pub const NIGHT: [Field; 4] = [
    Field {
        id: "preferment-stands",
        label: tr_noop!("Preferment stands"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.rises.bench, manner),
        set: |wishes, text, manner| {
            wishes.rises.bench = read::minutes(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-wished",
        label: tr_noop!("Fridge, as wished"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.rises.fridge, manner),
        set: |wishes, text, manner| {
            wishes.rises.fridge = read::minutes(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-least",
        label: tr_noop!("Fridge, at least"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.fridge.least, manner),
        set: |wishes, text, manner| {
            wishes.fridge.least = read::minutes(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-most",
        label: tr_noop!("Fridge, at most"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.fridge.most, manner),
        set: |wishes, text, manner| {
            wishes.fridge.most = read::minutes(text, manner)?;
            Ok(())
        },
    },
];

/// How often the oven is filled.
pub const LOADS: Field = Field {
    id: "oven-loads",
    label: tr_noop!("Oven loads"),
    unit: |_| "",
    look: |wishes, _, manner| format::box_count(wishes.loads.count.get(), manner),
    set: |wishes, text, manner| {
        let count = read::count(text, manner)?;
        wishes.loads.count = count.min(NonZeroU16::new(99).unwrap_or(NonZeroU16::MIN));
        Ok(())
    },
};

/// From one load out to the next one in.
pub const BETWEEN: Field = Field {
    id: "oven-between",
    label: tr_noop!("Between two loads"),
    unit: minutes,
    look: |wishes, _, manner| format::box_minutes(wishes.loads.between, manner),
    set: |wishes, text, manner| {
        wishes.loads.between = read::minutes(text, manner)?;
        Ok(())
    },
};
