//! Dough temperatures against facts of the trade.

use softcrumb::engine::heat::{
    Body, Dough, DoughItem, DoughRemedy, DoughStep, HeatPart, LiquidAnswer, LiquidRange, LiquidUse,
    Material, Matter, Shape, Surroundings, ThermalMaterial, Vessel, dough_remedies,
    dough_temperature, liquid_for,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Length, Mass, Minutes, Temperature, WarmingRate};

use crate::printed::{agrees, agrees_within};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn matter(number: u16) -> Matter {
    Matter::of(&Listed::numbered(number).unwrap().row().composition()).unwrap()
}

fn food(of: &'static str, g: f64, matter: Matter, t: f64) -> HeatPart {
    HeatPart {
        of: of.into(),
        mass: grams(g),
        stuff: ThermalMaterial::Food(matter),
        temperature: celsius(t),
    }
}

/// A shape of this food, 60 mm thick, straight from a fridge.
fn lump(mass: f64, matter: &Matter) -> Body {
    let half = Length::from_metres(0.03).unwrap();
    Body::of(
        matter,
        grams(mass),
        Shape::Sphere,
        half,
        (celsius(4.0), celsius(18.0)),
    )
    .unwrap()
}

/// A small dough on a cold morning: paste, preferment and milk straight from the fridge at 4 °C,
/// the rest and the bowl at 17 °C.
fn cold_morning() -> Dough {
    let flour = matter(1);
    let wet = |flour_g: f64, liquid_g: f64| {
        Matter::blend(&[(grams(flour_g), flour), (grams(liquid_g), Matter::WATER)]).unwrap()
    };
    let (paste, preferment) = (wet(30.0, 60.0), wet(160.0, 90.0));
    let item = |component: HeatPart, handling| DoughItem {
        component,
        handling,
    };
    Dough {
        items: vec![
            item(
                food("paste", 88.0, paste, 4.0),
                LiquidUse::Standing(lump(88.0, &paste)),
            ),
            item(
                food("preferment", 250.0, preferment, 4.0),
                LiquidUse::Standing(lump(250.0, &preferment)),
            ),
            item(food("milk", 45.0, matter(300), 4.0), LiquidUse::Liquid),
            item(food("flour", 110.0, flour, 17.0), LiquidUse::Flour),
            item(
                food("sugar and salt", 30.0, matter(300), 17.0),
                LiquidUse::AsItIs,
            ),
            item(food("butter", 30.0, matter(500), 17.0), LiquidUse::AsItIs),
        ],
        vessel: Some(Vessel::new(Material::Steel, grams(900.0), celsius(17.0)).unwrap()),
        dry_flour: grams(110.0),
        friction: WarmingRate::from_kelvin_per_minute(1.0).unwrap(),
        friction_spread: Dough::FRICTION_SPREAD,
        minutes: Minutes::ZERO,
        usual: Minutes::from_minutes(8.0).unwrap(),
        stood: Minutes::ZERO,
        room: celsius(17.0),
    }
}

fn around() -> Surroundings {
    Surroundings {
        room: celsius(17.0),
        fridge: celsius(4.0),
        freezer: celsius(-18.0),
        liquid: LiquidRange::default(),
    }
}

/// Common practice: with paste, preferment and milk straight from the fridge a small dough starts
/// under 12 °C.
#[test]
fn a_small_dough_of_cold_parts_starts_under_12() {
    let start = dough_temperature(&cold_morning())
        .unwrap()
        .temperature
        .celsius();
    assert!((6.0..12.0).contains(&start), "{start}");
}

/// Common practice: then no milk brings it to 25 °C; standing out and mixing longer help.
#[test]
fn no_milk_brings_a_dough_of_cold_parts_to_25_and_the_answer_says_what_does() {
    let dough = Dough {
        minutes: Minutes::from_minutes(8.0).unwrap(),
        ..cold_morning()
    };
    let LiquidAnswer::OutOfReach(answer) =
        liquid_for(&dough, celsius(25.0), around().liquid).unwrap()
    else {
        panic!("reached");
    };
    agrees(answer.best.celsius(), "40");
    assert!(answer.wanted.is_none_or(|wanted| wanted > celsius(40.0)));
    assert!(answer.short.kelvin() > 0.5, "{:?}", answer.short);
    let remedies = dough_remedies(&dough.poured_at(answer.best), celsius(25.0), &around()).unwrap();
    let has = |wanted: fn(&DoughStep) -> bool| remedies.iter().any(|remedy| wanted(&remedy.step));
    assert!(has(|step| matches!(step, DoughStep::StandOut { .. })));
    assert!(has(|step| matches!(step, DoughStep::MixLonger { .. })));
    assert!(has(|step| matches!(step, DoughStep::WarmBowl { .. })));
    let enough: Vec<_> = remedies.iter().map(|remedy| remedy.enough).collect();
    assert!(
        enough.is_sorted_by(|one, other| one >= other),
        "{remedies:?}"
    );
}

