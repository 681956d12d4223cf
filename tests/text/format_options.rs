//! Format options for the tests.

use proptest::prelude::ProptestConfig;
use softcrumb::text::{FormatOptions, MassUnit, NumberStyle, TemperatureUnit, Units};

/// Points, commas between thousands, grams and Celsius.
pub(crate) fn british() -> FormatOptions {
    FormatOptions::default()
}

/// Commas, points between thousands.
pub(crate) fn german() -> FormatOptions {
    FormatOptions {
        numbers: NumberStyle {
            decimal: ',',
            group: Some('.'),
        },
        ..british()
    }
}

/// Ounces and Fahrenheit.
pub(crate) fn american() -> FormatOptions {
    FormatOptions {
        units: Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
        ..british()
    }
}

/// Each of these options.
pub(crate) fn all() -> [FormatOptions; 3] {
    [british(), german(), american()]
}

/// A number of generated cases, without a file of failures.
pub(crate) fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}
