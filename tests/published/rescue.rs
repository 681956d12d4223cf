//! What helps a syrup that has come out thick or lumpy.

use softcrumb::engine::chocolate::{
    ChocolatePart, Consistency, Flow, Portioned, Syrup, SyrupLook, SyrupModel, add_water,
};
use softcrumb::engine::ingredients::{Composition, Listed};
use softcrumb::engine::quantity::{Mass, Temperature};
use softcrumb::results::chocolate::{Rescue, rescue};
use softcrumb::results::{batch, chocolate};
use softcrumb::sheet::{Kitchen, examples};

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn composition(number: u16) -> Composition {
    Listed::numbered(number).unwrap().row().composition()
}

/// Two ounces of dark chocolate with water at 40 °C.
fn dark(water: f64) -> Syrup {
    let chocolate = ChocolatePart {
        composition: composition(1000),
        mass: grams(56.7),
        cocoa: None,
    };
    let poured = Portioned {
        composition: composition(200),
        mass: grams(water),
    };
    let warm = Temperature::from_celsius(40.0).unwrap();
    Syrup::from_parts(&[chocolate], &[poured], warm, SyrupModel::default()).unwrap()
}

fn class(syrup: &Syrup) -> Option<Consistency> {
    match syrup.flow {
        Flow::Flows { handling, .. } => Some(handling),
        Flow::Seized | Flow::MeltedOnly => None,
    }
}

/// Source: Corriher, *BakeWise* (2008) (from memory): a tablespoon of water, 14.8 g, to two ounces of
/// chocolate keeps it from seizing; a seized one is rescued by stirring in hot water up to there.
#[test]
fn a_teaspoon_seizes_two_ounces_and_a_tablespoon_in_all_saves_them() {
    let seized = dark(2.0);
    assert_eq!(class(&seized), None);
    let add = add_water(&seized, SyrupLook::Seized).unwrap().unwrap();
    let in_all = 2.0 + add.from.grams();
    assert!((14.7..=20.0).contains(&in_all), "{in_all}");
    assert!(add.to >= add.from);
    let saved = dark(in_all);
    assert!(saved.rule.met());
    assert!(class(&saved).is_some_and(|class| class <= Consistency::Drizzles));
}

/// Common practice: a thick syrup takes a spoonful, a stiffer one takes more; what is added makes it
/// drizzle.
#[test]
fn what_looks_thicker_takes_more_water_and_then_drizzles() {
    let pipes = dark(14.0);
    let wished = Consistency::Pipes.typical().unwrap();
    let water = pipes.liquid_for(wished).unwrap().liquid.grams();
    let thick = dark(water);
    assert_eq!(class(&thick), Some(Consistency::Pipes));
    let add = add_water(&thick, SyrupLook::TooThick).unwrap().unwrap();
    for (added, wished) in [
        (add.from, Consistency::Drizzles),
        (add.to, Consistency::Dips),
    ] {
        let now = class(&dark(water + added.grams() + 0.01));
        assert_eq!(now, Some(wished), "{added:?}");
    }
    let stays = add_water(&thick, SyrupLook::StaysPut).unwrap().unwrap();
    assert!(stays.from > add.from && stays.to > add.to);
    assert!(add_water(&thick, SyrupLook::Lumpy).unwrap().is_none());
}

/// Common practice: lumps melt over a warm bath within some minutes, sooner when stirred.
#[test]
fn lumps_melt_over_a_bath_in_minutes() {
    let kitchen = Kitchen::default();
    for (_, sheet) in examples() {
        let made = batch::of(&sheet, kitchen.scales);
        let found = chocolate::of(&sheet, &kitchen, &made);
        if found.syrup_part.is_none() {
            continue;
        }
        let Some(Rescue::Bath(bath)) = rescue(&sheet, &made, &found, SyrupLook::Lumpy) else {
            panic!("no bath");
        };
        assert!(bath.from < bath.to && bath.to.minutes() < 30.0, "{bath:?}");
        assert!(bath.from.minutes() > 0.5, "{bath:?}");
        for look in SyrupLook::ALL {
            assert!(rescue(&sheet, &made, &found, look).is_some(), "{look:?}");
        }
    }
}
