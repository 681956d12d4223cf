//! The height of dough in its tin as it goes into the oven, against printed values.

use softcrumb::engine::formula::Bread;
use softcrumb::engine::quantity::{Factor, Length, Mass};
use softcrumb::engine::tin::{Across, DoughHeight, Tin, TinKind, TinRise, TinShape, dough_height};

use crate::accuracy::lies_in;

fn straight(long: f64, wide: f64, deep: f64) -> Tin {
    flared((long, wide), (long, wide), deep)
}

/// In millimetres.
fn flared(top: (f64, f64), bottom: (f64, f64), deep: f64) -> Tin {
    let length = |millimetres: f64| Length::from_metres(millimetres / 1000.0).unwrap();
    let side = |(long, wide): (f64, f64)| Across {
        long: length(long),
        wide: length(wide),
    };
    let shape = TinShape::Rectangle {
        top: side(top),
        bottom: side(bottom),
        deep: length(deep),
    };
    Tin::open(shape).unwrap()
}

fn usual(tin: &Tin, grams: f64, bread: Bread) -> DoughHeight {
    let dough = Mass::from_grams(grams).unwrap();
    dough_height(tin, dough, TinRise::Usual.factor(tin, dough, bread)).unwrap()
}

/// Common practice: an open tin goes into the oven at 80 to 90 % of its height, one to three
/// centimetres under the rim, where it has 3.8 cm³/g and more. Source of the tins: an ingredient
/// dealer's guide, 250 (238) × 113 (105) × 120 mm, 3192 cm³ for 798 g, and 220 (208) × 113 (105) ×
/// 120 mm, 2800 cm³ for 700 g.
#[test]
pub(crate) fn tins_with_room_go_in_at_80_to_90_percent_of_their_height() {
    for (tin, grams) in [
        (flared((250.0, 113.0), (238.0, 105.0), 120.0), 798.0),
        (flared((220.0, 113.0), (208.0, 105.0), 120.0), 700.0),
        (straight(266.7, 127.0, 88.9), 794.0),
    ] {
        let height = usual(&tin, grams, Bread::SoftTin);
        let of_rim = height.of_rim.percent();
        lies_in(of_rim, &(80.0..=90.0), 0.0);
        let below = height.below.unwrap().metres();
        lies_in(below, &(0.01..=0.03), 0.0);
    }
}

/// Source: US Armed Forces recipe card D 009 00: 709 g in a tin of 9 × 4.5 × 2.75 in, 2.58 cm³/g:
/// dough of 2.5 cm³/g fills 97 % of it, and crowns above the rim in the oven.
#[test]
pub(crate) fn a_tin_with_little_room_crowns_earlier() {
    let height = usual(&straight(228.6, 114.3, 69.85), 709.0, Bread::SoftTin);
    crate::printed::agrees(height.of_rim.percent(), "97");
}

/// Common practice: rye in tins of 2.2 to 3.0 cm³/g does not rise as far as wheat.
#[test]
fn every_bread_rises_within_its_limits() {
    let tin = straight(228.6, 114.3, 69.85);
    let rise = |grams: f64, bread| usual(&tin, grams, bread).rise.number();
    assert!(rise(700.0, Bread::Rye) < rise(700.0, Bread::SoftTin));
    // In a tin far too large dough still rises only as far as it can.
    for bread in Bread::ALL {
        assert!(rise(100.0, bread) <= 4.3, "{bread:?}");
    }
    let dough = Mass::from_grams(700.0).unwrap();
    let tray = TinRise::Usual.factor(&TinKind::Tray.tin(), dough, Bread::SweetBun);
    assert_eq!(tray, TinRise::FORMER);
    let none = TinRise::Usual.factor(&tin, Mass::ZERO, Bread::SweetBun);
    assert_eq!(none, TinRise::FORMER);
}

#[test]
fn a_typed_rise_is_stored_and_the_former_default_means_the_usual_one() {
    let typed = |number| TinRise::Times(Factor::from_number(number).unwrap());
    for rise in [TinRise::Usual, typed(2.65), typed(3.0)] {
        assert_eq!(TinRise::of_factor(rise.as_factor()), rise);
    }
    let again = TinRise::of_factor(typed(2.8).as_factor());
    assert!(matches!(again, TinRise::Times(factor) if (factor.number() - 2.8).abs() < 1e-15));
}
