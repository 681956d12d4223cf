//! The working of what bakes teach.

use softcrumb::engine::learn::{MeasuredDuration, Observation, WeighedLoss, learn};
use softcrumb::engine::quantity::{Mass, Minutes, Temperature, WarmingRate};

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
    }
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
        for factor in [learnt.bulk, learnt.proof, learnt.bake] {
            adds_up(&factor.unwrap().working());
        }
    }
}
