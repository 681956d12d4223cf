//! The unit switch against printed conversion factors.

use softcrumb::engine::quantity::{Mass, Temperature};
use softcrumb::text::unit::{GRAMS_IN_OUNCE, GRAMS_IN_POUND, MassUnit, TemperatureUnit};

/// The printed value, and half of its last digit.
fn agrees(got: f64, printed: &str) {
    let wanted: f64 = printed.parse().unwrap();
    let decimals = printed
        .split_once('.')
        .map_or(0, |(_, components)| components.len());
    let half = 0.5 * 0.1_f64.powi(i32::try_from(decimals).unwrap());
    assert!(
        (got - wanted).abs() <= half * (1.0 + 1e-9),
        "{got}, not {printed}"
    );
}

/// Source: NIST Special Publication 811 (2008 edition), appendix B.8: pound (avoirdupois)
/// 4.535 924 E−01 kg; ounce (avoirdupois) 2.834 952 E−02 kg, as quoted at
/// second hand; the exact 453.592 37 g in a pound is that of the agreement of 1959.
#[test]
fn ounces_and_pounds_agree_with_the_printed_factors() {
    agrees(GRAMS_IN_POUND, "453.5924");
    agrees(GRAMS_IN_OUNCE, "28.34952");
    let pound = Mass::from_grams(GRAMS_IN_POUND).unwrap();
    agrees(MassUnit::Ounces.number_of(pound), "16.0000000");
}

/// Source: NIST Special Publication 811 (2008 edition), appendix B.8: t/°C = (t/°F − 32)/1.8;
/// the scales meet at −40; water boils at 212 °F and melts at 32 °F.
#[test]
fn fahrenheit_agrees_with_the_fixed_points() {
    for (celsius, fahrenheit) in [("-40", "-40"), ("0", "32"), ("100", "212"), ("25", "77")] {
        let temperature = Temperature::from_celsius(celsius.parse().unwrap()).unwrap();
        agrees(
            TemperatureUnit::Fahrenheit.number_of(temperature),
            fahrenheit,
        );
        let back = TemperatureUnit::Fahrenheit.temperature(fahrenheit.parse().unwrap());
        agrees(back.unwrap().celsius(), celsius);
    }
}

#[test]
fn a_degree_of_change_is_nine_fifths_of_a_fahrenheit_degree() {
    let at = |celsius| Temperature::from_celsius(celsius).unwrap();
    agrees(
        TemperatureUnit::Fahrenheit.degrees_of(at(30.0) - at(25.0)),
        "9.0",
    );
    agrees(
        TemperatureUnit::Celsius.degrees_of(at(30.0) - at(25.0)),
        "5.0",
    );
}

/// Source: NIST Handbook 44 (2024), appendix C: 1 US quart = 0.946 353 l, 1 fluid ounce = 29.573 53 ml.
#[test]
fn a_bowl_is_told_in_quarts_where_weights_are_in_ounces() {
    use super::format_options::british;
    use softcrumb::engine::quantity::Volume;
    use softcrumb::text::format;
    let mut options = british();
    options.units.mass = MassUnit::Ounces;
    let volume = |millilitres| {
        let volume = Volume::from_cubic_centimetres(millilitres).unwrap();
        format::volume(volume, options)
    };
    assert_eq!(volume(946.353), "1.00\u{a0}qt".replace(".00", ""));
    assert_eq!(
        volume(295.7353),
        "10\u{a0}fl\u{a0}oz".replace("fl\u{a0}oz", "fl oz")
    );
}
