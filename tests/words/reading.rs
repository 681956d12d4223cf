//! Tables of what was typed and what came of it.

use super::manners::{american, british, cases, german};
use proptest::prelude::*;
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};
use softcrumb::words::Manner;
use softcrumb::words::read::{self, Limit, Measure, ReadError};

fn grams(typed: &str, manner: Manner) -> f64 {
    read::mass(typed, manner)
        .unwrap_or_else(|error| panic!("{typed:?}: {error}"))
        .grams()
}

fn close(got: f64, wanted: f64, typed: &str) {
    let room = 1e-9 * wanted.abs().max(1.0);
    assert!(
        (got - wanted).abs() <= room,
        "{typed:?}: {got}, not {wanted}"
    );
}

#[test]
fn weights_are_read_as_people_write_them() {
    let table = [
        ("120", 120.0),
        (" 120 ", 120.0),
        ("+120", 120.0),
        ("120 g", 120.0),
        ("120g", 120.0),
        ("120\u{A0}g", 120.0),
        ("120\u{202F}G", 120.0),
        ("120 grams", 120.0),
        ("g 120", 120.0),
        ("0,5kg", 500.0),
        ("0.5 kg", 500.0),
        ("1 kg 200 g", 1200.0),
        ("500 mg", 0.5),
        (".5", 0.5),
        (",5", 0.5),
        ("5.", 5.0),
        ("0", 0.0),
        ("0,125", 0.125),
        ("0.125", 0.125),
        ("1e3", 1000.0),
        ("1/2", 0.5),
        ("1 1/2", 1.5),
        ("1½", 1.5),
        ("½", 0.5),
        ("1 ½ kg", 1500.0),
        ("3⁄4", 0.75),
        ("1 234", 1234.0),
        ("1 234,5", 1234.5),
        ("1\u{2009}234.5 g", 1234.5),
        ("1\u{202F}234,5\u{202F}g", 1234.5),
        ("1,234.5", 1234.5),
        ("1.234,5", 1234.5),
        ("1'234.5", 1234.5),
        ("1’234", 1234.0),
        ("123,456.7", 123_456.7),
        ("123.456,7 g", 123_456.7),
        ("1,000,000", 1_000_000.0),
        ("1,00,000", 100_000.0),
        ("１２０", 120.0),
        ("１２．５ｇ", 12.5),
        ("١٢٠", 120.0),
        ("١٢٫٥", 12.5),
        ("۱۲۰", 120.0),
        ("\u{200F}120\u{200E}", 120.0),
        ("0.3333333333333333", 0.333_333_333_333_333_3),
    ];
    for (typed, wanted) in table {
        close(grams(typed, british()), wanted, typed);
    }
}

/// Factors: NIST Special Publication 811 (2008), appendix B.8: 1 lb = 453.592 37 g exactly,
/// and sixteen ounces to the pound.
#[test]
fn ounces_and_pounds_are_read_as_grams() {
    let table = [
        ("4 oz", 113.398_092_5),
        ("4oz.", 113.398_092_5),
        ("1 lb", 453.592_37),
        ("2 lbs.", 907.184_74),
        ("1 lb 3 oz", 538.640_939_375),
        ("1lb3oz", 538.640_939_375),
        ("½ lb", 226.796_185),
    ];
    for (typed, wanted) in table {
        close(grams(typed, british()), wanted, typed);
        close(grams(typed, american()), wanted, typed);
    }
    close(grams("4", american()), 113.398_092_5, "4");
    close(grams("120 g", american()), 120.0, "120 g");
}

#[test]
fn a_mark_before_three_digits_is_asked_about_unless_it_is_this_devices_own() {
    assert_eq!(
        read::mass("1,234", british()),
        Err(ReadError::Unclear {
            grouped: 1234.0,
            decimal: 1.234
        })
    );
    assert_eq!(
        read::mass("12.345", german()),
        Err(ReadError::Unclear {
            grouped: 12_345.0,
            decimal: 12.345
        })
    );
    close(grams("1.234", british()), 1.234, "1.234");
    close(grams("1,234", german()), 1.234, "1,234");
    close(grams("1,2345", british()), 1.2345, "1,2345");
    close(grams("1234,567", british()), 1234.567, "1234,567");
}

