//! How far to trust what heat says.

use crate::engine::quantity::TemperatureChange;
use crate::words::{manner::Manner, message, say, write};

fn within(kelvin: f64, manner: Manner) -> String {
    TemperatureChange::from_kelvin(kelvin).map_or_else(
        |_| String::new(),
        |change| write::degrees_off(change, manner),
    )
}

/// The dough's temperature.
#[must_use]
pub fn trust_dough(manner: Manner) -> String {
    say!(
        "Good to about {}, until a thermometer has told how much your mixer warms a dough.",
        within(2.0, manner)
    )
}

/// The paste's temperature and its starch.
#[must_use]
pub fn trust_paste(manner: Manner) -> String {
    say!(
        "Good to about {}: how fast you stir and how much of the bowl warms along differ.",
        within(3.0, manner)
    )
}

/// A cooling.
pub const TRUST_COOLING: &str = message!(
    "Worked out for an even body in still air, with nothing drying off: a thermometer in the \
     middle has the last word."
);
