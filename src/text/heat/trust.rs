//! How far to trust what heat says.

use crate::engine::quantity::TemperatureChange;
use crate::text::{format_options::FormatOptions, tr_noop, tr, format};

fn within(kelvin: f64, manner: FormatOptions) -> String {
    TemperatureChange::from_kelvin(kelvin).map_or_else(
        |_| String::new(),
        |change| format::degrees_off(change, manner),
    )
}

/// The dough's temperature.
#[must_use]
pub fn trust_dough(manner: FormatOptions) -> String {
    tr!("Good to about {value}, until a thermometer has told how much your mixer warms a dough.",
        value = within(2.0, manner))
}

/// The paste's temperature and its starch.
#[must_use]
pub fn trust_paste(manner: FormatOptions) -> String {
    tr!("Good to about {value}: how fast you stir and how much of the bowl warms along differ.",
        value = within(3.0, manner))
}

/// A cooling.
pub const TRUST_COOLING: &str = tr_noop!("Worked out for an even body in still air, with nothing drying off: a thermometer in the \
     middle has the last word.");
