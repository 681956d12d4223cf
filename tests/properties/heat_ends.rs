//! Questions about heat at the ends of every range are answered or refused.

use softcrumb::engine::heat::{
    Air, Body, Cooling, CoolingFactors, CoolingVessel, Dough, DoughItem, Exposure, HeatPart,
    LiquidUse, Matter, RuleSet, Shape, ThermalMaterial, advise, boiling_at, boiling_under, ice_for,
    mix, quickest, simulate, stand,
};
use softcrumb::engine::quantity::{
    Altitude, Heat, Length, Mass, Pressure, SurfaceCoefficient, Temperature, WarmingRate,
};

use crate::heat_cases::{celsius, grams, minutes};

/// The ends of a range, their neighbours, and some between.
fn ends(low: f64, high: f64) -> [f64; 7] {
    let middle = f64::midpoint(low, high);
    [
        low,
        low.next_up(),
        low.midpoint(middle),
        middle,
        middle.midpoint(high),
        high.next_down(),
        high,
    ]
}

#[test]
fn water_boils_somewhere_at_every_altitude_and_pressure() {
    for metres in ends(*Altitude::RANGE.start(), *Altitude::RANGE.end()) {
        boiling_at(Altitude::from_metres(metres).unwrap()).unwrap();
    }
    for hectopascals in ends(*Pressure::RANGE.start(), *Pressure::RANGE.end()) {
        boiling_under(Pressure::from_hectopascals(hectopascals).unwrap()).unwrap();
    }
}

#[test]
fn mixes_at_the_ends_of_their_ranges_are_answered_or_refused() {
    let masses = ends(0.0, *Mass::RANGE.end());
    let temperatures = ends(*Temperature::RANGE.start(), *Temperature::RANGE.end());
    for stuff in [
        ThermalMaterial::Food(Matter::WATER),
        ThermalMaterial::Ice,
        ThermalMaterial::Food(Matter::ICE),
    ] {
        for mass in masses {
            for t in temperatures {
                for other in temperatures {
                    let component = |mass, stuff, t| HeatPart {
                        of: "".into(),
                        mass: grams(mass),
                        stuff,
                        temperature: celsius(t),
                    };
                    let components = [
                        component(mass, stuff, t),
                        component(50.0, ThermalMaterial::Food(Matter::WATER), other),
                    ];
                    if let Ok(mixed) = mix(&components, Heat::ZERO) {
                        assert!(mixed.temperature.celsius().is_finite());
                        assert!(mixed.capacity.joules_per_kelvin() > 0.0);
                    }
                }
            }
        }
    }
}

#[test]
fn cooling_at_the_ends_of_every_range_is_answered() {
    let h = ends(
        *SurfaceCoefficient::RANGE.start(),
        *SurfaceCoefficient::RANGE.end(),
    );
    for half in ends(*Length::RANGE.start(), *Length::RANGE.end()) {
        for shape in Shape::ALL {
            for h in h {
                for (start, air) in [(-40.0, 350.0), (350.0, -40.0), (20.0, 20.0)] {
                    let half = Length::from_metres(half).unwrap();
                    let between = (celsius(start), celsius(air));
                    let body = Body::of(&Matter::WATER, grams(0.0), shape, half, between).unwrap();
                    let coefficient =
                        SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap();
                    let air = Air {
                        temperature: celsius(air),
                        coefficient,
                    };
                    for m in [0.0, 1e-9, 720.0, 40_000.0] {
                        let curve = simulate(
                            &body,
                            celsius(start),
                            &[Exposure {
                                minutes: minutes(m),
                                air,
                            }],
                        );
                        let end = *curve.unwrap().end().unwrap();
                        assert!(
                            end.mean.celsius().is_finite() && end.surface.celsius().is_finite()
                        );
                    }
                }
            }
        }
    }
}

