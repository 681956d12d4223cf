//! The working of what bakes teach.

use softcrumb::engine::learn::{
    MeasuredCooling, MeasuredDuration, MeasuredSteam, Observation, WeighedLoss, learn,
};
use softcrumb::engine::quantity::{Factor, Mass, Minutes, Share, Temperature, WarmingRate};

use crate::rule_evaluator::adds_up;

fn bake(number: u16) -> Observation {
    let n = f64::from(number);
    let wild = if number == 3 { 2.5 } else { 1.0 };
    let minutes = |m: f64| Minutes::from_minutes(m).unwrap();
    let grams = |g: f64| Mass::from_grams(g).unwrap();
    let took = MeasuredDuration {
        expected: minutes(60.0 + n),
        minutes: minutes((70.0 + 2.0 * n) * wild),
    };
    Observation {
        unmixed: Temperature::from_celsius(16.0).ok(),
        warmed_for: None,
        dough: Temperature::from_celsius(16.0 + (9.0 + 0.2 * n) * wild).ok(),
        mixing: Some(minutes(9.0)),
        bowl: Some(WeighedLoss {
            before: grams(900.0),
            after: grams(885.0 - n),
        }),
        oven_loss: Some(WeighedLoss {
            before: grams(850.0),
            after: grams(760.0 + n),
        }),
        bulk: Some(took),
        proof: Some(took),
        bake: Some(took),
        steam: Some(MeasuredSteam {
            expected: grams(5.0 + n),
            weighed: WeighedLoss {
                before: grams(150.0),
                after: grams(143.0 - n),
            },
        }),
        cooling: Some(MeasuredCooling {
            expected: Temperature::from_celsius(30.0).unwrap(),
            found: Temperature::from_celsius(28.0).unwrap(),
            factor: Factor::from_number((1.2 + 0.01 * n) * wild).unwrap(),
            within: Share::from_fraction(0.05 + 0.01 * n).unwrap(),
        }),
    }
}

/// A dough that came out colder than it went in: the thermometer is out, and no friction is learnt.
#[test]
fn a_friction_that_is_left_out_adds_up() {
    let colder = Observation {
        unmixed: Temperature::from_celsius(22.0).ok(),
        dough: Temperature::from_celsius(21.5).ok(),
        mixing: Minutes::from_minutes(9.0).ok(),
        ..Observation::default()
    };
    let usual = WarmingRate::from_kelvin_per_minute(0.12).unwrap();
    let learnt = learn(&[colder; 6], usual);
    assert_eq!(learnt.friction, None);
    adds_up(&learnt.doubted.unwrap().working());
}

#[test]
fn what_any_number_of_bakes_teaches_adds_up() {
    let usual = WarmingRate::from_kelvin_per_minute(1.0).unwrap();
    for count in 1..9_u16 {
        let bakes: Vec<Observation> = (0..count).map(bake).collect();
        let learnt = learn(&bakes, usual);
        adds_up(&learnt.working());
        adds_up(&learnt.friction.unwrap().working());
        adds_up(&learnt.residue.unwrap().working());
        adds_up(&learnt.oven_loss.unwrap().working());
        let factors = [learnt.bulk, learnt.proof, learnt.bake];
        for factor in factors.into_iter().chain([learnt.steam, learnt.transfer]) {
            adds_up(&factor.unwrap().working());
        }
    }
}
