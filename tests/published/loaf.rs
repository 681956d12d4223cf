//! Baking and cooling of loaves against printed times, thermal profiles and exact series.

use softcrumb::engine::heat::LoafBody;
use softcrumb::engine::quantity::{Length, Temperature};

use crate::accuracy::lies_in;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn metres(m: f64) -> Length {
    Length::from_metres(m).unwrap()
}

fn bar(long: f64, wide: f64, high: f64) -> LoafBody {
    LoafBody::Bar {
        long: metres(long),
        wide: metres(wide),
        high: metres(high),
    }
}

/// Source: US Armed Forces recipe card D 009 00: 28 oz of dough in a tin of 10.5 × 5 × 3.5 in bakes
/// 5 min at 450 °F and 25 to 30 min at 375 °F, together 30 to 35 min at 197 °C on the mean.
#[test]
pub(crate) fn a_loaf_of_794_g_takes_about_the_30_to_35_min_of_its_card() {
    let loaf = bar(0.267, 0.127, 0.10);
    let time = loaf
        .bakes_in(celsius(197.0), celsius(30.0), celsius(93.0))
        .unwrap();
    // The card's time goes on until the crust is brown, a little past the core.
    lies_in(time.minutes(), &(30.0..=35.0), 2.0);
}

/// Source: American Society of Baking, thermal profiles of tin loaves: in at 35 °C, 56 °C in the
/// middle at 45 to 55 % of the bake, 65 to 82 °C by 60 %, 93 °C at 80 to 90 %. Bakerpedia: 60 °C at
/// 50 % of the bake.
#[test]
pub(crate) fn the_middle_passes_printed_temperatures_at_printed_shares_of_the_bake() {
    let loaf = bar(0.267, 0.127, 0.10);
    let time = |core: f64| {
        let time = loaf.bakes_in(celsius(180.0), celsius(35.0), celsius(core));
        time.unwrap().minutes()
    };
    // 93 °C at 85 % of the bake: the middle of what is printed.
    let bake = time(93.0) / 0.85;
    lies_in(time(56.0) / bake, &(0.45..=0.55), 0.0);
    lies_in(time(60.0) / bake, &(0.45..=0.55), 0.0);
    lies_in(time(65.0) / bake, &(0.0..=0.60), 0.0);
}

/// Source: the exact product of series for a brick of 22 × 11 × 10 cm, a 5.0e-7, k 0.24, h 10, from
/// 95 °C in 21 °C: 40, 35 and 30 °C in the middle after 61, 71 and 86 min.
#[test]
pub(crate) fn a_loaf_cools_as_the_exact_series_says() {
    let loaf = bar(0.22, 0.11, 0.10);
    for (target, printed) in [(40.0, "61"), (35.0, "71"), (30.0, "86")] {
        let time = loaf
            .cools_in(celsius(21.0), celsius(95.0), celsius(target))
            .unwrap();
        crate::printed::agrees(time.minutes(), printed);
    }
}
