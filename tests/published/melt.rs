//! Melting chocolate against handbook heats and facts of the trade.

use softcrumb::engine::chocolate::{
    LATENT_HEAT, Lumps, MeltRemedy, Melted, Melting, heat_to_melt, melt, melt_remedies, solid_fat,
};
use softcrumb::engine::heat::{Material, Matter, Paste, Vessel, boiling_at};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Altitude, Length, Mass, Share, Temperature};

use crate::printed::{agrees, agrees_within};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn fat_of(number: u16) -> Share {
    Listed::numbered(number).unwrap().row().composition().fat
}

/// Source: Beckett (ed.), *Industrial Chocolate Manufacture and Use*, 4th ed. 2009, p. 668: cocoa
/// butter 157, dark chocolate 46, milk chocolate 44 J/g. The chocolates of the book are not those
/// of the larder: their fat differs by some percent, so 7 % is allowed.
#[test]
pub(crate) fn latent_heats_of_chocolates_follow_from_their_fat() {
    agrees(LATENT_HEAT.joules_per_gram(), "157");
    for (number, printed, allowed) in [(1000, "46", 3.2), (1004, "46", 3.2), (1010, "44", 3.1)] {
        let melting = LATENT_HEAT.joules_per_gram() * fat_of(number).fraction();
        agrees_within(melting, printed, allowed);
    }
}

/// Source: the same, pp. 667-668: 1590 J/(kg·K) to 40 °C, 1670 above, 46 J/g: 1 kg of dark
/// chocolate from 20 to 45 °C takes 40.15 and 46 kJ. Its fat is that which 46 J/g belong to.
#[test]
pub(crate) fn melting_a_kilogram_of_dark_chocolate_from_20_to_45_takes_86_kilojoules() {
    let fat = Share::from_fraction(46.0 / 157.0).unwrap();
    let heat = heat_to_melt(grams(1000.0), fat, celsius(20.0), celsius(45.0));
    agrees(heat.warming.joules() / 1000.0, "40.15");
    agrees(heat.melting.joules() / 1000.0, "46");
    agrees((heat.warming + heat.melting).joules() / 1000.0, "86");
}

/// Source: Wille and Lutton 1966: form V, that of tempered chocolate, melts at 33.8 °C and form VI
/// at 36.3; Beckett, 3rd ed.: chocolate is solid at 20 °C.
#[test]
fn cocoa_butter_is_solid_in_a_cool_room_and_melted_in_the_mouth() {
    agrees(solid_fat(celsius(15.0)).unwrap().percent(), "76.0");
    assert!(solid_fat(celsius(33.8)).unwrap().percent() < 2.0);
    agrees(solid_fat(celsius(36.3)).unwrap().percent(), "0");
}

/// Source: Chaiseri and Dimick 1989 (from memory): West African cocoa butter, solid of all fat.
#[test]
pub(crate) fn solid_fat_is_shown_of_all_fat() {
    for (at, printed) in [
        (20.0, "76.0"),
        (25.0, "69.6"),
        (30.0, "45.0"),
        (33.8, "1.1"),
    ] {
        agrees(solid_fat(celsius(at)).unwrap().percent(), printed);
    }
}

/// Four parts of dark chocolate to one of water just off the boil, at sea level, in a steel bowl of
/// 150 g of which half warms, all else at room temperature.
fn four_to_one(room: f64) -> Melting {
    let boils = boiling_at(Altitude::from_metres(0.0).unwrap())
        .unwrap()
        .temperature;
    let poured = celsius(boils.celsius() - Paste::DROP.kelvin());
    Melting {
        chocolate: grams(100.0),
        fat: fat_of(1000),
        chocolate_at: celsius(room),
        pieces: None,
        liquid: grams(25.0),
        liquid_matter: Matter::WATER,
        liquid_at: poured,
        liquid_at_most: poured,
        vessel: Some(Vessel::new(Material::Steel, grams(150.0), celsius(room)).unwrap()),
    }
}

fn melted(melting: &Melting) -> Melted {
    melt(melting).unwrap()
}

/// Common practice: four to one with water just off the boil keeps clear lumps in a kitchen of
/// 15 °C, and few or none in one of 22 °C.
#[test]
fn four_to_one_keeps_lumps_in_a_cold_kitchen_and_few_in_a_warm_one() {
    let (cold, warm) = (melted(&four_to_one(15.0)), melted(&four_to_one(22.0)));
    assert_eq!(cold.lumps, Lumps::Clear);
    assert!(warm.lumps <= Lumps::Few);
    assert!(cold.unmelted.fraction() > 2.0 * warm.unmelted.fraction());
}

/// A warm bowl, more water or a bath, done as told, leave no lumps.
#[test]
fn what_is_advised_against_lumps_leaves_none() {
    let cold = four_to_one(15.0);
    let remedies = melt_remedies(&cold, &melted(&cold)).unwrap();
    let mut held = 0;
    for remedy in &remedies {
        let mut done = cold.clone();
        match remedy {
            MeltRemedy::HotterLiquid { to } => done.liquid_at = *to,
            MeltRemedy::WarmBowl { to } => done.vessel.as_mut().unwrap().temperature = *to,
            MeltRemedy::MoreLiquid { liquid } => done.liquid = done.liquid + *liquid,
            MeltRemedy::WaterBath { at, minutes } => {
                agrees(at.celsius(), "50");
                assert!((0.2..30.0).contains(&minutes.minutes()), "{minutes:?}");
                continue;
            }
            MeltRemedy::FinerChop { .. } => continue,
        }
        // Where form V has melted a hundredth of the fat is still solid: that is no lump.
        assert_eq!(melted(&done).lumps, Lumps::None, "{remedy:?}");
        held += 1;
    }
    assert!(held >= 1, "{remedies:?}");
}

/// Common practice: thick pieces do not melt in the two minutes a poured liquid is left to stand,
/// chopped ones do.
#[test]
fn thick_pieces_are_to_be_chopped_and_fine_ones_are_not() {
    let of = |metres| {
        let pieces = Some(Length::from_metres(metres).unwrap());
        let melting = Melting {
            pieces,
            ..four_to_one(20.0)
        };
        melt_remedies(&melting, &melted(&melting)).unwrap()
    };
    let chop = |found: &[MeltRemedy]| {
        found
            .iter()
            .any(|one| matches!(one, MeltRemedy::FinerChop { .. }))
    };
    assert!(chop(&of(0.03)));
    assert!(!chop(&of(0.004)));
}
