//! The day in words and pictures: steps, rises, what is in the way, what bakes taught.

use super::errors::{out_of_range, told};
use super::format_options::{american, british, german};
use super::plain_speech::is_plain;
use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, learn};
use softcrumb::engine::plan::{Aim, Around, Conflict, PlanError, StepKind, solve};
use softcrumb::engine::quantity::{Division, Instant, Minutes, Share, Temperature, WarmingRate};
use softcrumb::engine::rise::{ReferenceBasis, ReferenceRise, RiseError};
use softcrumb::results::day::{
    ConflictedPlan, DayInput, DayResults, WeighingEffect, of, weighing_effect,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bench, DaySettings, Target};
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};
use softcrumb::text::chart::{DayRibbon, RiseDrawing, day_ribbon, rise_curve};
use softcrumb::text::{day, format, name};

pub(crate) fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

pub(crate) fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

/// Friday, 27 March 2026, 18:00 in London.
pub(crate) fn friday() -> Moment {
    Moment::from_milliseconds(1_774_634_400_000.0).unwrap()
}

pub(crate) fn plan(sheet: &Sheet, room: f64, target: Target) -> DayResults {
    let kitchen = Kitchen {
        room: celsius(room),
        ..Kitchen::default()
    };
    let settings = DaySettings {
        target,
        ..DaySettings::default()
    };
    of(&DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    })
    .unwrap()
}

/// What the masses weighed at the bench do to the first example.
pub(crate) fn effect_of(bench: &Bench) -> WeighingEffect {
    let sheet = examples().remove(0).1;
    let weighing = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    weighing_effect(&DayInput {
        sheet: &sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&round(&sheet.formula, weighing)),
        zone: &Zone::default(),
        now: friday(),
        bench: Some(bench),
    })
}

#[test]
fn every_work_has_its_name() {
    let mut names: Vec<&str> = StepKind::ALL.iter().map(|work| name::work(*work)).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), StepKind::ALL.len());
}

#[test]
fn an_open_plan_is_for_tomorrow_afternoon_and_nothing_is_in_the_way() {
    for (_, sheet) in examples() {
        let planned = plan(&sheet, 21.0, Target::Open);
        let table = format::day_and_clock(planned.solved.table, &Zone::default());
        assert_eq!(table, "Sat 16:00");
        assert_eq!(planned.solved.conflicts, []);
    }
}

#[test]
fn rises_and_nights_are_shown_plainly() {
    let (_, sheet) = examples().remove(0);
    for room in [14.0, 21.0, 26.0, 32.0] {
        let planned = plan(&sheet, room, Target::Open);
        let bulk = planned.run.rises.bulk.as_ref().unwrap();
        for options in [british(), german(), american()] {
            is_plain(&day::rise_difference(bulk, celsius(room), options));
            is_plain(&rise_curve(bulk, options));
            is_plain(&day::trust(options));
            for basis in [
                ReferenceBasis::Stated,
                ReferenceBasis::Bakes(1),
                ReferenceBasis::Bakes(7),
            ] {
                let anchor = ReferenceRise {
                    basis,
                    ..bulk.asked.anchor
                };
                is_plain(&day::basis(&anchor, options));
            }
            for rise in &planned.run.rises.preferments {
                let (rise, zone) = (rise.as_ref().unwrap(), Zone::default());
                is_plain(&day::preferment_rise(
                    rise,
                    &planned,
                    &sheet.formula,
                    &zone,
                    options,
                ));
            }
        }
    }
    for work in StepKind::ALL {
        let signs = day::signs(work);
        if !signs.is_empty() {
            is_plain(signs);
        }
    }
}

