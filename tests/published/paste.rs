//! Pastes against facts of the trade.

use softcrumb::engine::heat::{
    Grain, Material, Matter, OpenAir, Paste, PasteLimit, PasteRemedy, Scalded, Stirring, Vessel,
    boiling_at, cook, latent_heat_of_boiling, steam_loss,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{
    Altitude, Length, Mass, Minutes, Temperature, TemperatureChange,
};

use crate::accuracy::lies_in;
use crate::printed::{agrees, agrees_within};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn scalded(number: u16, grain: Grain, g: f64, t: f64) -> Scalded {
    let row = Listed::numbered(number).unwrap().row();
    Scalded {
        of: row.name.into(),
        mass: grams(g),
        matter: Matter::of(&row.composition()).unwrap(),
        starch: row.composition().starch,
        grain,
        temperature: celsius(t),
    }
}

/// Flour and boiling water, this much to one, in a kitchen of 18 °C.
fn paste(water_to_flour: f64, vessel: Option<Vessel>) -> Paste {
    Paste {
        flours: vec![scalded(1, Grain::Wheat, 100.0, 18.0)],
        others: Vec::new(),
        liquid: grams(100.0 * water_to_flour),
        liquid_matter: Matter::WATER,
        boils: boiling_at(Altitude::from_metres(100.0).unwrap())
            .unwrap()
            .temperature,
        drop: Paste::DROP,
        vessel,
        stirring: None,
    }
}

fn heavy_bowl(t: f64) -> Option<Vessel> {
    Some(Vessel::new(Material::Ceramic, grams(900.0), celsius(t)).unwrap())
}

/// Source: latent heat by IAPWS-95, about 2.29 kJ/g near the boil: 5 g of steam take 11.45 kJ, which is
/// 16.4 to 17.8 K of 184 g of paste with a specific heat of 3.8 to 3.5 kJ/(kg·K).
#[test]
pub(crate) fn five_grams_of_steam_cool_a_paste_by_some_17_kelvin() {
    let stirring = Stirring {
        air: OpenAir {
            temperature: celsius(20.0),
            humidity: OpenAir::HUMIDITY,
        },
        across: Length::from_metres(0.145).unwrap(),
        minutes: Minutes::from_minutes(20.0).unwrap(),
        at_most: Some(grams(5.0)),
    };
    let plain = Paste {
        flours: vec![scalded(1, Grain::Wheat, 31.0, 18.0)],
        liquid: grams(153.0),
        drop: TemperatureChange::from_kelvin(0.0).unwrap(),
        ..paste(1.0, None)
    };
    let steaming = Paste {
        stirring: Some(stirring),
        ..plain.clone()
    };
    let (plain, steaming) = (cook(&plain).unwrap(), cook(&steaming).unwrap());
    agrees_within(steaming.steamed.grams(), "5", 1e-9);
    let fall = (plain.temperature - steaming.temperature).kelvin();
    lies_in(fall, &(16.4..=17.8), 0.0);
}

/// Common practice: boiling water on flour in a cold heavy bowl can miss 65 °C; a warmed bowl
/// mends it.
#[test]
fn a_cold_heavy_bowl_misses_65_and_a_warmed_one_does_not() {
    let cold = cook(&paste(1.2, heavy_bowl(18.0))).unwrap();
    assert!(cold.temperature.celsius() < 65.0, "{:?}", cold.temperature);
    assert!(cold.cooked.fraction() < 0.5);
    assert_eq!(cold.flours[0].limit, PasteLimit::Temperature);
    let warmed = cold.remedies.iter().find_map(|remedy| match remedy {
        PasteRemedy::WarmBowl { to } => Some(*to),
        PasteRemedy::MoreHeat { .. }
        | PasteRemedy::MoreWater { .. }
        | PasteRemedy::Stove { .. } => None,
    });
    let warm = cook(&paste(1.2, heavy_bowl(warmed.unwrap().celsius()))).unwrap();
    agrees_within(warm.temperature.celsius(), "65", 0.2);
    let hot = cook(&paste(1.2, heavy_bowl(75.0))).unwrap();
    assert!(hot.temperature.celsius() > 65.0);
}

/// Each remedy, done, brings the paste to 65 °C: more liquid here, in a light bowl.
#[test]
fn more_boiling_water_as_advised_brings_the_paste_to_65() {
    let light = Some(Vessel::new(Material::Steel, grams(300.0), celsius(18.0)).unwrap());
    let cold = cook(&paste(0.7, light)).unwrap();
    assert!(cold.temperature.celsius() < 65.0, "{:?}", cold.temperature);
    let more = cold.remedies.iter().find_map(|remedy| match remedy {
        PasteRemedy::MoreHeat { liquid } => Some(*liquid),
        PasteRemedy::WarmBowl { .. }
        | PasteRemedy::MoreWater { .. }
        | PasteRemedy::Stove { .. } => None,
    });
    let done = cook(&paste(0.7 + more.unwrap().grams() / 100.0, light)).unwrap();
    // More water also lets more starch cook, which takes up heat: a few tenths of a degree.
    agrees_within(done.temperature.celsius(), "65", 0.8);
}

/// The advice of Heat, set by its button in a kitchen whose water cools much on its way: the paste then comes
/// to the 65 °C of wheat (Faltermaier et al., *J. Inst. Brew.* 2014).
#[test]
fn what_heat_advises_for_a_paste_brings_it_there() {
    use softcrumb::results::heat::{apply_paste_change, paste, paste_change};
    use softcrumb::sheet::{Kitchen, examples};
    let (mut applied, kitchen) = (0, Kitchen::default());
    for (_, sheet) in examples() {
        for drop in [14.0, 18.0, 22.0, 30.0] {
            let mut heat = sheet.heat.clone();
            heat.paste.drop = TemperatureChange::from_kelvin(drop).unwrap();
            let of = |formula: &_, heat: &softcrumb::sheet::HeatSettings| {
                paste(formula, 0, &kitchen, &heat.paste).ok().flatten()
            };
            let Some(asked) = of(&sheet.formula, &heat) else {
                continue;
            };
            for remedy in cook(&asked).unwrap().remedies {
                let Some(change) = paste_change(&remedy) else {
                    continue;
                };
                let (mut formula, mut heat) = (sheet.formula.clone(), heat.clone());
                apply_paste_change(&mut formula, &mut heat, (0, asked.liquid), change).unwrap();
                let done = cook(&of(&formula, &heat).unwrap()).unwrap();
                let short = (asked.goal() - done.temperature).kelvin();
                let water_only = matches!(remedy, PasteRemedy::MoreWater { .. });
                assert!(
                    water_only || short < 0.8,
                    "{drop} {remedy:?}: {short} K short"
                );
                applied += 1;
            }
        }
    }
    assert!(applied > 3, "{applied}");
}

/// Common practice: a paste of one to five, flour to liquid, is cooked at 65 °C; one to one just
/// has the water it needs. Source of the limit: *J. Food Sci.* 55, 1990: 1.5 g to a gram of starch.
#[test]
fn one_to_five_has_water_to_spare_and_one_to_one_hardly_enough() {
    let thin = cook(&paste(5.0, None)).unwrap();
    assert!(thin.temperature.celsius() > 65.0);
    agrees(thin.cooked.fraction(), "1.0");
    let stiff = cook(&paste(1.0, None)).unwrap();
    assert!((1.4..1.8).contains(&(stiff.water.grams() / stiff.starch.grams())));
    let dry = cook(&paste(0.6, None)).unwrap();
    assert!(dry.flours[0].by_water.fraction() < 1.0);
}

/// Wheat is done at a temperature at which rice is not: the answer says which flour misses.
#[test]
fn rice_misses_where_wheat_is_done() {
    let mut both = paste(2.0, heavy_bowl(38.0));
    both.flours.push(scalded(50, Grain::Rice, 40.0, 18.0));
    let cooked = cook(&both).unwrap();
    assert!(
        (65.0..75.0).contains(&cooked.temperature.celsius()),
        "{:?}",
        cooked.temperature
    );
    assert_eq!(cooked.flours[0].limit, PasteLimit::None);
    assert_eq!(cooked.flours[1].limit, PasteLimit::Temperature);
    assert!(
        matches!(cooked.remedies.last(), Some(PasteRemedy::Stove { to, .. }) if to.celsius() > 75.0)
    );
}

/// Source: IAPWS-95: 2500.9 J/g at 0 °C, 2453.5 at 20, 2406.0 at 40, 2333.0 at 70, 2256.5 at
/// 99.974.
#[test]
pub(crate) fn steam_carries_off_the_heat_that_steam_tables_print() {
    for (t, printed) in [
        (0.0, "2500.9"),
        (20.0, "2453.5"),
        (40.0, "2406.0"),
        (70.0, "2333.0"),
        (99.974, "2256.5"),
    ] {
        agrees(
            latent_heat_of_boiling(celsius(t))
                .unwrap()
                .joules_per_gram(),
            printed,
        );
    }
}

#[test]
fn steam_is_what_the_scale_misses() {
    let steam = steam_loss(grams(250.0), grams(238.0), celsius(95.0)).unwrap();
    agrees(steam.lost.grams(), "12");
    agrees(steam.share.percent(), "4.8");
    assert!(steam_loss(grams(100.0), grams(101.0), celsius(95.0)).is_err());
}
