//! Heat is conserved in every mix and in every cooling.

use proptest::prelude::*;
use softcrumb::engine::heat::{
    Air, Body, Exposure, HeatPart, Matter, TemperatureStep, ThermalMaterial, latent_heat_of_fusion,
    mix, simulate,
};
use softcrumb::engine::quantity::{Heat, Length, Mass, SurfaceCoefficient};

use crate::dough::cases;
use crate::heat_cases::{any_body, any_part, any_stay, celsius, grams, minutes};

/// Heat from one temperature to another by Simpson's rule, which is exact for the curves above
/// 0 °C and shares nothing with the engine's own integrals.
fn took(stuff: &ThermalMaterial, mass: Mass, from: f64, to: f64) -> f64 {
    let at = |t: f64| match stuff {
        ThermalMaterial::Food(matter) => {
            let here = TemperatureStep {
                from: celsius(t),
                to: celsius(t),
            };
            matter
                .specific_heat(here)
                .unwrap()
                .joules_per_kilogram_kelvin()
        }
        ThermalMaterial::Plain(level) => level.joules_per_kilogram_kelvin(),
        ThermalMaterial::Ice => panic!("ice is counted apart"),
    };
    let mean = (at(from) + 4.0 * at(f64::midpoint(from, to)) + at(to)) / 6.0;
    mass.grams() / 1000.0 * mean * (to - from)
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(100_000)))]

    #[test]
    fn heat_is_conserved_in_every_mix(
        components in prop::collection::vec(any_part(), 1..7),
        gained in 0.0..20_000.0f64,
    ) {
        // Off the scale is an answer too: a pinch of flour with all of that heat.
        let Ok(mixed) = mix(&components, Heat::from_joules(gained)) else { return Ok(()) };
        let end = mixed.temperature.celsius();
        let all: f64 = components
            .iter()
            .map(|component| took(&component.stuff, component.mass, component.temperature.celsius(), end))
            .sum();
        let scale: f64 = mixed.capacity.joules_per_kelvin() * 100.0 + gained;
        prop_assert!((all - gained).abs() <= 1e-9 * scale, "{all} for {gained}");
        let given: f64 = mixed.components.iter().map(|component| component.took.joules()).sum();
        prop_assert!((given - gained).abs() <= 1e-9 * scale, "{given} for {gained}");
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn a_mix_lies_between_its_parts_and_follows_each(
        components in prop::collection::vec(any_part(), 2..6),
        warmer in 0.1..30.0f64,
    ) {
        let t = |component: &HeatPart| component.temperature.celsius();
        let low = components.iter().map(t).fold(f64::INFINITY, f64::min);
        let high = components.iter().map(t).fold(f64::NEG_INFINITY, f64::max);
        let end = mix(&components, Heat::ZERO).unwrap().temperature.celsius();
        prop_assert!((low - 1e-9..=high + 1e-9).contains(&end));
        let mut more = components.clone();
        more[0].temperature = celsius(t(&components[0]) + warmer);
        prop_assert!(mix(&more, Heat::ZERO).unwrap().temperature.celsius() > end);
    }

    #[test]
    fn ice_that_melts_keeps_heat(
        ice in 1.0..200.0f64,
        frozen in -25.0..0.0f64,
        water in 1000.0..3000.0f64,
        t in 20.0..90.0f64,
    ) {
        let components = [
            HeatPart {
                of: "ice".into(),
                mass: grams(ice),
                stuff: ThermalMaterial::Ice,
                temperature: celsius(frozen),
            },
            HeatPart {
                of: "water".into(),
                mass: grams(water),
                stuff: ThermalMaterial::Food(Matter::WATER),
                temperature: celsius(t),
            },
        ];
        let end = mix(&components, Heat::ZERO).unwrap().temperature.celsius();
        let stuff = ThermalMaterial::Food(Matter::WATER);
        let warms = took(&stuff, grams(ice), 0.0, end) + took(&stuff, grams(water), t, end);
        let cold = TemperatureStep { from: celsius(frozen), to: celsius(0.0) };
        let of_ice = Matter::ICE.specific_heat(cold).unwrap().joules_per_kilogram_kelvin();
        let melts = ice * (latent_heat_of_fusion().joules_per_gram() - of_ice * frozen / 1000.0);
        prop_assert!((warms + melts).abs() <= 1e-9 * water * 400.0, "{warms} {melts}");
    }
}

proptest! {
    #![proptest_config(cases(1000))]

    #[test]
    fn heat_is_conserved_in_every_cooling(
        body in any_body(),
        start in 0.0..100.0f64,
        stays in prop::collection::vec(any_stay(), 1..4),
    ) {
        let curve = simulate(&body, celsius(start), &stays).unwrap();
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
        let stay = Exposure { minutes: minutes(240.0), air: Air { temperature: celsius(air), coefficient } };
        let curve = simulate(&body, celsius(start), &[stay]).unwrap();
        for pair in curve.moments.windows(2) {
            prop_assert!(pair[1].mean.celsius() <= pair[0].mean.celsius() + 1e-9);
            // The centre is read from the two innermost cells: a hundredth of a degree is theirs.
            prop_assert!(pair[1].centre.celsius() <= pair[0].centre.celsius() + 0.01);
            prop_assert!(pair[1].surface.celsius() <= pair[1].centre.celsius() + 0.01);
            prop_assert!(pair[1].mean.celsius() >= air - 1e-9);
        }
        let thinner = Body { half: Length::from_metres(body.half.metres() * 0.8).unwrap(), ..body };
        let faster = simulate(&thinner, celsius(start), &[stay]).unwrap();
        prop_assert!(faster.end().unwrap().mean.celsius() <= curve.end().unwrap().mean.celsius() + 1e-6);
    }
}
