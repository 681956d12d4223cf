//! The working of rises: speeds, times, preferments, yeast activity.

use softcrumb::engine::formula::Form;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Factor, Temperature};
use softcrumb::engine::rise::{Cardinal, RiseSettings, yeast_activity};
use softcrumb::results::day::{self, DayInput, ReferenceRises, RiseInput, rises};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Moment, examples};

use crate::rule_evaluator::adds_up;

#[test]
fn rises_and_preferments_of_every_example_add_up() {
    let settings = RiseSettings::default();
    let mut preferments = 0;
    for (_, sheet) in examples() {
        for room in [12.0, 21.0, 33.0] {
            let kitchen = Kitchen {
                room: Temperature::from_celsius(room).unwrap(),
                ..Kitchen::default()
            };
            let references = ReferenceRises {
                yeast_activity: Factor::from_number(1.3).unwrap(),
                ..ReferenceRises::of(&settings)
            };
            let rises = rises(&RiseInput {
                formula: &sheet.formula,
                kitchen: &kitchen,
                dough: Temperature::from_celsius(25.0).unwrap(),
                pieces: 9,
                settings: &settings,
                references: &references,
            });
            adds_up(&rises.bulk.unwrap().working());
            adds_up(&rises.proof.unwrap().working());
            for rise in rises.preferments {
                let rise = rise.unwrap();
                adds_up(&rise.working());
                adds_up(&rise.equivalent_time.working());
                adds_up(&rise.never_chilled.working());
                adds_up(&rise.ripeness.unwrap().working());
                preferments += 1;
            }
        }
    }
    assert_eq!(preferments, 9);
}

#[test]
fn the_range_of_the_time_the_bread_is_ready_adds_up() {
    for (_, sheet) in examples() {
        let results = day::of(&DayInput {
            sheet: &sheet,
            kitchen: &Kitchen::default(),
            settings: &DaySettings::default(),
            learnt: &Learnt::default(),
            rounded: None,
            zone: &Zone::default(),
            now: Moment::from_milliseconds(1_774_634_400_000.0).unwrap(),
            bench: None,
        });
        let ready = results.unwrap().ready.unwrap();
        let lines = ready.working(|item| format!("{item:?}"));
        adds_up(&lines);
        let [later, sooner] = [&ready.later, &ready.sooner].map(|path| path.minutes.minutes());
        let answers: Vec<f64> = lines.iter().map(|line| line.result.value).collect();
        assert!(answers.iter().any(|answer| (answer - later).abs() < 1e-9));
        assert!((answers.last().unwrap() - sooner).abs() < 1e-9);
    }
}

#[test]
fn the_relative_yeast_activity_of_two_doughs_adds_up() {
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
