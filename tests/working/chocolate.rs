//! The working of fillings, syrups, the handbook's rule and keeping.

use std::num::NonZeroU32;

use softcrumb::engine::chocolate::{
    ChocolatePart, Consistency, FillAsked, Portioned, SolubilityTable, Syrup, SyrupLook,
    SyrupModel, add_water, fill,
};
use softcrumb::engine::ingredients::{Composition, Listed};
use softcrumb::engine::quantity::{Mass, Share, Temperature};

use softcrumb::results::{batch, chocolate};
use softcrumb::sheet::{Kitchen, Sheet, examples};

use crate::rule_evaluator::adds_up;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn composition(number: u16) -> Composition {
    Listed::numbered(number).unwrap().row().composition()
}

fn syrup(
    chocolate: u16,
    liquid: u16,
    mass: f64,
    celsius: f64,
    solubility: SolubilityTable,
) -> Syrup {
    let component = ChocolatePart {
        composition: composition(chocolate),
        mass: grams(120.0),
        cocoa: None,
    };
    let poured = Portioned {
        composition: composition(liquid),
        mass: grams(mass),
    };
    let model = SyrupModel {
        solubility,
        ..SyrupModel::default()
    };
    let at = Temperature::from_celsius(celsius).unwrap();
    Syrup::from_parts(&[component], &[poured], at, model).unwrap()
}

#[test]
fn a_syrup_adds_up_whatever_it_is_made_of() {
    for table in [SolubilityTable::Antokolskaya, SolubilityTable::Sokolovsky] {
        for chocolate in [1000, 1001, 1005, 1010, 1012] {
            for liquid in [200, 300, 500] {
                for (mass, celsius) in [(0.0, 20.0), (9.0, -5.0), (31.0, 40.0), (90.0, 104.0)] {
                    let syrup = syrup(chocolate, liquid, mass, celsius, table);
                    adds_up(&syrup.working());
                    adds_up(&syrup.parts_working());
                    adds_up(&syrup.keeping.working());
                    adds_up(&syrup.rule.working(syrup.chocolate));
                    if syrup.least_liquid.is_some() {
                        adds_up(&syrup.seizing_working());
                    }
                }
            }
        }
    }
}

#[test]
fn alcohol_and_salt_in_the_liquid_add_up_too() {
    let spirit = Composition {
        water: Share::from_percent(55.0).unwrap(),
        alcohol: Share::from_percent(40.0).unwrap(),
        sodium: Share::from_percent(1.0).unwrap(),
        ash: Share::from_percent(3.0).unwrap(),
        ..Composition::default()
    };
    let component = ChocolatePart {
        composition: composition(1000),
        mass: grams(120.0),
        cocoa: None,
    };
    let poured = Portioned {
        composition: spirit,
        mass: grams(40.0),
    };
    let at = Temperature::from_celsius(40.0).unwrap();
    let syrup = Syrup::from_parts(&[component], &[poured], at, SyrupModel::default()).unwrap();
    adds_up(&syrup.working());
    adds_up(&syrup.keeping.working());
}

#[test]
fn liquid_for_each_class_adds_up() {
    let syrup = syrup(1001, 200, 30.0, 40.0, SolubilityTable::default());
    for class in Consistency::ALL {
        let wished = class.typical().unwrap();
        assert_eq!(Consistency::of(wished), class);
        let needed = syrup.liquid_for(wished).unwrap();
        assert_eq!(needed.handling, class);
        adds_up(&needed.working());
    }
}

#[test]
fn a_filling_adds_up_from_both_sides() {
    for asked in [FillAsked::Each(grams(8.0)), FillAsked::Total(grams(96.0))] {
        let pieces = NonZeroU32::new(11).unwrap();
        let stays = Share::from_percent(4.0).unwrap();
        adds_up(&fill(asked, pieces, grams(83.0), stays).unwrap().working());
    }
}

#[test]
fn rescues_add_up_for_every_look() {
    for (liquid, mass) in [(200, 3.0), (200, 31.0), (300, 40.0)] {
        let syrup = syrup(1000, liquid, mass, 40.0, SolubilityTable::Antokolskaya);
        for look in SyrupLook::ALL {
            if let Some(add) = add_water(&syrup, look).unwrap() {
                adds_up(&add.working());
            }
        }
    }
    let kitchen = Kitchen::default();
    let (_, sheet) = examples().remove(0);
    let made = batch::of(&sheet, kitchen.scales);
    let found = chocolate::of(&sheet, &kitchen, &made);
    let bath = chocolate::rescue(&sheet, &made, &found, SyrupLook::Lumpy).unwrap();
    adds_up(&bath.working());
}

/// School arithmetic: the liquid a wish asks for is what the formula then has.
#[test]
fn the_liquid_of_a_wish_is_poured_and_adds_up() {
    let kitchen = Kitchen::default();
    let (_, mut sheet) = examples().remove(0);
    let results = |sheet: &Sheet| chocolate::of(sheet, &kitchen, &batch::of(sheet, kitchen.scales));
    let wished = Consistency::Dips.typical().unwrap();
    let found = results(&sheet);
    let needed = found.liquid_needed(wished).unwrap();
    adds_up(&needed.working());
    sheet.formula = found.with_thickness(&sheet.formula, wished).unwrap();
    let poured = results(&sheet).syrup.unwrap().unwrap().syrup.liquid;
    assert!((poured.grams() - needed.liquid.grams()).abs() < 0.05);
}
