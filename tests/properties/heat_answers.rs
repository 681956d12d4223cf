//! Answers about heat do what they say, and go the way they must.

use proptest::prelude::*;
use proptest::sample::select;
use softcrumb::engine::chocolate::{Melting, melt, melt_remedies};
use softcrumb::engine::heat::{
    Dough, DoughItem, DoughStep, Grain, HeatPart, LiquidAnswer, LiquidRange, LiquidUse, Material,
    Matter, Paste, Scalded, Surroundings, ThermalMaterial, Vessel, cook, dough_remedies,
    dough_temperature, liquid_for,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Length, Share, TemperatureChange, WarmingRate};

use crate::dough::cases;
use crate::heat_cases::{any_body, any_matter, any_part, celsius, grams, minutes};

fn any_dough() -> impl Strategy<Value = Dough> {
    let handlings = [
        LiquidUse::Water,
        LiquidUse::Liquid,
        LiquidUse::Flour,
        LiquidUse::AsItIs,
    ];
    let item =
        (any_part(), select(handlings.to_vec())).prop_map(|(component, handling)| DoughItem {
            component,
            handling,
        });
    let standing =
        (any_body(), any_matter(), 0.0..10.0f64).prop_map(|(body, matter, t)| DoughItem {
            component: HeatPart {
                of: "".into(),
                mass: body.mass,
                stuff: ThermalMaterial::Food(matter),
                temperature: celsius(t),
            },
            handling: LiquidUse::Standing(body),
        });
    let items = prop::collection::vec(prop_oneof![4 => item, 1 => standing], 1..7);
    (
        items,
        0.0..2000.0f64,
        0.0..600.0f64,
        0.0..3.0f64,
        0.0..20.0f64,
    )
        .prop_map(|(items, bowl, flour, rate, m)| Dough {
            items,
            vessel: Some(Vessel::new(Material::Steel, grams(bowl), celsius(18.0)).unwrap()),
            dry_flour: grams(flour),
            friction: WarmingRate::from_kelvin_per_minute(rate).unwrap(),
            friction_spread: Dough::FRICTION_SPREAD,
            minutes: minutes(m),
            usual: minutes(9.0),
            stood: softcrumb::engine::quantity::Minutes::ZERO,
            room: celsius(20.0),
        })
}