#[test]
fn what_is_no_weight_is_answered() {
    let other = |got| ReadError::OtherUnit {
        wanted: Measure::Mass,
        got,
    };
    let tonne = Mass::from_grams(1e6).unwrap();
    let too_large = ReadError::TooLarge {
        most: Limit::Mass(tonne),
    };
    let unknown = ReadError::UnknownUnit {
        wanted: Measure::Mass,
    };
    let table = [
        ("", ReadError::Empty),
        (" \u{A0}\t\n", ReadError::Empty),
        ("\u{200F}", ReadError::Empty),
        ("abc", ReadError::NotANumber),
        ("NaN", ReadError::NotANumber),
        ("inf", ReadError::NotANumber),
        ("-inf", ReadError::NotANumber),
        ("∞", ReadError::NotANumber),
        (".", ReadError::NotANumber),
        (",", ReadError::NotANumber),
        ("-", ReadError::NotANumber),
        ("+", ReadError::NotANumber),
        ("g", ReadError::NotANumber),
        ("--5", ReadError::Minus),
        ("-5", ReadError::Minus),
        ("−5", ReadError::Minus),
        ("- 5 g", ReadError::Minus),
        ("1.2.3", ReadError::TwoPoints),
        ("1..2", ReadError::TwoPoints),
        ("1,,2", ReadError::TwoPoints),
        ("1.2,3.4", ReadError::TwoPoints),
        ("1,23,4", ReadError::TwoPoints),
        ("1 2", ReadError::TwoNumbers),
        ("3-4", ReadError::TwoNumbers),
        ("3–4 g", ReadError::TwoNumbers),
        ("3 oz 1 lb", ReadError::TwoNumbers),
        ("12+3", ReadError::TwoNumbers),
        ("1/0", ReadError::OverNought),
        ("1/2/3", ReadError::NotANumber),
        ("1e99", too_large),
        ("1e999", too_large),
        ("1000001", too_large),
        ("1001 kg", too_large),
        ("5 apples", unknown),
        ("5 €", unknown),
        ("5e", unknown),
        ("20 °C", other(Measure::Temperature)),
        ("65 %", other(Measure::Share)),
        ("2 cups", other(Measure::Volume)),
        ("250 ml", other(Measure::Volume)),
        ("5 min", other(Measure::Time)),
        ("3 pieces", other(Measure::Count)),
        ("1234567890123456789", ReadError::TooManyDigits { most: 18 }),
    ];
    for (typed, wanted) in table {
        assert_eq!(read::mass(typed, british()), Err(wanted), "{typed:?}");
    }
}

#[test]
fn shares_are_read_in_percent() {
    for (typed, wanted) in [
        ("65", 65.0),
        ("65 %", 65.0),
        ("65%", 65.0),
        ("%65", 65.0),
        ("66,4 %", 66.4),
        ("2.5 percent", 2.5),
        ("250", 250.0),
        ("٦٥٪", 65.0),
    ] {
        let share = read::share(typed, british()).unwrap();
        close(share.percent(), wanted, typed);
    }
    let most = Limit::Share(Share::from_percent(10_000.0).unwrap());
    for (typed, wanted) in [
        (
            "65 g",
            ReadError::OtherUnit {
                wanted: Measure::Share,
                got: Measure::Mass,
            },
        ),
        ("-1", ReadError::Minus),
        ("1e9", ReadError::TooLarge { most }),
        ("half", ReadError::NotANumber),
    ] {
        assert_eq!(read::share(typed, british()), Err(wanted), "{typed:?}");
    }
}

/// Scale: NIST Special Publication 811 (2008), appendix B.8: t/°C = (t/°F − 32)/1.8.
#[test]
fn temperatures_are_read_on_either_scale() {
    for (typed, manner, wanted) in [
        ("26", british(), 26.0),
        ("26°C", british(), 26.0),
        ("26 º c", british(), 26.0),
        ("26 ℃", british(), 26.0),
        ("26 degrees", british(), 26.0),
        ("24,5", british(), 24.5),
        ("-18", british(), -18.0),
        ("−18 °C", british(), -18.0),
        ("77 °F", british(), 25.0),
        ("77F", british(), 25.0),
        ("77", american(), 25.0),
        ("77°", american(), 25.0),
        ("-4", american(), -20.0),
        ("26 c", american(), 26.0),
    ] {
        let read = read::temperature(typed, manner).unwrap();
        close(read.celsius(), wanted, typed);
    }
    let bound = |celsius| Limit::Temperature(Temperature::from_celsius(celsius).unwrap());
    for (typed, wanted) in [
        ("400", ReadError::TooLarge { most: bound(350.0) }),
        ("1e99", ReadError::TooLarge { most: bound(350.0) }),
        (
            "-273",
            ReadError::TooSmall {
                least: bound(-40.0),
            },
        ),
        (
            "-1e999",
            ReadError::TooSmall {
                least: bound(-40.0),
            },
        ),
        (
            "20 g",
            ReadError::OtherUnit {
                wanted: Measure::Temperature,
                got: Measure::Mass,
            },
        ),
    ] {
        assert_eq!(
            read::temperature(typed, british()),
            Err(wanted),
            "{typed:?}"
        );
    }
}

