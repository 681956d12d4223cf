//! Tins: printed sizes, volumes and doughs of tins, and what geometry says of height and layout.

use std::num::NonZeroU16;

use softcrumb::engine::formula::Bread;
use softcrumb::engine::quantity::{Factor, Length, Mass, SpecificVolume};
use softcrumb::engine::tin::{
    Across, Between, Capacity, Fullness, Grid, Tin, TinError, TinShape, Tins, convert,
    dough_height, filling, grids, layout,
};

use crate::printed::{agrees, agrees_within};

fn mm(millimetres: f64) -> Length {
    Length::from_metres(millimetres / 1000.0).unwrap()
}

fn across(long: f64, wide: f64) -> Across {
    Across {
        long: mm(long),
        wide: mm(wide),
    }
}

fn flared(top: (f64, f64), bottom: (f64, f64), deep: f64) -> Tin {
    Tin::open(TinShape::Rectangle {
        top: across(top.0, top.1),
        bottom: across(bottom.0, bottom.1),
        deep: mm(deep),
    })
    .unwrap()
}

fn straight(long: f64, wide: f64, deep: f64) -> Tin {
    flared((long, wide), (long, wide), deep)
}

fn round(top: f64, bottom: f64, deep: f64) -> Tin {
    Tin::open(TinShape::Round {
        top: mm(top),
        bottom: mm(bottom),
        deep: mm(deep),
    })
    .unwrap()
}

fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
}

fn one(tin: Tin) -> Tins {
    Tins {
        tin,
        count: count(1),
    }
}

fn volume(tin: &Tin) -> f64 {
    Capacity::of(tin)
        .unwrap()
        .volume()
        .unwrap()
        .cubic_centimetres()
}

fn room(number: f64) -> SpecificVolume {
    SpecificVolume::from_cubic_centimetres_per_gram(number).unwrap()
}

fn dough(tin: Tin, at: f64) -> f64 {
    let filled = filling(one(tin), Bread::SoftTin, Some(room(at)), None);
    filled.unwrap().all.grams()
}

/// Source: an ingredient dealer's guide to tapered tins: inside 250 (238) × 113 (105) × 120 mm hold
/// 3192 cm³, at 4 cm³/g 798 g; 220 (208) × 113 (105) × 120 mm hold 2800 cm³, at 4.0 700 g.
#[test]
pub(crate) fn tapered_tins_hold_what_the_dealer_prints() {
    let long = flared((250.0, 113.0), (238.0, 105.0), 120.0);
    agrees(volume(&long), "3192");
    agrees(dough(long, 4.0), "798");
    let short = flared((220.0, 113.0), (208.0, 105.0), 120.0);
    agrees(volume(&short), "2800");
    agrees(dough(short, 4.0), "700");
}

/// Source: a Japanese bakery technologist's worked example: 365 × 120 × 125 mm at 4.0 is 1368.75 g.
#[test]
pub(crate) fn a_straight_tin_takes_what_the_technologist_reckons() {
    agrees(dough(straight(365.0, 120.0, 125.0), 4.0), "1368.75");
}

/// Source: Tsuji culinary school, column on tin sizes (2016): 1650 ml at 3.8, in two pieces, 217 g.
#[test]
fn half_of_an_open_tin_weighs_what_the_school_says() {
    let tin = straight(165.0, 100.0, 100.0);
    agrees(volume(&tin), "1650");
    agrees(dough(tin, 3.8) / 2.0, "217");
}

/// Source: Wordloaf, "Size matters": a straight 9 × 4 × 4 inch tin holds 2360 cm³. The print rounds
/// to tens.
#[test]
pub(crate) fn a_tin_in_inches_holds_what_is_printed() {
    let inch = 25.4;
    let tin = straight(9.0 * inch, 4.0 * inch, 4.0 * inch);
    agrees_within(volume(&tin), "2360", 5.0);
}

