//! Density: how much room each part of a food takes.

/// Grams in a cubic centimetre of each part, at one temperature.
///
/// Source: Choi and Okos, in *Food Engineering and Process Applications* vol. 1 (1986) 93–101;
/// alcohol: 0.789 at 20 °C (from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Densities {
    pub(super) water: f64,
    pub(super) protein: f64,
    pub(super) fat: f64,
    pub(super) carbohydrate: f64,
    pub(super) fibre: f64,
    pub(super) ash: f64,
    pub(super) alcohol: f64,
}

impl Densities {
    /// At `t` °C, which is held to −40 to 150 °C, the range of the source.
    pub(super) fn at(t: f64) -> Self {
        let t = t.clamp(-40.0, 150.0);
        Self {
            water: (997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t) / 1000.0,
            protein: (1329.9 - 0.518_40 * t) / 1000.0,
            fat: (925.59 - 0.417_57 * t) / 1000.0,
            carbohydrate: (1599.1 - 0.310_46 * t) / 1000.0,
            fibre: (1311.5 - 0.365_89 * t) / 1000.0,
            ash: (2423.8 - 0.280_63 * t) / 1000.0,
            alcohol: 0.789,
        }
    }
}
