//! How far to trust what heat says.

use crate::engine::quantity::TemperatureChange;
use crate::text::{format, format_options::FormatOptions, tr};

fn within(kelvin: f64, options: FormatOptions) -> String {
    TemperatureChange::from_kelvin(kelvin).map_or_else(
        |_| String::new(),
        |change| format::degrees_off(change, options),
    )
}

/// The dough's temperature.
#[must_use]
pub fn trust_dough(friction_is_learnt: bool) -> &'static str {
    if friction_is_learnt {
        tr!("The range is what your own bakes with this mixer leave open.")
    } else {
        tr!(
            "The range is wide because printed figures for mixers differ a lot. Note the dough’s \
             temperature when you bake: after a few bakes the range is that of your own mixer."
        )
    }
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
#[must_use]
pub fn trust_cooling(options: FormatOptions) -> String {
    tr!(
        "The verdict goes by the slow end: covered on the bench, still air in the fridge, and a fridge \
         {value} warmer than set. A thermometer in the middle has the last word.",
        value = within(1.0, options)
    )
}
