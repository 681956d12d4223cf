//! Every error of reading a number has its message.

use super::errors::told;
use super::format_options::{american, british};
use super::plain_speech::is_plain;
use proptest::prelude::*;
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};
use softcrumb::text::ErrorText;
use softcrumb::text::read::{self, Limit, Measure, ReadError};

const MEASURES: [Measure; 8] = [
    Measure::Mass,
    Measure::Share,
    Measure::Temperature,
    Measure::Times,
    Measure::Count,
    Measure::Thickness,
    Measure::Volume,
    Measure::Time,
];

#[test]
fn every_error_of_reading_has_a_message() {
    let limits = [
        Limit::Mass(Mass::from_grams(1e6).unwrap()),
        Limit::Share(Share::from_percent(1e4).unwrap()),
        Limit::Temperature(Temperature::from_celsius(-40.0).unwrap()),
        Limit::Times(Factor::from_number(1e6).unwrap()),
        Limit::Times(Factor::from_number(1e-6).unwrap()),
        Limit::Count(65_535),
        Limit::Thickness(Viscosity::from_pascal_seconds(1e-5).unwrap()),
        Limit::Thickness(Viscosity::from_pascal_seconds(1e9).unwrap()),
    ];
    let mut all = vec![
        ReadError::Empty,
        ReadError::NotANumber,
        ReadError::TwoNumbers,
        ReadError::TwoPoints,
        ReadError::Unclear {
            grouped: 1234.0,
            decimal: 1.234,
        },
        ReadError::TooManyDigits { most: 18 },
        ReadError::Minus,
        ReadError::OverNought,
        ReadError::NotWhole,
    ];
    for wanted in MEASURES {
        all.push(ReadError::UnknownUnit { wanted });
        all.extend(MEASURES.map(|got| ReadError::OtherUnit { wanted, got }));
    }
    for limit in limits {
        all.push(ReadError::TooLarge { most: limit });
        all.push(ReadError::TooSmall { least: limit });
    }
    for error in &all {
        told(error);
    }
}

#[test]
fn the_messages_read_as_expected() {
    for (typed, answer) in [
        ("", "Nothing is typed here. Type a number."),
        (
            "20 °C",
            "That is a temperature, and a weight is wanted here. Type the number alone, or with \
             g, kg, oz or lb.",
        ),
        (
            "2 cups",
            "A volume does not say what it weighs. Put it on the scale; type the number alone, \
             or with g, kg, oz or lb.",
        ),
        ("-3", "This cannot be less than nothing. Remove the minus."),
        (
            "1,234",
            "This may mean 1234 or 1.234. Type it as one of these.",
        ),
        (
            "1e99",
            "That is more than can be worked with here. The most is 1000\u{A0}kg.",
        ),
        (
            "NaN",
            "No number can be made out here. Type digits, such as 120 or 0.5.",
        ),
    ] {
        let error = read::mass(typed, british()).unwrap_err();
        assert_eq!(error.sentence(british()), answer, "{typed:?}");
    }
}

proptest! {
    #![proptest_config(super::format_options::cases(2_000))]

    #[test]
    fn every_message_is_a_whole_plain_sentence(typed in "\\PC{0,24}") {
        if let Err(error) = read::mass(&typed, british()) {
            is_plain(&error.sentence(british()));
        }
        if let Err(error) = read::temperature(&typed, american()) {
            is_plain(&error.sentence(american()));
        }
    }
}
