//! Reading shares, temperatures, factors, counts, viscosities.

use super::format_options::{american, british};
use softcrumb::engine::quantity::{Factor, Share, Temperature, Viscosity};
use softcrumb::text::read::{self, Limit, Measure, ReadError};

/// Equal up to binary rounding.
pub(crate) fn close(got: f64, wanted: f64, typed: &str) {
    let room = 1e-9 * wanted.abs().max(1.0);
    assert!(
        (got - wanted).abs() <= room,
        "{typed:?}: {got}, not {wanted}"
    );
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
    for (typed, options, wanted) in [
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
        let read = read::temperature(typed, options).unwrap();
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
fn viscosities_are_read_in_pascal_seconds() {
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