/// Source: US pan bread at 5.5 to 6.0 cubic inches an ounce; 1 in³/oz is 0.57804 cm³/g by the inch of
/// 25.4 mm and the ounce of 28.349523125 g.
#[test]
fn room_for_dough_in_inches_and_ounces_is_the_same() {
    let tin = straight(25.4 * 10.0, 25.4 * 4.0, 25.4 * 4.0);
    let ounces = dough(tin, 5.5 * 0.578_036_672) / 28.349_523_125;
    agrees_within(ounces, "29.09", 0.005);
}

/// Source: the volume of a cylinder, of a cone's frustum and of a ring (geometry): 20 cm across and
/// 10 deep 3141.59 cm³; 20 over 16 and 6 deep 1533.10; a 22 over 18 ring with a 6 cm tube.
#[test]
fn round_tins_hold_cylinders_and_frusta() {
    agrees(volume(&round(200.0, 200.0, 100.0)), "3141.59");
    agrees(volume(&round(200.0, 160.0, 60.0)), "1533.10");
    let ring = Tin::open(TinShape::Ring {
        top: mm(220.0),
        bottom: mm(180.0),
        tube: mm(60.0),
        deep: mm(80.0),
    })
    .unwrap();
    let whole = volume(&round(220.0, 180.0, 80.0));
    agrees_within(volume(&ring), "2295.46", 0.005);
    agrees_within(whole - volume(&ring), "226.19", 0.005);
    let cups = Tin::open(TinShape::Muffin {
        top: mm(70.0),
        bottom: mm(50.0),
        deep: mm(40.0),
        cups: count(12),
    });
    let cup = volume(&round(70.0, 50.0, 40.0));
    agrees_within(volume(&cups.unwrap()) / cup, "12", 1e-9);
}

#[test]
fn a_ring_whose_tube_fills_it_and_a_tray_are_refused() {
    let ring = TinShape::Ring {
        top: mm(200.0),
        bottom: mm(60.0),
        tube: mm(60.0),
        deep: mm(80.0),
    };
    assert_eq!(Tin::open(ring), Err(TinError::TubeFillsTin));
    let tray = Tin::open(TinShape::Tray {
        across: across(400.0, 300.0),
    });
    assert_eq!(Capacity::of(&tray.unwrap()), Err(TinError::NoSides));
}

/// Source: Tsuji culinary school (2016), 3.8 to 3.9 in open tins: 1650 cm³ take 423 to 434 g.
#[test]
fn too_full_and_too_empty_are_shown_by_how_much() {
    let tin = one(straight(165.0, 100.0, 100.0));
    let at = |grams: f64| {
        let there = Some(Mass::from_grams(grams).unwrap());
        let filled = filling(tin, Bread::SoftTin, None, there).unwrap();
        filled.fullness.unwrap()
    };
    assert_eq!(at(423.0), Fullness::Right);
    assert_eq!(at(434.0), Fullness::Right);
    let Fullness::TooFull { over } = at(500.0) else {
        panic!("500 g run over")
    };
    agrees_within(over.grams(), "41.67", 0.01); // 500 − 1650 / 3.6
    let Fullness::TooEmpty { short } = at(300.0) else {
        panic!("300 g stay low")
    };
    agrees_within(short.grams(), "92.86", 0.01); // 1650 / 4.2 − 300
}

/// In a straight tin the height is volume over area: 400 g at 0.85 cm³/g, risen threefold, is
/// 1020 cm³ on 165 cm², 6.18 cm of 10.
#[test]
fn dough_stands_as_high_as_volume_over_area() {
    let tin = straight(165.0, 100.0, 100.0);
    let at = |times: f64| {
        let rise = Factor::from_number(times).unwrap();
        dough_height(&tin, Mass::from_grams(400.0).unwrap(), rise).unwrap()
    };
    let low = at(3.0);
    agrees(low.of_rim.percent(), "61.82");
    agrees(low.below.unwrap().metres() * 1000.0, "38.2");
    agrees(low.level_at.number(), "4.853");
    assert_eq!(low.above, None);
    let over = at(6.0); // 2040 cm³, of which 390 above 165 cm²
    agrees(over.above.unwrap().metres() * 1000.0, "23.64");
    agrees(over.of_rim.percent(), "123.64");
}

