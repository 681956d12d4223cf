//! Heat is kept, goes the way it must, and every question about it is answered.

use proptest::prelude::*;
use proptest::sample::select;
use softcrumb::engine::chocolate::{Melting, melt, melt_remedies};
use softcrumb::engine::heat::{
    Air, Body, Cooling, Dough, Grain, Handling, Item, LiquidAnswer, LiquidRange, Material, Matter,
    Part, Paste, RuleSet, Scalded, Shape, Shift, Stay, Stuff, Surroundings, Vessel, advise,
    boiling_at, boiling_under, cook, cool, dough_temperature, follow, ice_for, ice_in_water,
    latent_heat_of_fusion, liquid_for, mix, stand,
};
use softcrumb::engine::larder::Listed;
use softcrumb::engine::quantity::{
    Altitude, Heat, Length, Mass, Minutes, Pressure, Share, SurfaceCoefficient, Temperature,
    TemperatureChange, WarmingRate,
};

use crate::dough::cases;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

fn any_matter() -> impl Strategy<Value = Matter> {
    let all: Vec<_> = Listed::all()
        .map(|food| Matter::of(&food.row().composition).unwrap())
        .collect();
    select(all)
}

fn any_stuff() -> impl Strategy<Value = Stuff> {
    prop_oneof![
        6 => any_matter().prop_map(Stuff::Food),
        1 => select(&Material::ALL[..]).prop_map(|one| Stuff::Plain(one.specific_heat())),
    ]
}

fn any_part() -> impl Strategy<Value = Part> {
    (any_stuff(), 0.1..2000.0f64, 0.0..110.0f64).prop_map(|(stuff, mass, t)| Part {
        of: "".into(),
        mass: grams(mass),
        stuff,
        temperature: celsius(t),
    })
}

/// Heat from one temperature to another by Simpson's rule, which is exact for the curves above
/// 0 °C and shares nothing with the engine's own integrals.
fn took(stuff: &Stuff, mass: Mass, from: f64, to: f64) -> f64 {
    let at = |t: f64| match stuff {
        Stuff::Food(matter) => {
            let here = Shift {
                from: celsius(t),
                to: celsius(t),
            };
            matter
                .specific_heat(here)
                .unwrap()
                .joules_per_kilogram_kelvin()
        }
        Stuff::Plain(level) => level.joules_per_kilogram_kelvin(),
        Stuff::Ice => panic!("ice is counted apart"),
    };
    let mean = (at(from) + 4.0 * at(f64::midpoint(from, to)) + at(to)) / 6.0;
    mass.grams() / 1000.0 * mean * (to - from)
}

