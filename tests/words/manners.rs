//! The manners the tests speak in.

use proptest::prelude::ProptestConfig;
use softcrumb::words::{Manner, MassUnit, NumberStyle, TemperatureUnit, Units};

/// Points, commas between thousands, grams and Celsius.
pub(crate) fn british() -> Manner {
    Manner::default()
}

/// Commas, points between thousands.
pub(crate) fn german() -> Manner {
    Manner {
        numbers: NumberStyle {
            decimal: ',',
            group: Some('.'),
        },
        ..british()
    }
}

/// Ounces and Fahrenheit.
pub(crate) fn american() -> Manner {
    Manner {
        units: Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
        ..british()
    }
}

/// So many generated cases, with no file left behind.
pub(crate) fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}
