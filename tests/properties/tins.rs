//! Tins of every shape and size: an answer or a refusal, and never more in the tin than it holds.

use std::num::NonZeroU16;

use softcrumb::engine::formula::Bread;
use softcrumb::engine::quantity::{Factor, Length, Mass};
use softcrumb::engine::tin::{
    Across, Capacity, MOST_PIECES, Tin, TinError, TinShape, Tins, convert, dough_height, filling,
    layout,
};

const LENGTHS: [f64; 4] = [1e-4, 0.03, 0.4, 10.0];
const MASSES: [f64; 5] = [0.0, 0.01, 80.0, 5000.0, 1e6];

fn length(metres: f64) -> Length {
    Length::from_metres(metres).unwrap()
}

fn every_tin() -> Vec<Tin> {
    let mut tins = Vec::new();
    for a in LENGTHS {
        for b in LENGTHS {
            for c in LENGTHS {
                let (top, bottom, deep) = (length(a), length(b), length(c));
                let side = |long, wide| Across { long, wide };
                let cups = NonZeroU16::new(24).unwrap();
                let shapes = [
                    TinShape::Rectangle {
                        top: side(top, bottom),
                        bottom: side(bottom, top),
                        deep,
                    },
                    TinShape::Round { top, bottom, deep },
                    TinShape::Ring {
                        top,
                        bottom,
                        tube: length(0.02),
                        deep,
                    },
                    TinShape::Muffin {
                        top,
                        bottom,
                        deep,
                        cups,
                    },
                    TinShape::Tray {
                        across: side(top, bottom),
                    },
                ];
                tins.extend(shapes.into_iter().filter_map(|shape| Tin::open(shape).ok()));
            }
        }
    }
    tins
}

#[test]
fn every_tin_with_every_dough_has_an_answer_or_a_refusal() {
    let (mut answered, mut refused) = (0, 0);
    for tin in every_tin() {
        for grams in MASSES {
            let dough = Mass::from_grams(grams).unwrap();
            for times in [1e-6, 1.0, 2.5, 1e6] {
                let Ok(found) = dough_height(&tin, dough, Factor::from_number(times).unwrap())
                else {
                    refused += 1;
                    continue;
                };
                answered += 1;
                assert!(found.of_rim.fraction().is_finite());
                assert!(!(found.below.is_some() && found.above.is_some()));
                let full = found.risen >= found.tin;
                assert_eq!(full, found.of_rim.fraction() >= 1.0 - 1e-9, "{found:?}");
            }
        }
    }
    assert!(answered > 500 && refused > 500, "{answered} {refused}");
}

#[test]
fn a_taller_rise_never_stands_lower() {
    for tin in every_tin() {
        let dough = Mass::from_grams(300.0).unwrap();
        let mut before = 0.0;
        for times in [1.0, 1.5, 2.0, 3.0, 5.0, 8.0] {
            if let Ok(found) = dough_height(&tin, dough, Factor::from_number(times).unwrap()) {
                assert!(found.of_rim.fraction() >= before);
                before = found.of_rim.fraction();
            }
        }
    }
}

#[test]
fn filling_and_converting_answer_for_everything() {
    let there = Mass::from_grams(900.0).unwrap();
    for tin in every_tin() {
        let tins = Tins {
            tin,
            count: NonZeroU16::MAX,
        };
        for bread in Bread::ALL {
            let filled = filling(tins, bread, None, Mass::from_grams(700.0).ok());
            assert_eq!(filled.is_ok(), filled.is_ok_and(|f| f.all > Mass::ZERO));
        }
        if let Ok(back) = convert(tins, tins, there) {
            assert!((back.now.grams() - 900.0).abs() < 1e-6);
        }
    }
}

#[test]
fn every_number_of_pieces_is_laid_out_or_refused() {
    let each = Mass::from_grams(60.0).unwrap();
    let mut laid_out = 0;
    for tin in every_tin() {
        let cups = matches!(tin.shape, TinShape::Muffin { .. });
        for pieces in [
            1,
            2,
            5,
            6,
            9,
            10,
            13,
            14,
            15,
            31,
            MOST_PIECES,
            201,
            u16::MAX,
        ] {
            let number = NonZeroU16::new(pieces).unwrap();
            let laid = layout(&tin, number, None, each, Factor::ONE);
            if pieces > MOST_PIECES {
                assert!(matches!(laid, Err(TinError::TooManyPieces { .. })));
            } else if let Ok(laid) = laid {
                laid_out += 1;
                let expected = if cups { 24 } else { usize::from(pieces) };
                assert_eq!(laid.spots.len(), expected);
                let inside = |share: f64| (0.0..=1.0).contains(&share);
                let spots = laid.spots.iter();
                let all = spots.flat_map(|spot| [spot.along.fraction(), spot.across.fraction()]);
                assert!(all.into_iter().all(inside));
            }
        }
    }
    assert!(laid_out > 1000, "{laid_out}");
}

#[test]
fn what_fills_a_tin_stands_level_with_its_rim() {
    for tin in every_tin() {
        let Ok(volume) = Capacity::of(&tin).and_then(|room| room.volume()) else {
            continue;
        };
        let Ok(dough) = Mass::from_grams(volume.cubic_centimetres() / 0.85 / 2.0) else {
            continue;
        };
        if let Ok(found) = dough_height(&tin, dough, Factor::from_number(2.0).unwrap()) {
            assert!((found.of_rim.fraction() - 1.0).abs() < 1e-6, "{found:?}");
        }
    }
}
