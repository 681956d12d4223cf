//! Boiling points by altitude and by pressure.

use softcrumb::engine::heat::{boiling_at, boiling_under};
use softcrumb::engine::quantity::{Altitude, Pressure};

use crate::printed::{agrees, agrees_within, number};

fn at(metres: &str) -> f64 {
    let altitude = Altitude::from_metres(number(metres)).unwrap();
    boiling_at(altitude).unwrap().temperature.celsius()
}

fn under(hectopascals: &str) -> f64 {
    let pressure = Pressure::from_hectopascals(number(hectopascals)).unwrap();
    boiling_under(pressure).unwrap().temperature.celsius()
}

/// Source: US Standard Atmosphere 1976 (below 11 km the same as ICAO's) for the pressure, IAPWS-95
/// for where water boils under it, computed with the Python library iapws 1.5.5. 0.02 °C
/// is the aim; a tenth of it is held.
#[test]
pub(crate) fn boiling_points_from_400_m_below_the_sea_to_5000_m_are_those_of_iapws() {
    let rows = include_str!("data/boiling_by_altitude.csv");
    let mut held = 0;
    for row in rows.lines().skip(1) {
        let [metres, pascals, celsius] = row.split(',').collect::<Vec<_>>()[..] else {
            panic!("{row}");
        };
        agrees_within(at(metres), celsius, 0.002);
        let boiling = boiling_at(Altitude::from_metres(number(metres)).unwrap()).unwrap();
        agrees_within(boiling.pressure.hectopascals() * 100.0, pascals, 1.0);
        held += 1;
    }
    assert_eq!(held, 28);
}

/// Source: ISO 2533:1975, pressures at geopotential heights (from memory), here at the geometric
/// altitudes that belong to them: 6 356 766·h / (6 356 766 − h) m.
#[test]
pub(crate) fn pressures_of_the_standard_atmosphere_are_those_of_the_standard() {
    for (height, hectopascals) in [
        (1000.0, "898.746"),
        (2000.0, "794.952"),
        (3000.0, "701.085"),
        (4000.0, "616.402"),
    ] {
        let geometric = 6_356_766.0 * height / (6_356_766.0 - height);
        let boiling = boiling_at(Altitude::from_metres(geometric).unwrap()).unwrap();
        agrees(boiling.pressure.hectopascals(), hectopascals);
    }
}

/// Source: IAPWS, *Industrial Formulation 1997*, table 36: 1000 hPa give 372.755919 K.
#[test]
pub(crate) fn a_thousand_hectopascals_boil_water_as_the_formulations_own_check_value_says() {
    agrees(under("1000") + 273.15, "372.755919");
}

/// Source: IAPWS-95: 99.9743 °C at one atmosphere (ITS-90), not 100.
#[test]
fn at_one_atmosphere_water_boils_a_little_below_100() {
    agrees(under("1013.25"), "99.974");
    agrees(at("0"), "99.974");
}

#[test]
fn the_higher_the_kitchen_the_cooler_its_boiling_water() {
    let mut before = f64::INFINITY;
    for step in 0..=650 {
        let now = at(&format!("{}", -500 + 10 * step));
        assert!(now < before);
        before = now;
    }
}
