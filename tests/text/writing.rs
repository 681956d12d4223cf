//! Formatting quantities; `_` is the no-break space.

use super::format_options::{american, british, german};
use proptest::prelude::*;
use softcrumb::engine::quantity::{Division, Factor, Mass, Share, Temperature, Viscosity};
use softcrumb::text::format;
use softcrumb::text::{FormatOptions, NumberStyle};

fn g(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn c(celsius: f64) -> Temperature {
    Temperature::from_celsius(celsius).unwrap()
}

fn p(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

fn printed(got: &str, wanted: &str) {
    assert_eq!(got.replace('\u{A0}', "_"), wanted);
}

#[test]
fn weights_have_the_digits_they_deserve() {
    for (grams, wanted) in [
        (0.0, "0_g"),
        (0.004, "under 0.01_g"),
        (0.005, "0.01_g"),
        (0.468, "0.47_g"),
        (0.5, "0.5_g"),
        (0.999, "1_g"),
        (3.426, "3.4_g"),
        (7.35, "7.35_g"),
        (9.96, "9.96_g"),
        (9.9604, "10_g"),
        (12.34567, "12.3_g"),
        (12.25, "12.25_g"),
        (120.0, "120_g"),
        (312.37, "312_g"),
        (312.5, "312.5_g"),
        (1234.4, "1234.4_g"),
        (9999.0, "9999_g"),
        (12_345.0, "12.345_kg"),
        (12_500.0, "12.5_kg"),
        (1_000_000.0, "1000_kg"),
    ] {
        printed(&format::mass(g(grams), british()), wanted);
    }
    printed(&format::mass(g(312.5), german()), "312,5_g");
}

#[test]
fn ounces_turn_into_pounds() {
    for (ounces, wanted) in [
        (0.0, "0_oz"),
        (0.0001, "under 0.001_oz"),
        (0.1412, "0.141_oz"),
        (4.237, "4.24_oz"),
        (12.34, "12.3_oz"),
        (15.94, "15.9_oz"),
        (15.96, "1_lb"),
        (19.4, "1_lb 3.4_oz"),
        (32.0, "2_lb"),
    ] {
        printed(
            &format::mass(g(ounces * 28.349_523_125), american()),
            wanted,
        );
    }
}

#[test]
fn a_weight_has_the_digits_of_its_scale() {
    for (grams, division, wanted) in [
        (4.0, 0.1, "4.0_g"),
        (4.0, 0.01, "4.00_g"),
        (4.0, 0.05, "4.00_g"),
        (4.0, 0.5, "4.0_g"),
        (120.0, 1.0, "120_g"),
        (125.0, 5.0, "125_g"),
    ] {
        printed(
            &format::mass_weighed(
                g(grams),
                Division::from_mass(g(division)).unwrap(),
                british(),
            ),
            wanted,
        );
    }
}

#[test]
fn shares_are_printed_in_percent() {
    for (percent, wanted) in [
        (0.0, "0_%"),
        (0.001, "under 0.01_%"),
        (1.853, "1.85_%"),
        (2.0, "2_%"),
        (66.4217, "66.4_%"),
        (100.0, "100_%"),
        (1234.5, "1235_%"),
    ] {
        printed(&format::share(p(percent), british()), wanted);
    }
    printed(&format::of_flour(p(66.4), german()), "66,4_% of flour");
}

#[test]
fn temperatures_are_printed_on_either_scale() {
    for (celsius, here, there) in [
        (24.5, "24.5_°C", "76_°F"),
        (26.0, "26_°C", "79_°F"),
        (-18.0, "−18_°C", "0_°F"),
        (-0.01, "0_°C", "32_°F"),
        (190.4, "190_°C", "375_°F"),
    ] {
        printed(&format::temperature(c(celsius), british()), here);
        printed(&format::temperature(c(celsius), american()), there);
    }
}

#[test]
fn viscosities_have_two_figures() {
    for (pascal_seconds, wanted) in [
        (0.2812, "0.28_Pa·s"),
        (0.0042, "4.2_mPa·s"),
        (3.04, "3_Pa·s"),
        (1234.0, "1200_Pa·s"),
        (1e7, "over 10,000_Pa·s"),
    ] {
        let viscosity = Viscosity::from_pascal_seconds(pascal_seconds).unwrap();
        printed(&format::viscosity(viscosity, british()), wanted);
    }
}

#[test]
fn factors_have_four_figures() {
    for (number, wanted) in [(1.0, "×_1"), (1.25, "×_1.25"), (0.333_333, "×_0.3333")] {
        let factor = Factor::from_number(number).unwrap();
        printed(&format::factor(factor, british()), wanted);
    }
}

#[test]
fn changes_carry_their_sign() {
    printed(&format::mass_change(g(118.0), g(130.0), british()), "+12_g");
    printed(&format::mass_change(g(13.5), g(10.0), british()), "−3.5_g");
    printed(
        &format::mass_change(g(10.0), g(10.001), british()),
        "no change",
    );
    printed(
        &format::points_change(p(65.0), p(67.0), british()),
        "+2_points",
    );
    printed(
        &format::points_change(p(65.0), p(64.0), british()),
        "−1_point",
    );
    printed(
        &format::temperature_change(c(26.0) - c(23.5), british()),
        "+2.5_°C",
    );
    printed(
        &format::temperature_change(c(26.0) - c(23.5), american()),
        "+4.5_°F",
    );
    let relative = |old, new| format::relative_change(g(old), g(new), british());
    printed(&relative(200.0, 210.0).unwrap(), "+5_%");
    assert_eq!(relative(0.0, 210.0), None);
    printed(
        &format::from_to("312\u{A0}g", "330\u{A0}g"),
        "312_g → 330_g",
    );
}

#[test]
fn ranges_name_both_ends_and_the_unit_once() {
    printed(
        &format::range(55.0, 70.0, 0, "min", british()),
        "55 to 70_min",
    );
    printed(&format::range(55.1, 55.2, 0, "min", british()), "55_min");
    printed(
        &format::share_range(p(0.5), p(16.0), british()),
        "0.5 to 16_%",
    );
    printed(&format::mass_range(g(7.0), g(10.0), british()), "7 to 10_g");
    printed(
        &format::mass_range(g(7.0), g(10.0), american()),
        "0.25 to 0.35_oz",
    );
    printed(
        &format::temperature_range(c(24.0), c(26.5), british()),
        "24 to 26.5_°C",
    );
}

#[test]
fn boxes_hold_bare_digits() {
    assert_eq!(format::box_own_mass(g(918.95), british()), "919");
    assert_eq!(format::box_own_mass(g(91.895), british()), "91.9");
    assert_eq!(format::box_mass(g(12_345.678), british()), "12345.68");
    assert_eq!(format::box_mass(g(0.4682), german()), "0,468");
    assert_eq!(format::box_mass(g(113.398_092_5), american()), "4");
    assert_eq!(format::box_share(p(66.4217), british()), "66.42");
    assert_eq!(format::box_temperature(c(-18.0), british()), "-18");
    assert_eq!(format::box_temperature(c(25.0), american()), "77");
    assert_eq!(
        format::box_factor(Factor::from_number(1.25).unwrap(), german()),
        "1,25"
    );
    assert_eq!(format::box_count(9_u16, british()), "9");
}

#[test]
fn halves_go_up_as_typed() {
    let style = NumberStyle::default();
    for (value, places, wanted) in [
        (1.005, 2, "1.01"),
        (2.675, 2, "2.68"),
        (0.5, 0, "1"),
        (1.5, 0, "2"),
        (2.5, 0, "3"),
        (-2.5, 0, "−3"),
        (-0.4, 0, "0"),
        (12_345.0, 0, "12,345"),
        (1_234_567.891, 2, "1,234,567.89"),
        (1234.5, 1, "1234.5"),
    ] {
        assert_eq!(format::figure(value, places, style), wanted);
    }
}

#[test]
fn nan_and_infinity_are_never_printed() {
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX] {
        let text = format::figure(value, 2, NumberStyle::default());
        assert_eq!(text, "not known");
        let text = format::significant(value, 3, NumberStyle::default());
        assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
    }
}

/// Digits, marks, signs and units: all that a figure may be made of.
fn only_figures(text: &str) -> bool {
    !text.is_empty() && !text.contains("NaN") && !text.contains("inf") && !text.contains('e')
}

proptest! {
    #[test]
    fn any_number_is_printed_in_digits(value in any::<f64>(), places in 0_usize..12) {
        let style = FormatOptions::default().numbers;
        for text in [format::figure(value, places, style), format::significant(value, places, style)] {
            prop_assert!(only_figures(&text), "{}", text);
        }
    }
}
