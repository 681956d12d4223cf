//! How far to trust what heat says.

use crate::engine::quantity::TemperatureChange;
use crate::text::{format, format_options::FormatOptions, tr, tr_noop};

fn within(kelvin: f64, options: FormatOptions) -> String {
    TemperatureChange::from_kelvin(kelvin).map_or_else(
        |_| String::new(),
        |change| format::degrees_off(change, options),
    )
}

/// The dough's temperature.
#[must_use]
pub fn trust_dough(options: FormatOptions) -> String {
    tr!(
        "Good to about {value}, until a thermometer has told how much your mixer warms a dough.",
        value = within(2.0, options)
    )
}

/// The paste's temperature and its starch.
#[must_use]
pub fn trust_paste(options: FormatOptions) -> String {
    tr!(
        "Good to about {value}: how fast you stir and how much of the bowl warms along differ.",
        value = within(3.0, options)
    )
}

/// A cooling.
pub const TRUST_COOLING: &str = tr_noop!(
    "The verdict goes by the slow end: covered on the bench, still air in the fridge, and a fridge \
     1 K warmer than set. A thermometer in the middle has the last word."
);
