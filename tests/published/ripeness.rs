//! Ripeness of preferments against printed ones.

use softcrumb::engine::heat::{Air, Body, Exposure, Shape, simulate};
use softcrumb::engine::quantity::{
    Conductivity, Density, Length, Mass, Minutes, Share, SpecificHeat, Temperature,
};
use softcrumb::engine::rise::{Ripeness, RipenessState, YeastActivity, ripeness};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

/// A ball of 300 g of stiff dough with so much instant yeast, by places and hours, ripe or not at
/// the end of them.
fn after(instant_percent: f64, stays: &[(f64, f64)]) -> Ripeness {
    let ball = Body {
        shape: Shape::Sphere,
        half: Length::from_metres(0.0396).unwrap(),
        mass: Mass::from_grams(300.0).unwrap(),
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(2800.0).unwrap(),
        conductivity: Conductivity::from_watts_per_metre_kelvin(0.42).unwrap(),
        density: Density::from_kilograms_per_cubic_metre(1150.0).unwrap(),
    };
    let mut places: Vec<Exposure> = stays
        .iter()
        .map(|(at, hours)| Exposure {
            minutes: Minutes::from_hours(*hours).unwrap(),
            air: Air::still(celsius(*at)),
        })
        .collect();
    let end = Minutes::from_hours(stays.iter().map(|(_, hours)| hours).sum()).unwrap();
    let last = *places.last().unwrap();
    places.push(last);
    let course = simulate(&ball, celsius(stays[0].0), &places).unwrap();
    // A gram of instant yeast has the dry matter of about 3.15 g of fresh yeast.
    let fresh = Share::from_percent(instant_percent * 3.15).unwrap();
    let activity = YeastActivity::of(fresh, Share::NONE, Share::NONE).unwrap();
    ripeness(&course, &activity, end).unwrap()
}

/// Source: a school's table (poolish and biga 12 to 16 h in the room, sponge 4 h) with the yeast of
/// printed formulas: 0.07 and 0.14 % instant for 12 h in the room; Reinhart: 0.27 % for 3 h in the
/// room, then the fridge; a long biga of 1.1 % fresh (0.35 % instant) for 18 h at 6 °C; a plant's
/// sponge of 0.5 % for 4 h at 25 °C. The night in the fridge is common practice.
#[test]
fn printed_preferments_are_ripe_when_they_are_used() {
    let printed: [(f64, &[(f64, f64)]); 6] = [
        (0.07, &[(21.0, 12.0)]),
        (0.14, &[(21.0, 12.0)]),
        (0.27, &[(21.0, 3.0), (4.0, 24.0)]),
        (0.35, &[(22.0, 0.5), (6.0, 18.0)]),
        (0.5, &[(25.0, 4.0)]),
        (0.7, &[(24.0, 0.67), (4.0, 12.0)]),
    ];
    for (yeast, stays) in printed {
        assert_eq!(
            after(yeast, stays).state,
            RipenessState::Ripe,
            "{yeast} {stays:?}"
        );
    }
}

/// Common practice: straight into the fridge after mixing a stiff dough is not ripe after three
/// hours, and a day in a warm room is too much.
#[test]
fn too_short_is_under_and_a_day_in_the_warm_is_over() {
    assert_eq!(
        after(0.3, &[(20.0, 0.1), (4.0, 3.0)]).state,
        RipenessState::Under
    );
    assert_eq!(after(0.7, &[(26.0, 24.0)]).state, RipenessState::Over);
}
