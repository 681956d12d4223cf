//! A formatted figure is read back as the same quantity, within the printed digits.

use super::format_options::{american, british, cases, german};
use proptest::prelude::*;
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};
use softcrumb::text::{FormatOptions, NumberStyle, format, read};

/// All format options whose thousands cannot be taken for decimals.
fn all_options() -> impl Strategy<Value = FormatOptions> {
    let spaced = |options: FormatOptions| FormatOptions {
        numbers: NumberStyle {
            group: Some('\u{202F}'),
            ..options.numbers
        },
        ..options
    };
    prop::sample::select(vec![
        spaced(british()),
        spaced(german()),
        spaced(american()),
    ])
}

/// From 0.05 to the end of the range, evenly by order of magnitude.
fn size(most: f64) -> impl Strategy<Value = f64> {
    (0.05_f64.ln()..most.ln()).prop_map(f64::exp)
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(5_000)))]

    /// Tolerances: half of the last digit that is printed. In ounces that is 0.05 oz from ten
    /// ounces on (1.4175 g), 0.005 oz from one (0.14175 g), 0.0005 oz below (0.014175 g).
    #[test]
    fn weights_are_read_back(grams in size(999_000.0), options in all_options()) {
        let text = format::mass(Mass::from_grams(grams).unwrap(), options);
        let back = read::mass(&text, options).unwrap().grams();
        let half = if options.units == american().units {
            match grams / 28.349_523_125 {
                ounces if ounces < 1.0 => 0.014_176,
                ounces if ounces < 10.0 => 0.141_76,
                _ => 1.417_6,
            }
        } else {
            match grams {
                grams if grams < 1.0 => 0.005,
                grams if grams < 100.0 => 0.05,
                _ => 0.5,
            }
        };
        prop_assert!((back - grams).abs() <= half * (1.0 + 1e-6), "{} {} {}", grams, text, back);
    }

    #[test]
    fn weights_in_boxes_are_read_back(grams in size(999_000.0), options in all_options()) {
        let text = format::box_mass(Mass::from_grams(grams).unwrap(), options);
        let back = read::mass(&text, options).unwrap().grams();
        let half = if options.units == american().units { 0.0005 * 28.35 } else { 0.005 };
        prop_assert!((back - grams).abs() <= half * (1.0 + 1e-6), "{} {} {}", grams, text, back);
    }

    #[test]
    fn shares_are_read_back(percent in size(9_000.0), options in all_options()) {
        let share = Share::from_percent(percent).unwrap();
        let half = match percent {
            percent if percent < 10.0 => 0.005,
            percent if percent < 1000.0 => 0.05,
            _ => 0.5,
        };
        let back = read::share(&format::share(share, options), options).unwrap().percent();
        prop_assert!((back - percent).abs() <= half * (1.0 + 1e-6), "{} {}", percent, back);
        let back = read::share(&format::box_share(share, options), options).unwrap().percent();
        prop_assert!((back - percent).abs() <= 0.005 * (1.0 + 1e-6), "{} {}", percent, back);
    }

    #[test]
    fn temperatures_are_read_back(celsius in -39.0..349.0, options in all_options()) {
        let temperature = Temperature::from_celsius(celsius).unwrap();
        let half = match options.units.temperature {
            softcrumb::text::TemperatureUnit::Celsius if celsius.abs() < 100.0 => 0.05,
            softcrumb::text::TemperatureUnit::Celsius => 0.5,
            softcrumb::text::TemperatureUnit::Fahrenheit => 0.5 / 1.8,
        };
        let back = read::temperature(&format::temperature(temperature, options), options).unwrap();
        prop_assert!((back.celsius() - celsius).abs() <= half * (1.0 + 1e-6));
        let text = format::box_temperature(temperature, options);
        let back = read::temperature(&text, options).unwrap();
        prop_assert!((back.celsius() - celsius).abs() <= 0.05 * (1.0 + 1e-6));
    }

    #[test]
    fn factors_are_read_back(number in size(999_000.0), options in all_options()) {
        let factor = Factor::from_number(number).unwrap();
        let back = read::factor(&format::factor(factor, options), options).unwrap();
        prop_assert!((back.number() / number - 1.0).abs() <= 0.0005 * 1.01);
        let back = read::factor(&format::box_factor(factor, options), options).unwrap();
        prop_assert!((back.number() / number - 1.0).abs() <= 0.000_005 * 1.01);
    }

    /// Two figures: within half of one in ten.
    #[test]
    fn viscosities_are_read_back(thickness in size(9_900.0), options in all_options()) {
        let viscosity = Viscosity::from_pascal_seconds(thickness / 10.0).unwrap();
        let back = read::viscosity(&format::viscosity(viscosity, options), options).unwrap();
        let ratio = back.pascal_seconds() / viscosity.pascal_seconds();
        prop_assert!((ratio - 1.0).abs() <= 0.0501, "{}", ratio);
    }

    #[test]
    fn counts_are_read_back(count in 1_u16.., options in all_options()) {
        let text = format::box_count(count, options);
        prop_assert_eq!(read::count(&text, options).unwrap().get(), count);
        let text = format::count(count, options);
        prop_assert_eq!(read::count(&text, options).unwrap().get(), count);
    }
}
