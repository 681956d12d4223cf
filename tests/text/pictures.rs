//! Pictures in words.

use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::batch::divide;
use softcrumb::engine::chocolate::{ChocolatePart, Portioned, Syrup, SyrupModel};
use softcrumb::engine::formula::{Contributor, Form, LineAt, PartKind, Water, WaterLedger};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Division, Mass, Share, Temperature};
use softcrumb::text::chart;

fn g(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

/// So much water on 400 g of flour.
fn water(grams: f64) -> Water {
    Water {
        mass: g(grams),
        share: g(grams).share_of(g(400.0)).unwrap(),
    }
}

fn from(food: &'static str, kind: PartKind, mass: f64, water: f64) -> Contributor {
    Contributor {
        at: LineAt { part: 0, line: 0 },
        kind,
        food: food.into(),
        mass: g(mass),
        water_content: g(water).share_of(g(mass)).unwrap(),
        water: g(water),
        is_flour: food == "flour",
    }
}

/// 180 g of water in two places, 100 g of milk with 90 g of water, 400 g of flour with 40 g.
fn ledger(steam: f64) -> WaterLedger {
    let left = 270.0 - steam;
    WaterLedger {
        form: Form::AsMade,
        flour: g(400.0),
        dough: g(680.0 - steam),
        poured: water(180.0),
        liquids: water(280.0),
        true_water: water(left),
        total: water(left + 40.0),
        moisture: Share::from_fraction((left + 40.0) / (680.0 - steam)).unwrap(),
        in_paste: water(120.0 - steam),
        in_preferment: Water::default(),
        free: water(150.0),
        steam: g(steam),
        from: vec![
            from("Water", PartKind::Paste, 120.0, 120.0),
            from("Whole milk", PartKind::Final, 100.0, 90.0),
            from("Water", PartKind::Final, 60.0, 60.0),
            from("flour", PartKind::Final, 400.0, 40.0),
        ],
    }
}

#[test]
fn the_water_ledger_is_shown() {
    let text = chart::water_ledger(&ledger(0.0), british());
    is_plain(&text);
    assert_eq!(
        text.replace('\u{A0}', "_"),
        "Water: 270_g, 67.5_% of flour. The paste holds 120_g and the final dough adds 150_g. \
         Most of it is from Water 180_g, Whole milk 90_g. With flour’s own moisture it \
         is 310_g, 45.6_% of the dough."
    );
}

#[test]
fn steam_is_shown_where_there_was_any() {
    let text = chart::water_ledger(&ledger(5.0), british());
    is_plain(&text);
    assert!(text.contains("Steam took 5\u{A0}g away."), "{text}");
    assert!(text.starts_with("Water: 265\u{A0}g"), "{text}");
}

#[test]
fn a_dough_without_water_is_shown_too() {
    let dry = WaterLedger {
        true_water: Water::default(),
        total: water(40.0),
        in_paste: Water::default(),
        free: Water::default(),
        from: Vec::new(),
        ..ledger(0.0)
    };
    is_plain(&chart::water_ledger(&dry, british()));
}

fn flow_curve(water: f64) -> String {
    let named = |name: &str| {
        Listed::all()
            .find(|listed| listed.row().name.starts_with(name))
            .unwrap_or_else(|| panic!("no {name}"))
            .row()
            .composition()
    };
    let chocolate = ChocolatePart {
        composition: named("Dark chocolate"),
        mass: g(200.0),
        cocoa: None,
    };
    let poured = Portioned {
        composition: named("Water"),
        mass: g(2.0 * water),
    };
    let at = Temperature::from_celsius(40.0).unwrap();
    let syrup = Syrup::from_parts(&[chocolate], &[poured], at, SyrupModel::default()).unwrap();
    let text = chart::flow_curve(&syrup, &syrup.curve(), british());
    is_plain(&text);
    text.replace('\u{A0}', "_")
}

#[test]
fn the_flow_curve_is_shown() {
    let flows = flow_curve(30.0);
    assert!(
        flows.starts_with("At 40_°C, 30_g of liquid to 100_g of chocolate: it coats"),
        "{flows}"
    );
    // A sentence for bakers: the unit of thickness stands in the working only.
    assert!(!flows.contains("Pa·s"), "{flows}");
    assert!(flows.contains(" It seizes below "), "{flows}");
    let seized = flow_curve(2.0);
    assert!(
        seized.starts_with("At 40_°C, 2_g of liquid to 100_g of chocolate: it seizes."),
        "{seized}"
    );
    let melted = flow_curve(0.0);
    assert!(melted.starts_with("At 40_°C, no water added"), "{melted}");
}

#[test]
fn dough_divided_is_shown() {
    let told = |grams, pieces: u32, division: f64| {
        let division = Division::from_mass(g(division)).unwrap();
        let divided = divide(g(grams), pieces.try_into().unwrap(), division).unwrap();
        let text = chart::divided(&divided, british());
        is_plain(&text);
        text.replace('\u{A0}', "_")
    };
    assert_eq!(
        told(633.0, 9, 1.0),
        "3_pieces of 71_g and 6_pieces of 70_g, which is 633_g in all."
    );
    assert_eq!(
        told(630.0, 9, 1.0),
        "9_pieces of 70_g, which is 630_g in all."
    );
    assert_eq!(
        told(141.0, 2, 1.0),
        "1_piece of 71_g and 1_piece of 70_g, which is 141_g in all."
    );
    assert_eq!(
        told(70.0, 4, 0.5),
        "4_pieces of 17.5_g, which is 70.0_g in all."
    );
}
