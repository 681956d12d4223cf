//! Reading weights: typed texts and their results.

use super::format_options::{american, british, german};
use super::reading_others::close;
use softcrumb::engine::quantity::Mass;
use softcrumb::text::FormatOptions;
use softcrumb::text::read::{self, Limit, Measure, ReadError};

fn grams(typed: &str, options: FormatOptions) -> f64 {
    read::mass(typed, options)
        .unwrap_or_else(|error| panic!("{typed:?}: {error}"))
        .grams()
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
fn a_mark_before_three_digits_is_ambiguous_unless_it_is_this_devices_decimal_mark() {
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
fn a_text_that_is_no_weight_is_refused_with_its_reason() {
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
fn a_very_long_text_is_no_number() {
    let long = "1".repeat(50_000_000);
    assert_eq!(read::mass(&long, british()), Err(ReadError::NotANumber));
}

#[test]
fn an_optional_box_may_be_empty_and_still_refuses_words() {
    let read = |text| read::optional(text, british(), read::mass);
    assert_eq!(read(" "), Ok(None));
    assert_eq!(
        read("120").map(|mass| mass.map(Mass::grams)),
        Ok(Some(120.0))
    );
    assert_eq!(read("much"), Err(ReadError::NotANumber));
}
