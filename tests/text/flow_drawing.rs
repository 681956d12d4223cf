//! The flow curve as it is drawn: everything in the picture, no word on another.

use super::format_options::{american, british, german};
use softcrumb::engine::chocolate::{ChocolatePart, Portioned, Syrup, SyrupModel};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Mass, Temperature};
use softcrumb::text::chart::FlowDrawing;

fn syrup(chocolate: u16, liquid: u16, grams: f64, celsius: f64) -> Syrup {
    let composition = |number| Listed::numbered(number).unwrap().row().composition();
    let component = ChocolatePart {
        composition: composition(chocolate),
        mass: Mass::from_grams(100.0).unwrap(),
        cocoa: None,
    };
    let poured = Portioned {
        composition: composition(liquid),
        mass: Mass::from_grams(grams).unwrap(),
    };
    let at = Temperature::from_celsius(celsius).unwrap();
    Syrup::from_parts(&[component], &[poured], at, SyrupModel::default()).unwrap()
}

fn drawings() -> Vec<(String, FlowDrawing)> {
    let mut all = Vec::new();
    for chocolate in [1000, 1002, 1005, 1010] {
        for liquid in [200, 300, 500] {
            for grams in [0.0, 3.0, 12.0, 25.0, 40.0, 90.0, 400.0, 2500.0] {
                for celsius in [5.0, 40.0, 95.0] {
                    let syrup = syrup(chocolate, liquid, grams, celsius);
                    for options in [british(), german(), american()] {
                        let drawing = FlowDrawing::of(&syrup, &syrup.curve(), options);
                        let what = format!("{chocolate} with {grams} g of {liquid} at {celsius}");
                        all.push((what, drawing));
                    }
                }
            }
        }
    }
    all
}

fn inside(x: f64, y: f64) -> bool {
    (0.0..=FlowDrawing::WIDTH).contains(&x) && (0.0..=FlowDrawing::HEIGHT).contains(&y)
}

#[test]
fn everything_stands_in_the_picture() {
    for (what, drawing) in drawings() {
        assert!(inside(drawing.current.x, drawing.current.y), "{what}");
        assert!(
            inside(drawing.current.words_x, drawing.current.second_y()),
            "{what}"
        );
        for tick in &drawing.across {
            assert!(inside(tick.at, 0.0), "{what}: {tick:?}");
        }
        for mark in drawing.seizes.iter().chain(&drawing.rule) {
            assert!(inside(mark.x, 0.0), "{what}: {mark:?}");
        }
        assert!(
            !drawing.line.contains("NaN") && !drawing.line.contains("inf"),
            "{what}"
        );
        let high: f64 = drawing.bands.iter().map(|band| band.height).sum();
        assert!(
            (high - FlowDrawing::DOWN).abs() < 1e-6,
            "{what}: bands of {high}"
        );
    }
}

#[test]
fn figures_along_the_edges_keep_apart() {
    for (what, drawing) in drawings() {
        for pair in drawing.across.windows(2) {
            let letters = u32::try_from(pair[1].text.chars().count()).unwrap();
            let room = 7.0 * f64::from(letters);
            assert!(pair[1].at - pair[0].at > room, "{what}: {pair:?}");
        }
        for pair in drawing.up.windows(2) {
            assert!(pair[0].at - pair[1].at >= 16.0, "{what}: {pair:?}");
        }
        let names: Vec<f64> = drawing
            .bands
            .iter()
            .filter_map(|band| band.name_y)
            .collect();
        for pair in names.windows(2) {
            assert!(pair[1] - pair[0] >= 16.0, "{what}: {names:?}");
        }
    }
}
