//! The numbers of melting that can be typed.

use crate::app::part::{Field, degrees};
use crate::results::chocolate::melt_temperatures;
use crate::sheet::HeatSettings;
use crate::text::{format, read, tr_noop, unit::ThicknessUnit};

/// The temperature of the liquid.
pub const LIQUID: Field<HeatSettings> = Field {
    id: "melt-liquid",
    label: tr_noop!("Liquid temperature"),
    unit: degrees,
    get: |settings, kitchen, options| {
        let starts = melt_temperatures(&settings.melt, kitchen);
        let liquid = starts.liquid;
        liquid
            .map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    },
    set: |settings, text, options| {
        read::optional(text, options, read::temperature).map(|read| settings.melt.liquid = read)
    },
};

/// The temperature of the chocolate.
pub const CHOCOLATE: Field<HeatSettings> = Field {
    id: "melt-chocolate",
    label: tr_noop!("Chocolate at"),
    unit: degrees,
    get: |settings, kitchen, options| {
        let starts = melt_temperatures(&settings.melt, kitchen);
        format::box_temperature(starts.chocolate, options)
    },
    set: |settings, text, options| {
        read::optional(text, options, read::temperature).map(|read| settings.melt.chocolate = read)
    },
};

/// The temperature of its bowl.
pub const BOWL: Field<HeatSettings> = Field {
    id: "melt-bowl",
    label: tr_noop!("Bowl at"),
    unit: degrees,
    get: |settings, kitchen, options| {
        let starts = melt_temperatures(&settings.melt, kitchen);
        format::box_temperature(starts.bowl, options)
    },
    set: |settings, text, options| {
        read::optional(text, options, read::temperature).map(|read| settings.melt.bowl = read)
    },
};

/// How large the pieces are across.
pub const PIECES: Field<HeatSettings> = Field {
    id: "melt-pieces",
    label: tr_noop!("Chopped to"),
    unit: |options| ThicknessUnit::of(options.units).symbol(),
    get: |settings, _, options| format::box_thickness(settings.melt.pieces, options),
    set: |settings, text, options| {
        read::thickness(text, options).map(|read| settings.melt.pieces = read)
    },
};