#[test]
fn factors_are_read_with_or_without_a_cross() {
    for (typed, wanted) in [
        ("2", 2.0),
        ("× 1,5", 1.5),
        ("x2", 2.0),
        ("2x", 2.0),
        ("1/2", 0.5),
        ("3 times", 3.0),
    ] {
        close(
            read::factor(typed, british()).unwrap().number(),
            wanted,
            typed,
        );
    }
    let least = Limit::Times(Factor::from_number(1e-6).unwrap());
    let most = Limit::Times(Factor::from_number(1e6).unwrap());
    assert_eq!(
        read::factor("0", british()),
        Err(ReadError::TooSmall { least })
    );
    assert_eq!(
        read::factor("1e99", british()),
        Err(ReadError::TooLarge { most })
    );
}

#[test]
fn whole_things_are_counted() {
    for (typed, wanted) in [("9", 9), ("9.0", 9), ("12 students", 12), ("1 200", 1200)] {
        assert_eq!(
            read::count(typed, british()).unwrap().get(),
            wanted,
            "{typed:?}"
        );
    }
    for (typed, wanted) in [
        (
            "0",
            ReadError::TooSmall {
                least: Limit::Count(1),
            },
        ),
        ("9.5", ReadError::NotWhole),
        ("½", ReadError::NotWhole),
        (
            "65536",
            ReadError::TooLarge {
                most: Limit::Count(65_535),
            },
        ),
        (
            "1e99",
            ReadError::TooLarge {
                most: Limit::Count(65_535),
            },
        ),
        (
            "9 g",
            ReadError::OtherUnit {
                wanted: Measure::Count,
                got: Measure::Mass,
            },
        ),
    ] {
        assert_eq!(read::count(typed, british()), Err(wanted), "{typed:?}");
    }
}

#[test]
fn a_division_is_a_step_that_scales_have() {
    for (typed, wanted) in [("1", 1.0), ("0,1 g", 0.1), ("0.01", 0.01), ("10 mg", 0.01)] {
        for manner in [british(), american()] {
            let division = read::division(typed, manner).unwrap();
            close(division.grams(), wanted, typed);
        }
    }
    for (typed, wanted) in [
        ("0", ReadError::NoSuchDivision),
        ("0.3", ReadError::NoSuchDivision),
        ("1 kg", ReadError::NoSuchDivision),
        ("one", ReadError::NotANumber),
        ("-1", ReadError::Minus),
    ] {
        assert_eq!(read::division(typed, british()), Err(wanted), "{typed:?}");
    }
}

#[test]
fn thickness_is_read_in_pascal_seconds() {
    for (typed, wanted) in [
        ("0,3", 0.3),
        ("0.3 Pa·s", 0.3),
        ("0.3 Pa s", 0.3),
        ("300 mPa·s", 0.3),
        ("280 cP", 0.28),
    ] {
        let read = read::viscosity(typed, british()).unwrap();
        close(read.pascal_seconds(), wanted, typed);
    }
    let least = Limit::Thickness(Viscosity::from_pascal_seconds(1e-5).unwrap());
    assert_eq!(
        read::viscosity("0", british()),
        Err(ReadError::TooSmall { least })
    );
}

#[test]
fn a_very_long_text_is_no_number() {
    let long = "1".repeat(50_000_000);
    assert_eq!(read::mass(&long, british()), Err(ReadError::NotANumber));
}

/// Reads a text as everything there is; only returning counts.
fn read_as_all(typed: &str) {
    for manner in [british(), german(), american()] {
        if let Ok(mass) = read::mass(typed, manner) {
            assert!(Mass::RANGE.contains(&mass.grams()));
        }
        if let Ok(share) = read::share(typed, manner) {
            assert!(Share::RANGE.contains(&share.fraction()));
        }
        if let Ok(temperature) = read::temperature(typed, manner) {
            assert!(Temperature::RANGE.contains(&temperature.celsius()));
        }
        if let Ok(factor) = read::factor(typed, manner) {
            assert!(Factor::RANGE.contains(&factor.number()));
        }
        if let Ok(viscosity) = read::viscosity(typed, manner) {
            assert!(Viscosity::RANGE.contains(&viscosity.pascal_seconds()));
        }
        if let Ok(division) = read::division(typed, manner) {
            assert!((0.01..=10.0).contains(&division.grams()));
        }
        if let Ok(count) = read::count(typed, manner) {
            assert!(count.get() > 0);
        }
    }
}

proptest! {
    #![proptest_config(cases(10_000))]

    #[test]
    fn any_text_is_read_or_answered(typed in "\\PC{0,24}") {
        read_as_all(&typed);
    }

    #[test]
    fn any_text_close_to_a_number_is_read_or_answered(
        typed in "[-+−]?[0-9٠-٩０-９ .,'’/½eE+\u{A0}-]{0,20}[ a-zA-Z°%×·]{0,5}[0-9]{0,3}"
    ) {
        read_as_all(&typed);
    }

    #[test]
    fn any_characters_at_all_are_read_or_answered(typed in any::<String>()) {
        read_as_all(&typed);
    }
}
