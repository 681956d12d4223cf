//! Mixing in sentences: a dough's temperature with its range, development, the handbook's sum.

use softcrumb::engine::heat::{Development, PrintedFactor};
use softcrumb::engine::quantity::{Minutes, Temperature, WarmingRate};
use softcrumb::results::heat::MixingResult;
use softcrumb::sheet::{Kitchen, examples};
use softcrumb::text::heat;
use softcrumb::text::{FormatOptions, TemperatureUnit, Units, format};

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees).unwrap()
}

fn mixing(room: f64) -> MixingResult {
    let sheet = examples().remove(0).1;
    let kitchen = Kitchen {
        room: celsius(room),
        ..Kitchen::default()
    };
    MixingResult::of(&sheet.formula, &kitchen, &sheet.heat).unwrap()
}

/// Rounded by hand: 23.26 °C is 23.5 to half a degree and 73.9 °F; 20.6 and 25.4 are 21 and 25.
#[test]
fn a_predicted_temperature_is_shown_to_half_a_degree_with_its_range() {
    let (likely, ends) = (celsius(23.26), (celsius(20.6), celsius(25.4)));
    let fahrenheit = FormatOptions {
        units: Units {
            temperature: TemperatureUnit::Fahrenheit,
            ..Units::default()
        },
        ..FormatOptions::default()
    };
    let told = |options| plain(&format::about_temperature(likely, ends, options));
    assert_eq!(told(FormatOptions::default()), "about 23.5 °C (21 to 25)");
    assert_eq!(told(fahrenheit), "about 74 °F (69 to 78)");
}

#[test]
fn the_sum_of_the_bowl_is_shown_with_its_range() {
    let mixing = mixing(21.0);
    let told = plain(&heat::balance_sum(
        &mixing.dough,
        celsius(25.0),
        FormatOptions::default(),
    ));
    assert!(
        told.starts_with("Together they make a dough of about "),
        "{told}"
    );
    assert!(told.contains(" to "), "{told}");
    assert!(!mixing.friction_is_learnt());
    assert!(heat::trust_dough(false).contains("printed figures"));
}

/// Hlynka 1962, *Cereal Chem.* 39:286-303: 0.39 min a kelvin; 26 − 21 K are 2 min, more than the
/// usual nine.
#[test]
fn a_cold_dough_develops_later_and_what_to_look_for_is_shown() {
    let mut mixing = mixing(21.0);
    mixing.dough.temperature = celsius(21.0);
    mixing.dough.low = celsius(19.0);
    mixing.dough.high = celsius(23.0);
    let told = |usual: f64, mixing: &MixingResult| {
        let usual = Minutes::from_minutes(usual).unwrap();
        let found = Development::of(usual, &mixing.dough);
        plain(&heat::development(&found, FormatOptions::default()))
    };
    let later = told(9.0, &mixing);
    assert!(
        later.starts_with("Mixed until developed: about 11 min ("),
        "{later}"
    );
    let held_against = "takes longer than one of 26 °C, which takes the usual 9 min.";
    assert!(later.contains(held_against), "{later}");
    assert!(
        later.ends_with("the edge is smooth, not ragged."),
        "{later}"
    );
    assert!(
        told(2.0, &mixing).contains("too cold. Warm it rather than mix it for more than 3 min.")
    );
    mixing.dough.temperature = celsius(31.0);
    assert!(told(9.0, &mixing).contains("takes less than one of 26 °C"));
    mixing.dough.temperature = celsius(26.0);
    assert!(told(9.0, &mixing).contains("as usual."));
    // Common practice: doughs of 24 to 27 °C are what is wanted; none of them is called cold or warm.
    for wanted in [24.0, 25.0, 26.0, 27.0] {
        mixing.dough.temperature = celsius(wanted);
        let said = told(9.0, &mixing);
        assert!(
            !said.contains("colder") && !said.contains("warmer"),
            "{said}"
        );
    }
}

/// 23 °F is 12.8 K, a third of it 4.3 K (NIST SP 811, B.9).
#[test]
fn the_handbooks_factor_is_named_with_the_warming_it_stands_for() {
    let told = heat::printed_factor(PrintedFactor::HomeMixer, FormatOptions::default());
    let told = plain(&told);
    assert!(
        told.starts_with("Friction factor 12.8 °C, as printed. A third of it, about 4.3 °C"),
        "{told}"
    );
    // The mixer's own friction has no part in it.
    let sheet = examples().remove(0).1;
    let water = |kitchen: &Kitchen| {
        let mixing = MixingResult::of(&sheet.formula, kitchen, &sheet.heat).unwrap();
        mixing.factor.unwrap().water
    };
    let mut kitchen = Kitchen::default();
    let first = water(&kitchen);
    kitchen.mixer.friction = WarmingRate::from_kelvin_per_minute(2.0).unwrap();
    assert_eq!(water(&kitchen), first);
    kitchen.mixer.printed = PrintedFactor::FastMixing;
    let colder = (first - water(&kitchen)).kelvin();
    assert!((colder - 12.0 / 1.8).abs() < 1e-9, "{colder}");
}