/// A cone's frustum 20 cm over 16, 6 deep: at half the depth it holds π·3/12·(16² + 16·18 + 18²).
#[test]
fn in_a_flared_tin_the_height_is_the_frustum_s() {
    let tin = round(200.0, 160.0, 60.0);
    let half = std::f64::consts::PI * 3.0 / 12.0 * (256.0 + 288.0 + 324.0);
    let dough = Mass::from_grams(half / 0.85).unwrap();
    let stands = dough_height(&tin, dough, Factor::ONE).unwrap();
    agrees_within(stands.of_rim.fraction(), "0.5", 1e-9);
}

/// Source: geometry: 20 cm round to 23 cm round of one depth, (23 / 20)² = 1.3225.
#[test]
fn a_dough_is_carried_from_tin_to_tin_by_volume_and_from_tray_to_tray_by_area() {
    let before = Mass::from_grams(800.0).unwrap();
    let to = Tins {
        tin: round(230.0, 230.0, 60.0),
        count: count(2),
    };
    let carried = convert(one(round(200.0, 200.0, 60.0)), to, before).unwrap();
    agrees_within(carried.factor.number(), "2.645", 1e-9);
    agrees_within(carried.now.grams(), "2116", 1e-6);
    let tray = |long, wide| {
        let shape = TinShape::Tray {
            across: across(long, wide),
        };
        one(Tin::open(shape).unwrap())
    };
    let trays = convert(tray(400.0, 300.0), tray(300.0, 200.0), before).unwrap();
    agrees_within(trays.now.grams(), "400", 1e-9);
    let mixed = convert(tray(400.0, 300.0), to, before);
    assert_eq!(mixed, Err(TinError::NoSides));
}

#[test]
fn eight_pieces_lie_two_by_four_in_a_long_tin() {
    let tin = straight(240.0, 110.0, 80.0);
    let each = Mass::from_grams(85.0).unwrap();
    let rise = Factor::from_number(3.0).unwrap();
    let laid = layout(&tin, count(8), None, each, rise).unwrap();
    let grid = laid.grid.unwrap();
    assert_eq!((grid.rows.get(), grid.columns.get()), (2, 4));
    assert_eq!(laid.spots.len(), 8);
    let first = laid.spots[0];
    agrees(first.along.fraction(), "0.125");
    agrees(first.across.fraction(), "0.25");
    // 85 g at 0.85 cm³/g: a ball of 72.25 cm³ is (6 × 72.25 / π)^⅓ = 5.167 cm across; a place 5.5.
    agrees(laid.ball.metres() * 100.0, "5.167");
    let Between::Apart(gap) = laid.put_in else {
        panic!("balls begin apart")
    };
    agrees(gap.metres() * 1000.0, "3.3");
    assert!(matches!(laid.when_risen, Between::Pressed(_)));
    let wished = layout(&tin, count(8), Some(count(1)), each, rise).unwrap();
    let wished = wished.grid.unwrap();
    assert_eq!((wished.rows.get(), wished.columns.get()), (1, 8));
}

#[test]
fn every_grid_of_twelve_is_offered() {
    let all: Vec<(u16, u16)> = grids(count(12))
        .map(|grid: Grid| (grid.rows.get(), grid.columns.get()))
        .collect();
    assert_eq!(all, [(1, 12), (2, 6), (3, 4), (4, 3), (6, 2), (12, 1)]);
}

/// Source: circles packed in a circle (geometry): seven of them, one in the middle, are a third of
/// it across; two are half, three 2√3 − 3 = 0.4641.
#[test]
fn pieces_in_a_round_tin_lie_as_circles_pack() {
    let tin = round(240.0, 240.0, 60.0);
    let place = |pieces: u16| {
        let each = Mass::from_grams(60.0).unwrap();
        let laid = layout(&tin, count(pieces), None, each, Factor::ONE).unwrap();
        assert_eq!(laid.spots.len(), usize::from(pieces));
        laid.place.metres() / 0.240
    };
    agrees(place(7), "0.3333");
    agrees(place(2), "0.5");
    agrees(place(3), "0.4641");
}
