//! The fields of the plan settings.

use crate::app::part::{Field, degrees, minutes, no_unit};
use crate::engine::plan::Loads;
use crate::sheet::day::DaySettings;
use crate::text::{format, read, tr_noop};

/// What a formula says of its rises.
pub const RISES: [Field<DaySettings>; 7] = [
    Field {
        id: "bulk-time",
        label: tr_noop!("Known bulk rise"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.rises.bulk.time, options),
        set: |settings, text, options| {
            settings.rises.bulk.time = read::minutes(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "bulk-at",
        label: tr_noop!("Dough at"),
        unit: degrees,
        get: |settings, _, options| format::box_temperature(settings.rises.bulk.at, options),
        set: |settings, text, options| {
            settings.rises.bulk.at = read::temperature(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "proof-time",
        label: tr_noop!("Known proof"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.rises.proof.time, options),
        set: |settings, text, options| {
            settings.rises.proof.time = read::minutes(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "proof-at",
        label: tr_noop!("Pieces at"),
        unit: degrees,
        get: |settings, _, options| format::box_temperature(settings.rises.proof.at, options),
        set: |settings, text, options| {
            settings.rises.proof.at = read::temperature(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "bulk-place",
        label: tr_noop!("Dough rises in a place at"),
        unit: degrees,
        get: |settings, kitchen, options| {
            format::box_temperature(settings.rises.bulk_place.unwrap_or(kitchen.room), options)
        },
        set: |settings, text, options| {
            settings.rises.bulk_place = read::optional(text, options, read::temperature)?;
            Ok(())
        },
    },
    Field {
        id: "proof-place",
        label: tr_noop!("Pieces proof in a place at"),
        unit: degrees,
        get: |settings, kitchen, options| {
            format::box_temperature(settings.rises.proof_place.unwrap_or(kitchen.room), options)
        },
        set: |settings, text, options| {
            settings.rises.proof_place = read::optional(text, options, read::temperature)?;
            Ok(())
        },
    },
    Field {
        id: "bench-rest",
        label: tr_noop!("Bench rest"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.rises.rest, options),
        set: |settings, text, options| {
            settings.rises.rest = read::minutes(text, options)?;
            Ok(())
        },
    },
];

/// The preferment's night.
pub const NIGHT: [Field<DaySettings>; 4] = [
    Field {
        id: "preferment-stands",
        label: tr_noop!("Preferment stands"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.rises.bench, options),
        set: |settings, text, options| {
            settings.rises.bench = read::minutes(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-wished",
        label: tr_noop!("Fridge, as wished"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.rises.fridge, options),
        set: |settings, text, options| {
            settings.rises.fridge = read::minutes(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-least",
        label: tr_noop!("Fridge, at least"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.fridge.least, options),
        set: |settings, text, options| {
            settings.fridge.least = read::minutes(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "fridge-most",
        label: tr_noop!("Fridge, at most"),
        unit: minutes,
        get: |settings, _, options| format::box_minutes(settings.fridge.most, options),
        set: |settings, text, options| {
            settings.fridge.most = read::minutes(text, options)?;
            Ok(())
        },
    },
];

/// How often the oven is filled.
pub const LOADS: Field<DaySettings> = Field {
    id: "oven-loads",
    label: tr_noop!("Oven loads"),
    unit: no_unit,
    get: |settings, _, options| format::box_count(settings.loads.count.get(), options),
    set: |settings, text, options| {
        let count = read::count(text, options)?;
        settings.loads.count = count.min(Loads::MOST);
        Ok(())
    },
};

/// From one load out to the next one in.
pub const BETWEEN: Field<DaySettings> = Field {
    id: "oven-between",
    label: tr_noop!("Between two loads"),
    unit: minutes,
    get: |settings, _, options| format::box_minutes(settings.loads.between, options),
    set: |settings, text, options| {
        settings.loads.between = read::minutes(text, options)?;
        Ok(())
    },
};