#[test]
fn advice_on_cooling_and_standing_is_given_for_every_rule_set_and_size() {
    for rules in RuleSet::ALL {
        for half in [0.002, 0.02, 0.2] {
            for start in [-10.0, 4.0, 30.0, 100.0] {
                let cooling = Cooling {
                    factors: CoolingFactors::default(),
                    food: Matter::WATER,
                    mass: grams(25_000.0 * half),
                    start: celsius(start),
                    room: celsius(20.0),
                    fridge: celsius(4.0),
                    lid: start > 20.0,
                    bowl: None,
                    rules,
                };
                for vessel in CoolingVessel::ALL {
                    let times = (minutes(60.0), minutes(5.0));
                    let way = cooling.way(vessel, None, times).unwrap();
                    let slow = cooling.cool(&way).unwrap().slow;
                    let advice = advise(&cooling, &way).unwrap();
                    assert!(!slow.passes || advice.remedies.is_empty());
                    assert!(start > 5.0 || slow.passes);
                    assert!(slow.passes || quickest(&cooling, (vessel, None)).unwrap().passes);
                }
                let half = Length::from_metres(half).unwrap();
                let between = (celsius(start), celsius(4.0));
                let body =
                    Body::of(&Matter::WATER, grams(500.0), Shape::Slab, half, between).unwrap();
                let _ = stand(
                    &body,
                    celsius(start),
                    Air::still(celsius(20.0)),
                    celsius(16.0),
                );
            }
        }
    }
}

fn hot_water(mass: f64) -> Cooling {
    Cooling {
        factors: CoolingFactors::default(),
        food: Matter::WATER,
        mass: grams(mass),
        start: celsius(65.0),
        room: celsius(20.0),
        fridge: celsius(4.0),
        lid: true,
        bowl: None,
        rules: RuleSet::UnitedStates,
    }
}

/// More of a food in the same vessel never cools faster, in air, ice water or fridge.
#[test]
fn more_in_the_same_vessel_never_cools_faster() {
    for (vessel, across) in [
        (CoolingVessel::Bowl, 0.145),
        (CoolingVessel::Bowl, 0.24),
        (CoolingVessel::Dish, 0.25),
        (CoolingVessel::Jar, 0.08),
        (CoolingVessel::Bag, 0.25),
    ] {
        for (bench, ice, lid) in [(30.0, 0.0, true), (30.0, 0.0, false), (0.0, 30.0, true)] {
            let mut before = [0.0; 3];
            for mass in [60.0, 119.0, 180.0, 226.0, 500.0, 900.0, 1700.0] {
                let cooling = Cooling {
                    factors: CoolingFactors::default(),
                    lid,
                    ..hot_water(mass)
                };
                let across = Length::from_metres(across).unwrap();
                let way = cooling
                    .way(vessel, Some(across), (minutes(bench), minutes(ice)))
                    .unwrap();
                let cooled = cooling.cool(&way).unwrap();
                for (curve, before) in [&cooled.quick, &cooled.middle, &cooled.slow]
                    .into_iter()
                    .zip(&mut before)
                {
                    let ended = curve.stages[0]
                        .ended
                        .map_or(f64::MAX, |ended| ended.minutes());
                    // A minute less is allowed, because the grid grows with the depth.
                    assert!(
                        ended >= *before - 1.0,
                        "{vessel:?} {mass} g: {ended} {before}"
                    );
                    *before = ended;
                }
            }
        }
    }
}

#[test]
fn ice_is_never_more_than_the_water() {
    let item = |stuff, mass, t, handling| DoughItem {
        component: HeatPart {
            of: "".into(),
            mass: grams(mass),
            stuff,
            temperature: celsius(t),
        },
        handling,
    };
    for water in [0.1, 10.0, 400.0] {
        for target in [0.0, 10.0, 24.0, 60.0] {
            let dough = Dough {
                items: vec![
                    item(
                        ThermalMaterial::Food(Matter::WATER),
                        water,
                        20.0,
                        LiquidUse::Water,
                    ),
                    item(
                        ThermalMaterial::Food(Matter::WATER),
                        500.0,
                        30.0,
                        LiquidUse::Flour,
                    ),
                ],
                vessel: None,
                dry_flour: grams(300.0),
                friction: WarmingRate::from_kelvin_per_minute(0.0).unwrap(),
                friction_spread: Dough::FRICTION_SPREAD,
                minutes: minutes(5.0),
                usual: minutes(5.0),
                stood: softcrumb::engine::quantity::Minutes::ZERO,
                room: celsius(20.0),
            };
            let answer = ice_for(&dough, celsius(target), celsius(-18.0)).unwrap();
            assert!(answer.ice.grams() <= water);
            assert!(answer.falls_short || answer.temperature.celsius() <= target + 1e-9);
        }
    }
}
