//! Keeping: the water activity of syrups against published values.

use softcrumb::engine::chocolate::{ChocolatePart, Perishability, Portioned, Syrup, SyrupModel};
use softcrumb::engine::ingredients::{Composition, Listed};
use softcrumb::engine::quantity::{Mass, Share, Temperature};

use crate::printed::{agrees_within, number};
use crate::table::rows;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn at_40() -> Temperature {
    Temperature::from_celsius(40.0).unwrap()
}

/// Source: salt in water at 25 °C by Pitzer's model, worked out apart from this program. The
/// straight line stands within 0.001 up to 7.5 %.
#[test]
fn salt_lowers_water_activity_as_tabulated() {
    for row in rows(include_str!("data/nacl_aw.csv")) {
        let salt = number(&row["nacl_pct_w_w"]);
        if salt > 7.5 {
            continue;
        }
        let sodium = salt * 22.990 / 58.443;
        let salted = Portioned {
            composition: Composition {
                water: Share::from_percent(100.0 - salt).unwrap(),
                sodium: Share::from_percent(sodium).unwrap(),
                ash: Share::from_percent(salt).unwrap(),
                ..Composition::default()
            },
            mass: grams(10_000.0),
        };
        let trace = ChocolatePart {
            composition: Composition {
                fat: Share::WHOLE,
                ..Composition::default()
            },
            mass: grams(1.0),
            cocoa: None,
        };
        let syrup = Syrup::from_parts(&[trace], &[salted], at_40(), SyrupModel::default()).unwrap();
        let activity = syrup.keeping.by_salt.fraction();
        agrees_within(activity, &row["aw_25C_aquasol_1.8.2_default"], 0.001);
        assert_eq!(syrup.keeping.keeps_as, Perishability::FreshFood);
    }
}

/// A syrup of chocolate and water keeps as a fresh food: Table A2.2 of Mohos (2010) and Norrish's
/// equation give a saturated solution 0.8498 at 20 °C, and most syrups are far from it.
#[test]
fn chocolate_and_water_keep_as_a_fresh_food() {
    let component = |number: u16| Listed::numbered(number).unwrap().row().composition();
    let chocolate = ChocolatePart {
        composition: component(1001),
        mass: grams(100.0),
        cocoa: None,
    };
    let water = Portioned {
        composition: component(200),
        mass: grams(25.0),
    };
    let syrup = Syrup::from_parts(&[chocolate], &[water], at_40(), SyrupModel::default()).unwrap();
    assert_eq!(syrup.keeping.keeps_as, Perishability::FreshFood);
    assert!((0.85..0.95).contains(&syrup.keeping.water_activity.fraction()));
}