fn around() -> Surroundings {
    Surroundings {
        room: celsius(20.0),
        fridge: celsius(4.0),
        freezer: celsius(-18.0),
        liquid: LiquidRange::default(),
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn the_liquid_that_is_advised_makes_the_dough_that_was_asked(
        dough in any_dough(),
        target in 5.0..40.0f64,
    ) {
        match liquid_for(&dough, celsius(target), around().liquid) {
            Ok(LiquidAnswer::At { liquid, dough: made }) => {
                prop_assert!((0.0..=40.0).contains(&liquid.celsius()));
                prop_assert!((made.temperature.celsius() - target).abs() < 1e-6);
            }
            Ok(LiquidAnswer::OutOfReach(answer)) => {
                let warmest = dough_temperature(&dough.poured_at(celsius(40.0))).unwrap();
                let coldest = dough_temperature(&dough.poured_at(celsius(0.0))).unwrap();
                prop_assert!(
                    warmest.temperature.celsius() < target + 1e-6
                        || coldest.temperature.celsius() > target - 1e-6
                );
                let short = answer.short.kelvin().abs();
                let at_best = dough.poured_at(answer.best);
                for remedy in &dough_remedies(&at_best, celsius(target), &around()).unwrap() {
                    let left = (target - remedy.reaches.celsius()).abs();
                    prop_assert!(left <= short + 0.2, "{remedy:?} for {target}");
                    prop_assert_eq!(remedy.enough, left <= 0.2);
                    if let DoughStep::MixLonger { minutes } | DoughStep::MixShorter { minutes } =
                        remedy.step
                    {
                        let halves = 2.0 * minutes.minutes();
                        prop_assert!(halves >= 1.0 && halves.fract() == 0.0);
                    }
                    if let DoughStep::MixLonger { minutes } = remedy.step {
                        let all = dough.minutes.minutes() + minutes.minutes();
                        prop_assert!(all <= 1.5 * dough.usual.minutes());
                    }
                }
            }
            Err(_) => {
                let liquid = dough.items.iter().any(|item| {
                    matches!(item.handling, LiquidUse::Water | LiquidUse::Liquid)
                });
                // A dough with a liquid has an answer, unless it is off the thermometer's scale.
                prop_assert!(!liquid || dough_temperature(&dough.poured_at(celsius(40.0))).is_err());
            }
        }
    }

    #[test]
    fn more_friction_and_a_warmer_room_never_make_a_dough_colder(
        dough in any_dough(),
        more in 0.01..2.0f64,
    ) {
        let Ok(base) = dough_temperature(&dough) else { return Ok(()) };
        prop_assert!(base.low < base.temperature && base.temperature < base.high);
        let rate = dough.friction.kelvin_per_minute() + more;
        let rubbed = Dough {
            friction: WarmingRate::from_kelvin_per_minute(rate).unwrap(),
            ..dough.clone()
        };
        let warmer = Dough {
            room: celsius(20.0 + 10.0 * more),
            ..dough.clone()
        };
        for other in [rubbed, warmer] {
            prop_assert!(dough_temperature(&other).unwrap().temperature >= base.temperature);
        }
        // The room alone never takes a dough past itself.
        let idle = Dough {
            friction: WarmingRate::from_kelvin_per_minute(0.0).unwrap(),
            ..dough.clone()
        };
        let idle = dough_temperature(&idle).unwrap();
        let (settled, room) = (idle.mixed.temperature, dough.room);
        let (low, high) = if settled < room { (settled, room) } else { (room, settled) };
        let t = idle.temperature.celsius();
        prop_assert!(t >= low.celsius() - 1e-9 && t <= high.celsius() + 1e-9);
    }

    #[test]
    fn more_and_hotter_water_never_makes_a_paste_colder(
        flour in 10.0..500.0f64,
        ratio in 0.3..6.0f64,
        more in 1.01..2.0f64,
        bowl in 0.0..2000.0f64,
        room in 0.0..40.0f64,
        grain in select(&Grain::ALL[..]),
    ) {
        let row = Listed::numbered(1).unwrap().row();
        let of = |ratio: f64, boils: f64| Paste {
            flours: vec![Scalded {
                of: "".into(),
                mass: grams(flour),
                matter: Matter::of(&row.composition()).unwrap(),
                starch: row.composition().starch,
                grain,
                temperature: celsius(room),
            }],
            others: Vec::new(),
            liquid: grams(flour * ratio),
            liquid_matter: Matter::WATER,
            boils: celsius(boils),
            drop: TemperatureChange::from_kelvin(2.0).unwrap(),
            vessel: Some(Vessel::new(Material::Ceramic, grams(bowl), celsius(room)).unwrap()),
            stirring: None,
        };
        let (base, hot) = (cook(&of(ratio, 95.0)).unwrap(), cook(&of(ratio, 100.0)).unwrap());
        prop_assert!(hot.temperature > base.temperature);
        prop_assert!(hot.cooked >= base.cooked);
        let wet = cook(&of(ratio * more, 95.0)).unwrap();
        prop_assert!(wet.cooked >= base.cooked);
    }

    #[test]
    fn hotter_and_more_liquid_never_leaves_more_lumps(
        chocolate in 10.0..1000.0f64,
        ratio in 0.05..3.0f64,
        room in 5.0..30.0f64,
        liquid_at in 40.0..90.0f64,
        fat in 0.2..0.55f64,
    ) {
        let of = |ratio: f64, liquid_at: f64| Melting {
            chocolate: grams(chocolate),
            fat: Share::from_fraction(fat).unwrap(),
            chocolate_at: celsius(room),
            pieces: Some(Length::from_metres(0.02).unwrap()),
            liquid: grams(chocolate * ratio),
            liquid_matter: Matter::WATER,
            liquid_at: celsius(liquid_at),
            liquid_at_most: celsius(98.0),
            vessel: Some(Vessel::new(Material::Glass, grams(300.0), celsius(room)).unwrap()),
        };
        let base = melt(&of(ratio, liquid_at)).unwrap();
        prop_assert!(melt(&of(ratio, liquid_at + 5.0)).unwrap().unmelted <= base.unmelted);
        prop_assert!(melt(&of(ratio * 1.2, liquid_at)).unwrap().unmelted <= base.unmelted);
        prop_assert!(melt_remedies(&of(ratio, liquid_at), &base).is_ok());
    }
}