#[test]
fn what_is_in_the_way_is_shown_and_what_solves_it() {
    let (_, sheet) = examples().remove(0);
    // Bread on the table six hours from now is too soon.
    let soon = friday().milliseconds() + 6.0 * 3.6e6;
    let soon = Target::Table(Moment::from_milliseconds(soon).unwrap());
    let planned = plan(&sheet, 21.0, soon);
    let zone = Zone::default();
    let solutions = ConflictedPlan::of(&planned).unwrap().solutions();
    let by = minutes(20.0);
    let at = Instant::from_seconds(1_774_640_000).unwrap();
    let mut all = planned.solved.conflicts.clone();
    all.extend([
        Conflict::TooLate { step: 0, by },
        Conflict::Waits { step: 1, by },
        Conflict::AtNight {
            step: 2,
            begins: at,
            wakes: at,
        },
        Conflict::HandsFull {
            step: 3,
            other: 0,
            by,
        },
    ]);
    for options in [british(), german(), american()] {
        for conflict in &all {
            is_plain(&day::conflict(
                conflict,
                &planned.plan,
                &sheet.formula,
                &zone,
                options,
            ));
        }
        for change in &solutions {
            is_plain(&day::change(
                change,
                &planned.plan,
                &sheet.formula,
                &zone,
                options,
            ));
        }
    }
    // Later is offered, and it is enough.
    let first = solutions.first();
    let Some(softcrumb::engine::plan::Change::TableLater(later)) = first else {
        panic!("{first:?}");
    };
    let around = Around {
        now: Some(friday().instant()),
        ..Around::default()
    };
    assert_eq!(
        solve(&planned.plan, Aim::Table(*later), &around).conflicts,
        []
    );
}

#[test]
fn what_bakes_taught_says_what_it_rests_on() {
    let bake = |took: f64| Observation {
        unmixed: Some(celsius(16.0)),
        dough: Some(celsius(25.0)),
        mixing: Some(minutes(9.0)),
        bulk: Some(MeasuredDuration {
            expected: minutes(60.0),
            minutes: minutes(took),
        }),
        ..Observation::default()
    };
    let usual = WarmingRate::from_kelvin_per_minute(1.0).unwrap();
    let bakes = [70.0, 72.0, 200.0, 71.0, 69.0].map(bake);
    let learnt = learn(&bakes, usual);
    let told = day::learnt_figures(&learnt, british());
    assert_eq!(told.len(), 2);
    assert_eq!(told[0].rests, "Based on 5 bakes.");
    assert_eq!(
        told[1].rests,
        "Based on 4 bakes; 1 was left aside, as it lies too far from the others."
    );
    for told in told {
        assert!(!told.value.is_empty() && !told.working.is_empty());
        is_plain(&told.rests);
    }
    assert!(day::learnt_figures(&Learnt::default(), british()).is_empty());
}

#[test]
fn pictures_stay_on_their_field_and_have_a_twin() {
    for (_, sheet) in examples() {
        for room in [12.0, 21.0, 33.0] {
            let planned = plan(&sheet, room, Target::Open);
            let now = friday().instant();
            let zone = Zone::default();
            let ribbon = DayRibbon::of(&planned, &sheet.formula, now, &zone);
            assert_eq!(ribbon.blocks.len(), planned.plan.steps().len());
            for block in &ribbon.blocks {
                assert!(block.x >= 0.0 && block.x + block.work <= DayRibbon::WIDTH + 2.0);
                assert!(block.y + DayRibbon::BLOCK <= ribbon.height);
            }
            assert!(!ribbon.days.is_empty() || sheet.name.starts_with("Toast"));
            is_plain(&day_ribbon(&planned, &zone, british()));
            let drawing = RiseDrawing::of(planned.run.rises.bulk.as_ref().unwrap(), british());
            assert!(drawing.soonest < drawing.due && drawing.due < drawing.latest);
            assert!(drawing.current.starts_with('M') && drawing.known.starts_with('M'));
            assert!(!drawing.current.contains("NaN"));
            assert!(drawing.across.len() >= 3 && drawing.across.len() <= 8);
        }
    }
}

#[test]
fn everything_that_can_be_asked_of_a_day_in_vain_is_shown() {
    let (least, wished, most) = (minutes(10.0), minutes(5.0), minutes(20.0));
    for error in [
        PlanError::NoSteps,
        PlanError::TooManySteps { most: 60 },
        PlanError::NoSuchInput { step: 0, input: 9 },
        PlanError::GoesInCircles { step: 0 },
        PlanError::NoSuchRange {
            least,
            wished,
            most,
        },
    ] {
        told(&error);
    }
    let at = celsius(2.0);
    let mut all = vec![
        RiseError::NoYeast,
        RiseError::NotCardinal {
            least: at,
            best: at,
            most: at,
        },
        RiseError::AnchorAtRest { at },
        RiseError::AnchorOfNoTime,
        RiseError::NotInTime {
            followed: most,
            reached: Share::from_percent(12.0).unwrap(),
        },
    ];
    all.extend(out_of_range().into_iter().map(RiseError::OffScale));
    for error in &all {
        told(error);
    }
}
