//! The working of heat: properties, boiling, mixes, pastes, doughs, ice, melting, the oven.

use softcrumb::engine::chocolate::{Melting, melt};
use softcrumb::engine::formula::Bread;
use softcrumb::engine::heat::{
    BakeSetting, BakedBody, BakedShape, Cooling, CoolingFactors, CoolingVessel, Development, Dough,
    DoughItem, DoughStep, Grain, HeatFrom, HeatPart, LiquidUse, Material, Matter, Paste, Phase,
    Properties, RuleSet, Scalded, ThermalMaterial, Vessel, bake_time, boiling_at, boiling_under,
    cook, cool_loaf, dough_temperature, factor_method, ice_for, review, steam_loss,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{
    Altitude, Mass, Minutes, Pressure, Share, Temperature, TemperatureChange, WarmingRate,
};

use softcrumb::results::heat::{CoolingResult, DoughQuestion, MixingResult, paste_coolings};
use softcrumb::sheet::{Kitchen, examples};

use crate::rule_evaluator::adds_up;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

fn kelvin(k: f64) -> TemperatureChange {
    TemperatureChange::from_kelvin(k).unwrap()
}

fn matter(number: u16) -> Matter {
    Matter::of(&Listed::numbered(number).unwrap().row().composition()).unwrap()
}

fn food(number: u16, g: f64, t: f64) -> HeatPart {
    HeatPart {
        of: Listed::numbered(number).unwrap().row().name.into(),
        mass: grams(g),
        stuff: ThermalMaterial::Food(matter(number)),
        temperature: celsius(t),
    }
}

fn bowl(t: f64) -> Vessel {
    Vessel::new(Material::Glass, grams(700.0), celsius(t)).unwrap()
}

#[test]
fn properties_of_every_food_add_up() {
    for food in Listed::all() {
        let matter = Matter::of(&food.row().composition()).unwrap();
        for t in [-20.0, 4.0, 25.0, 95.0] {
            adds_up(&Properties::of(&matter, celsius(t)).unwrap().working());
        }
    }
}

#[test]
fn boiling_adds_up_by_altitude_and_by_pressure() {
    for metres in [-400.0, 0.0, 1234.0, 5000.0] {
        adds_up(
            &boiling_at(Altitude::from_metres(metres).unwrap())
                .unwrap()
                .working(),
        );
    }
    for hectopascals in [500.0, 1013.25, 1050.0] {
        let pressure = Pressure::from_hectopascals(hectopascals).unwrap();
        adds_up(&boiling_under(pressure).unwrap().working());
    }
}

fn dough() -> Dough {
    let item = |component, handling| DoughItem {
        component,
        handling,
    };
    Dough {
        items: vec![
            item(food(1, 300.0, 21.0), LiquidUse::Flour),
            item(food(200, 120.0, 17.0), LiquidUse::Water),
            item(food(300, 70.0, 4.0), LiquidUse::Liquid),
            item(food(500, 40.0, 18.0), LiquidUse::AsItIs),
        ],
        vessel: Some(bowl(20.0)),
        dry_flour: grams(300.0),
        friction: WarmingRate::from_kelvin_per_minute(1.1).unwrap(),
        friction_spread: Dough::FRICTION_SPREAD,
        minutes: minutes(9.0),
        usual: minutes(9.0),
        stood: Minutes::ZERO,
        room: celsius(19.0),
    }
}

#[test]
fn doughs_and_their_ice_add_up() {
    let dough = dough();
    for mixed in [0.0, 0.5, 9.0, 86_400.0] {
        let dough = Dough {
            minutes: minutes(mixed),
            ..dough.clone()
        };
        let temperature = dough_temperature(&dough).unwrap();
        adds_up(&temperature.working());
        adds_up(&Development::of(dough.usual, &temperature).working());
        adds_up(&Development::of(minutes(7.3), &temperature).working());
    }
    for target in [8.0, 18.0, 24.0, 40.0] {
        adds_up(
            &ice_for(&dough, celsius(target), celsius(-18.0))
                .unwrap()
                .working(),
        );
    }
    let others = [celsius(21.0), celsius(23.0), celsius(5.0)];
    adds_up(
        &factor_method(celsius(26.0), &others, kelvin(11.0))
            .unwrap()
            .working(),
    );
}

/// School arithmetic: the step of a remedy of ice alone ends with the ice that the remedy names.
#[test]
fn the_ice_of_a_remedy_adds_up() {
    let warm = Dough {
        minutes: minutes(20.0),
        ..dough()
    };
    let question = DoughQuestion {
        dough: warm,
        wanted: celsius(20.0),
        surroundings: Kitchen::default().surroundings(),
    };
    let mut shown = 0;
    for remedy in question.remedies().unwrap() {
        let working = question.ice_working(&remedy);
        let alone = remedy.steps().count() == 1;
        if let (DoughStep::Ice { ice }, true) = (remedy.step, alone) {
            adds_up(&working);
            let last = working.last().unwrap().result.value;
            assert!((last - ice.grams()).abs() < 1e-9, "{last}");
            shown += 1;
        } else {
            assert!(working.is_empty());
        }
    }
    assert_eq!(shown, 1);
}

fn paste(water: f64, temperature: f64) -> Paste {
    let scalded = |number: u16, grain, g| {
        let row = Listed::numbered(number).unwrap().row();
        Scalded {
            of: row.name.into(),
            mass: grams(g),
            matter: matter(number),
            starch: row.composition().starch,
            grain,
            temperature: celsius(temperature),
        }
    };
    Paste {
        flours: vec![
            scalded(1, Grain::Wheat, 60.0),
            scalded(50, Grain::Rice, 20.0),
        ],
        others: vec![food(700, 5.0, temperature)],
        liquid: grams(water),
        liquid_matter: Matter::WATER,
        boils: celsius(98.6),
        drop: kelvin(2.0),
        vessel: Some(bowl(temperature)),
        stirring: None,
    }
}

#[test]
fn pastes_and_their_steam_add_up_dry_and_wet_cold_and_warm() {
    for water in [10.0, 40.0, 90.0, 400.0] {
        for temperature in [2.0, 20.0, 60.0] {
            adds_up(&cook(&paste(water, temperature)).unwrap().working());
        }
    }
    adds_up(
        &steam_loss(grams(210.0), grams(203.5), celsius(96.0))
            .unwrap()
            .working(),
    );
}

#[test]
fn melting_adds_up_cold_and_hot() {
    for chocolate_at in [4.0, 15.0, 22.0, 31.0] {
        for liquid in [8.0, 25.0, 200.0] {
            let melting = Melting {
                chocolate: grams(100.0),
                fat: Listed::numbered(1000).unwrap().row().composition().fat,
                chocolate_at: celsius(chocolate_at),
                pieces: None,
                liquid: grams(liquid),
                liquid_matter: Matter::WATER,
                liquid_at: celsius(97.0),
                liquid_at_most: celsius(97.0),
                vessel: Some(bowl(chocolate_at)),
            };
            adds_up(&melt(&melting).unwrap().working());
        }
    }
}

#[test]
fn cooling_adds_up_stage_by_stage() {
    let cooling = Cooling {
        factors: CoolingFactors::default(),
        food: matter(300),
        mass: grams(200.0),
        start: celsius(80.0),
        room: celsius(21.0),
        fridge: celsius(3.0),
        lid: false,
        bowl: None,
        rules: RuleSet::Strictest,
    };
    let times = (minutes(20.0), Minutes::ZERO);
    let way = cooling.way(CoolingVessel::Bowl, None, times).unwrap();
    let cooled = cooling.cool(&way).unwrap().middle;
    assert_eq!(cooled.working().len(), 5);
    adds_up(&cooled.working());
}

#[test]
fn the_oven_adds_up() {
    let phase = |m, t, from, fan| Phase {
        minutes: minutes(m),
        temperature: celsius(t),
        from,
        fan,
    };
    let phases = [
        phase(12.0, 165.0, HeatFrom::Both, true),
        phase(7.0, 190.0, HeatFrom::Top, false),
    ];
    adds_up(&review(&phases).unwrap().working());
    let setting = |baked: BakedBody, oven, heat| BakeSetting {
        baked,
        oven: celsius(oven),
        heat: Share::from_percent(heat).unwrap(),
        dough: celsius(27.0),
        core: celsius(91.0),
    };
    let loaf = BakedBody::known(Bread::SoftTin, BakedShape::Loaf, grams(750.0)).unwrap();
    let bun = BakedBody::apart(Bread::SoftTin, grams(66.0)).unwrap();
    let (from, to) = (setting(loaf, 175.0, 100.0), setting(bun, 190.0, 80.0));
    let time = bake_time(minutes(31.0), &from, &to).unwrap();
    let cooling = cool_loaf(&loaf.body, Bread::Rye, celsius(21.0), celsius(96.0));
    adds_up(&cooling.unwrap().working());
    adds_up(&time.working());
}

/// The workings that Heat shows of dough and cooling, for each example.
#[test]
fn the_workings_of_a_dough_and_of_its_cooling_add_up() {
    for (_, sheet) in examples() {
        let kitchen = Kitchen::default();
        let mixing = MixingResult::of(&sheet.formula, &kitchen, &sheet.heat).unwrap();
        adds_up(&mixing.working());
        let followed = paste_coolings(&sheet.formula, &kitchen, &sheet.heat, &[]);
        for one in &followed {
            let known = (&[][..], followed.as_slice());
            let cooling = &sheet.heat.cooling;
            let shown = CoolingResult::of(&sheet.formula, one.part, known, &kitchen, cooling);
            adds_up(&shown.working());
        }
    }
}