proptest! {
    #![proptest_config(cases(100_000))]

    #[test]
    fn heat_is_kept_in_every_mix(
        parts in prop::collection::vec(any_part(), 1..7),
        gained in 0.0..20_000.0f64,
    ) {
        // Off the scale is an answer too: a pinch of flour with all of that heat.
        let Ok(mixed) = mix(&parts, Heat::from_joules(gained)) else { return Ok(()) };
        let end = mixed.temperature.celsius();
        let all: f64 = parts
            .iter()
            .map(|part| took(&part.stuff, part.mass, part.temperature.celsius(), end))
            .sum();
        let scale: f64 = mixed.capacity.joules_per_kelvin() * 100.0 + gained;
        prop_assert!((all - gained).abs() <= 1e-9 * scale, "{all} for {gained}");
        let given: f64 = mixed.parts.iter().map(|part| part.took.joules()).sum();
        prop_assert!((given - gained).abs() <= 1e-9 * scale, "{given} for {gained}");
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn a_mix_lies_between_its_parts_and_follows_each(
        parts in prop::collection::vec(any_part(), 2..6),
        warmer in 0.1..30.0f64,
    ) {
        let t = |part: &Part| part.temperature.celsius();
        let low = parts.iter().map(t).fold(f64::INFINITY, f64::min);
        let high = parts.iter().map(t).fold(f64::NEG_INFINITY, f64::max);
        let end = mix(&parts, Heat::ZERO).unwrap().temperature.celsius();
        prop_assert!((low - 1e-9..=high + 1e-9).contains(&end));
        let mut more = parts.clone();
        more[0].temperature = celsius(t(&parts[0]) + warmer);
        prop_assert!(mix(&more, Heat::ZERO).unwrap().temperature.celsius() > end);
    }

    #[test]
    fn ice_that_melts_keeps_heat(
        ice in 1.0..200.0f64,
        frozen in -25.0..0.0f64,
        water in 1000.0..3000.0f64,
        t in 20.0..90.0f64,
    ) {
        let parts = [
            Part {
                of: "ice".into(),
                mass: grams(ice),
                stuff: Stuff::Ice,
                temperature: celsius(frozen),
            },
            Part {
                of: "water".into(),
                mass: grams(water),
                stuff: Stuff::Food(Matter::WATER),
                temperature: celsius(t),
            },
        ];
        let end = mix(&parts, Heat::ZERO).unwrap().temperature.celsius();
        let stuff = Stuff::Food(Matter::WATER);
        let warms = took(&stuff, grams(ice), 0.0, end) + took(&stuff, grams(water), t, end);
        let cold = Shift { from: celsius(frozen), to: celsius(0.0) };
        let of_ice = Matter::ICE.specific_heat(cold).unwrap().joules_per_kilogram_kelvin();
        let melts = ice * (latent_heat_of_fusion().joules_per_gram() - of_ice * frozen / 1000.0);
        prop_assert!((warms + melts).abs() <= 1e-9 * water * 400.0, "{warms} {melts}");
    }
}

fn any_body() -> impl Strategy<Value = Body> {
    (
        any_matter(),
        select(&Shape::ALL[..]),
        0.002..0.15f64,
        10.0..3000.0f64,
    )
        .prop_map(|(matter, shape, half, mass)| {
            let half = Length::from_metres(half).unwrap();
            Body::of(
                &matter,
                grams(mass),
                shape,
                half,
                (celsius(60.0), celsius(10.0)),
            )
            .unwrap()
        })
}

fn any_stay() -> impl Strategy<Value = Stay> {
    (0.0..800.0f64, -20.0..100.0f64, 1.0..500.0f64).prop_map(|(m, t, h)| Stay {
        minutes: minutes(m),
        air: Air {
            temperature: celsius(t),
            coefficient: SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap(),
        },
    })
}

proptest! {
    #![proptest_config(cases(1000))]

    #[test]
    fn heat_is_kept_in_every_cooling(
        body in any_body(),
        start in 0.0..100.0f64,
        stays in prop::collection::vec(any_stay(), 1..4),
    ) {
        let curve = follow(&body, celsius(start), &stays).unwrap();
        let end = curve.end().unwrap().mean.celsius();
        let capacity = (body.specific_heat * body.mass).joules_per_kelvin();
        let held = capacity * (start - end);
        prop_assert!((held - curve.lost.joules()).abs() <= 1e-8 * capacity * 100.0);
    }

    #[test]
    fn cooling_only_cools_the_middle_last_and_a_thinner_body_faster(
        body in any_body(),
        start in 60.0..100.0f64,
        air in -5.0..30.0f64,
        h in 1.0..300.0f64,
    ) {
        let coefficient = SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap();
        let stay = Stay { minutes: minutes(240.0), air: Air { temperature: celsius(air), coefficient } };
        let curve = follow(&body, celsius(start), &[stay]).unwrap();
        for pair in curve.moments.windows(2) {
            prop_assert!(pair[1].mean.celsius() <= pair[0].mean.celsius() + 1e-9);
            // The centre is read from the two innermost cells: a hundredth of a degree is theirs.
            prop_assert!(pair[1].centre.celsius() <= pair[0].centre.celsius() + 0.01);
            prop_assert!(pair[1].surface.celsius() <= pair[1].centre.celsius() + 0.01);
            prop_assert!(pair[1].mean.celsius() >= air - 1e-9);
        }
        let thinner = Body { half: Length::from_metres(body.half.metres() * 0.8).unwrap(), ..body };
        let faster = follow(&thinner, celsius(start), &[stay]).unwrap();
        prop_assert!(faster.end().unwrap().mean.celsius() <= curve.end().unwrap().mean.celsius() + 1e-6);
    }
}

fn any_dough() -> impl Strategy<Value = Dough> {
    let handlings = [
        Handling::Water,
        Handling::Liquid,
        Handling::Flour,
        Handling::AsItIs,
    ];
    let item = (any_part(), select(handlings.to_vec()))
        .prop_map(|(part, handling)| Item { part, handling });
    let standing = (any_body(), any_matter(), 0.0..10.0f64).prop_map(|(body, matter, t)| Item {
        part: Part {
            of: "".into(),
            mass: body.mass,
            stuff: Stuff::Food(matter),
            temperature: celsius(t),
        },
        handling: Handling::Standing(body),
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
            minutes: minutes(m),
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
    fn the_liquid_that_is_told_makes_the_dough_that_was_asked(
        dough in any_dough(),
        target in 5.0..40.0f64,
    ) {
        match liquid_for(&dough, celsius(target), &around()) {
            Ok(LiquidAnswer::At { liquid, dough: made }) => {
                prop_assert!((0.0..=43.0).contains(&liquid.celsius()));
                prop_assert!((made.temperature.celsius() - target).abs() < 1e-6);
            }
            Ok(LiquidAnswer::OutOfReach(answer)) => {
                let warmest = dough_temperature(&dough.poured_at(celsius(43.0))).unwrap();
                let coldest = dough_temperature(&dough.poured_at(celsius(0.0))).unwrap();
                prop_assert!(
                    warmest.temperature.celsius() < target + 1e-6
                        || coldest.temperature.celsius() > target - 1e-6
                );
                let short = answer.short.kelvin().abs();
                for remedy in &answer.remedies {
                    let left = (target - remedy.reaches.celsius()).abs();
                    prop_assert!(left <= short + 0.1, "{remedy:?} for {target}");
                    prop_assert_eq!(remedy.enough, left <= 0.1);
                }
            }
            Err(_) => {
                let liquid = dough.items.iter().any(|item| {
                    matches!(item.handling, Handling::Water | Handling::Liquid)
                });
                // With a liquid only a dough off the thermometer's scale has no answer.
                prop_assert!(!liquid || dough_temperature(&dough.poured_at(celsius(43.0))).is_err());
            }
        }
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
                matter: Matter::of(&row.composition).unwrap(),
                starch: row.composition.starch,
                grain,
                temperature: celsius(room),
            }],
            others: Vec::new(),
            liquid: grams(flour * ratio),
            liquid_matter: Matter::WATER,
            boils: celsius(boils),
            drop: TemperatureChange::from_kelvin(2.0).unwrap(),
            vessel: Some(Vessel::new(Material::Ceramic, grams(bowl), celsius(room)).unwrap()),
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
        Stuff::Food(Matter::WATER),
        Stuff::Ice,
        Stuff::Food(Matter::ICE),
    ] {
        for mass in masses {
            for t in temperatures {
                for other in temperatures {
                    let part = |mass, stuff, t| Part {
                        of: "".into(),
                        mass: grams(mass),
                        stuff,
                        temperature: celsius(t),
                    };
                    let parts = [
                        part(mass, stuff, t),
                        part(50.0, Stuff::Food(Matter::WATER), other),
                    ];
                    if let Ok(mixed) = mix(&parts, Heat::ZERO) {
                        assert!(mixed.temperature.celsius().is_finite());
                        assert!(mixed.capacity.joules_per_kelvin() > 0.0);
                    }
                    let _ = ice_in_water(grams(mass), celsius(t), celsius(other), celsius(-1.0));
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
                        let curve = follow(
                            &body,
                            celsius(start),
                            &[Stay {
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
                let half = Length::from_metres(half).unwrap();
                let between = (celsius(start), celsius(4.0));
                let body =
                    Body::of(&Matter::WATER, grams(500.0), Shape::Slab, half, between).unwrap();
                let cooling = Cooling {
                    body,
                    start: celsius(start),
                    bench: Air::still(celsius(20.0)),
                    on_bench: minutes(60.0),
                    fridge: Air::still(celsius(4.0)),
                    rules,
                };
                let (cooled, advice) = (cool(&cooling).unwrap(), advise(&cooling).unwrap());
                assert!(!cooled.passes || advice.remedies.is_empty());
                assert!(start > 5.0 || cooled.passes);
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

#[test]
fn ice_is_never_more_than_the_water() {
    let item = |stuff, mass, t, handling| Item {
        part: Part {
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
                    item(Stuff::Food(Matter::WATER), water, 20.0, Handling::Water),
                    item(Stuff::Food(Matter::WATER), 500.0, 30.0, Handling::Flour),
                ],
                vessel: None,
                dry_flour: grams(300.0),
                friction: WarmingRate::from_kelvin_per_minute(0.0).unwrap(),
                minutes: minutes(5.0),
            };
            let answer = ice_for(&dough, celsius(target), celsius(-18.0)).unwrap();
            assert!(answer.ice.grams() <= water);
            assert!(answer.falls_short || answer.temperature.celsius() <= target + 1e-9);
        }
    }
}
