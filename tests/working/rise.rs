//! The working of rises: speeds, times, nights, `yeast_activity`.

use softcrumb::engine::formula::Form;
use softcrumb::engine::quantity::{Factor, Temperature};
use softcrumb::engine::rise::{Cardinal, RiseSettings, yeast_activity};
use softcrumb::results::day::{Known, rising};
use softcrumb::sheet::examples;
use softcrumb::sheet::{HeatSettings, Kitchen};

use crate::rule_evaluator::adds_up;

#[test]
fn rises_and_nights_of_every_example_add_up() {
    let settings = RiseSettings::default();
    let mut nights = 0;
    for (_, sheet) in examples() {
        for room in [12.0, 21.0, 33.0] {
            let kitchen = Kitchen {
                room: Temperature::from_celsius(room).unwrap(),
                ..Kitchen::default()
            };
            let known = Known {
                yeast_activity: Factor::from_number(1.3).unwrap(),
                ..Known::stated(&settings)
            };
            let heat = HeatSettings::default();
            let rising = rising(&sheet.formula, &kitchen, &heat, &settings, &known);
            adds_up(&rising.bulk.unwrap().working());
            adds_up(&rising.proof.unwrap().working());
            for night in rising.nights {
                let night = night.unwrap();
                adds_up(&night.equivalent_time.working());
                adds_up(&night.never_chilled.working());
                nights += 1;
            }
        }
    }
    assert_eq!(nights, 9);
}

#[test]
fn the_vigour_of_two_doughs_adds_up() {
    let all: Vec<_> = examples()
        .iter()
        .map(|(_, sheet)| yeast_activity(&sheet.formula, Form::AsMade).unwrap())
        .collect();
    for one in &all {
        for other in &all {
            adds_up(&one.working(other, one.against(other).unwrap()));
        }
    }
}

#[test]
fn the_speed_at_every_temperature_adds_up_and_there_is_none_outside() {
    for tenth in 14_u32..454 {
        let at = Temperature::from_celsius(f64::from(tenth) / 10.0).unwrap();
        adds_up(&Cardinal::DOUGH.working(at));
    }
    for t in [-5.0, 1.3, 45.4, 60.0] {
        let at = Temperature::from_celsius(t).unwrap();
        assert!(Cardinal::DOUGH.working(at).is_empty());
    }
}
