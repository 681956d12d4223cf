//! The numbers that can be asked of heat.

use crate::app::part::{Field, degrees, minutes};
use crate::engine::quantity::Minutes;
use crate::sheet::HeatSettings;
use crate::text::{FormatOptions, format, read, tr_noop, unit::ThicknessUnit};

fn thickness(options: FormatOptions) -> &'static str {
    ThicknessUnit::of(options.units).symbol()
}

/// The wanted temperature of the dough off the mixer.
pub const WANTED: Field<HeatSettings> = Field {
    id: "heat-wanted",
    label: tr_noop!("Target dough temperature"),
    unit: degrees,
    get: |settings, _, options| format::box_temperature(settings.dough, options),
    set: |settings, text, options| {
        read::temperature(text, options).map(|read| settings.dough = read)
    },
};

/// The mixing time of the dough.
pub const MIXING: Field<HeatSettings> = Field {
    id: "heat-mixing",
    label: tr_noop!("Mixing"),
    unit: minutes,
    get: |settings, kitchen, options| {
        format::box_minutes(settings.mixing.unwrap_or(kitchen.mixer.minutes), options)
    },
    set: |settings, text, options| {
        read::optional(text, options, read::minutes).map(|read| settings.mixing = read)
    },
};

/// The time for which pastes and preferments warm in the room.
pub const STANDING: Field<HeatSettings> = Field {
    id: "heat-standing",
    label: tr_noop!("Time out of the fridge"),
    unit: minutes,
    get: |settings, _, options| format::box_minutes(settings.standing, options),
    set: |settings, text, options| {
        read::minutes(text, options).map(|read| settings.standing = read)
    },
};

/// The temperature of the mixing bowl.
pub const MIXING_BOWL: Field<HeatSettings> = Field {
    id: "heat-mixing-bowl",
    label: tr_noop!("Mixing bowl at"),
    unit: degrees,
    get: |settings, kitchen, options| {
        format::box_temperature(settings.mixing_bowl.unwrap_or(kitchen.room), options)
    },
    set: |settings, text, options| {
        read::optional(text, options, read::temperature).map(|read| settings.mixing_bowl = read)
    },
};

/// The temperature of the paste's bowl.
pub const PASTE_BOWL: Field<HeatSettings> = Field {
    id: "heat-paste-bowl",
    label: tr_noop!("Bowl at"),
    unit: degrees,
    get: |settings, kitchen, options| {
        format::box_temperature(settings.paste.bowl.unwrap_or(kitchen.room), options)
    },
    set: |settings, text, options| {
        read::optional(text, options, read::temperature).map(|read| settings.paste.bowl = read)
    },
};

/// The cooling of the liquid before it is poured.
pub const DROP: Field<HeatSettings> = Field {
    id: "heat-drop",
    label: tr_noop!("Lost from kettle to bowl"),
    unit: degrees,
    get: |settings, _, options| format::box_degrees(settings.paste.drop, options),
    set: |settings, text, options| {
        read::degrees_lost(text, options).map(|read| settings.paste.drop = read)
    },
};

/// How wide the vessel is that it cools in; empty leaves it to the amount.
pub const ACROSS: Field<HeatSettings> = Field {
    id: "heat-across",
    label: tr_noop!("Width; empty: to suit the amount"),
    unit: thickness,
    get: |settings, _, options| {
        let across = settings.cooling.across;
        across.map_or_else(String::new, |across| format::box_thickness(across, options))
    },
    set: |settings, text, options| {
        read::optional(text, options, read::thickness).map(|read| settings.cooling.set_across(read))
    },
};

/// Its time on the bench.
pub const BENCH: Field<HeatSettings> = Field {
    id: "heat-bench",
    label: tr_noop!("On the bench"),
    unit: minutes,
    get: |settings, _, options| {
        let times = settings.cooling.own_times();
        format::box_minutes(times.map_or(Minutes::ZERO, |(bench, _)| bench), options)
    },
    set: |settings, text, options| {
        read::minutes(text, options).map(|read| settings.cooling.set_bench(read))
    },
};

/// Its time in ice water.
pub const ICE: Field<HeatSettings> = Field {
    id: "heat-ice",
    label: tr_noop!("In ice water"),
    unit: minutes,
    get: |settings, _, options| {
        let times = settings.cooling.own_times();
        format::box_minutes(times.map_or(Minutes::ZERO, |(_, ice)| ice), options)
    },
    set: |settings, text, options| {
        read::minutes(text, options).map(|read| settings.cooling.set_ice(read))
    },
};