/// Each remedy, done, brings the dough where it says.
#[test]
fn a_remedy_done_brings_the_dough_where_it_said() {
    let dough = Dough {
        minutes: Minutes::from_minutes(8.0).unwrap(),
        ..cold_morning()
    };
    let LiquidAnswer::OutOfReach(answer) =
        liquid_for(&dough, celsius(25.0), around().liquid).unwrap()
    else {
        panic!("reached");
    };
    let at_best = dough.poured_at(answer.best);
    let mut held = 0;
    for remedy in &dough_remedies(&at_best, celsius(25.0), &around()).unwrap() {
        if remedy.steps().count() > 1 {
            continue;
        }
        let mut done = at_best.clone();
        match remedy.step {
            DoughStep::MixLonger { minutes } => {
                done.minutes = Minutes::from_minutes(8.0 + minutes.minutes()).unwrap();
            }
            DoughStep::WarmBowl { to } => done.vessel.as_mut().unwrap().temperature = to,
            DoughStep::WarmFlour { to } => done.items[3].component.temperature = to,
            DoughStep::WarmLiquid { .. }
            | DoughStep::ChillLiquid { .. }
            | DoughStep::StandOut { .. }
            | DoughStep::MixShorter { .. }
            | DoughStep::Ice { .. }
            | DoughStep::ChillFlour { .. }
            | DoughStep::ChillBowl { .. } => continue,
        }
        let reaches = dough_temperature(&done).unwrap().temperature.celsius();
        agrees_within(remedy.reaches.celsius(), &reaches.to_string(), 1e-6);
        held += 1;
    }
    assert_eq!(held, 2);
}

/// A target within reach: pouring the liquid as told makes the dough as wished.
#[test]
fn liquid_poured_as_advised_makes_the_dough_as_wished() {
    let dough = Dough {
        minutes: Minutes::from_minutes(8.0).unwrap(),
        ..cold_morning()
    };
    for target in [18.5, 19.5, 20.0] {
        let LiquidAnswer::At {
            liquid,
            dough: made,
        } = liquid_for(&dough, celsius(target), around().liquid).unwrap()
        else {
            panic!("{target} not reached");
        };
        assert!((0.0..=40.0).contains(&liquid.celsius()));
        agrees_within(made.temperature.celsius(), &target.to_string(), 1e-6);
    }
}

/// 500 g of flour at 30 °C, 300 g of water, ten minutes at a fast speed.
fn warm_kitchen() -> Dough {
    let item = |component, handling| DoughItem {
        component,
        handling,
    };
    Dough {
        items: vec![
            item(food("flour", 500.0, matter(1), 30.0), LiquidUse::Flour),
            item(food("water", 300.0, Matter::WATER, 25.0), LiquidUse::Water),
        ],
        vessel: None,
        dry_flour: grams(500.0),
        friction: WarmingRate::from_kelvin_per_minute(1.5).unwrap(),
        friction_spread: Dough::FRICTION_SPREAD,
        minutes: Minutes::from_minutes(10.0).unwrap(),
        usual: Minutes::from_minutes(10.0).unwrap(),
        stood: Minutes::ZERO,
        room: celsius(30.0),
    }
}

/// A warm kitchen and a long mix: ice in place of water brings the dough down to the target.
#[test]
fn ice_in_a_warm_kitchen_brings_the_dough_down_to_its_target() {
    let dough = warm_kitchen();
    let warm = Surroundings {
        room: celsius(30.0),
        ..around()
    };
    let LiquidAnswer::OutOfReach(answer) = liquid_for(&dough, celsius(24.0), warm.liquid).unwrap()
    else {
        panic!("reached");
    };
    agrees(answer.best.celsius(), "0");
    let remedies = dough_remedies(&dough.poured_at(answer.best), celsius(24.0), &warm).unwrap();
    let first = remedies.first().unwrap();
    let DoughStep::Ice { ice } = first.step else {
        panic!("{first:?}");
    };
    assert!(first.enough);
    // The bowl is composed by hand: the water at 0 °C less the ice, and the ice at −18 °C.
    let mut done = dough.poured_at(celsius(0.0));
    done.items[1].component.mass = grams(300.0).less(ice);
    done.items.push(DoughItem {
        component: HeatPart {
            of: "ice".into(),
            mass: ice,
            stuff: ThermalMaterial::Ice,
            temperature: celsius(-18.0),
        },
        handling: LiquidUse::AsItIs,
    });
    agrees_within(
        dough_temperature(&done).unwrap().temperature.celsius(),
        "24",
        1e-6,
    );
}

/// Common practice: dough with milk or egg stands out two hours at the most, in all. What has stood
/// an hour is never told to stand more than another.
#[test]
fn nothing_is_told_to_stand_out_for_more_than_two_hours_in_all() {
    for stood in [0.0, 60.0, 119.5, 120.0, 240.0] {
        let dough = Dough {
            stood: Minutes::from_minutes(stood).unwrap(),
            ..cold_morning()
        };
        let remedies = dough_remedies(&dough, celsius(25.0), &around()).unwrap();
        let mut told: Vec<f64> = Vec::new();
        for step in remedies.iter().flat_map(DoughRemedy::steps) {
            if let DoughStep::StandOut { minutes } = step {
                told.push(minutes.minutes());
            }
        }
        assert!(
            told.iter().all(|told| (stood..=120.0).contains(told)),
            "{told:?}"
        );
        assert_eq!(told.is_empty(), stood > 119.0, "{stood} min: {told:?}");
    }
}
