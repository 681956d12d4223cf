//! Corrections of a bake that deviates: temperature, time, masses.

use softcrumb::engine::formula::{Figure, Figures, Form, LineAt};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::StepKind;
use softcrumb::engine::quantity::{Mass, Minutes, Temperature};
use softcrumb::engine::rise::RiseSettings;
use softcrumb::results::day::{
    self, DayInput, DayResults, ReferenceRises, RiseInput, WhichRise, additions, as_weighed,
    duration_changes, plan_snapshot, rise_deviation, rise_place, rises,
};
use softcrumb::results::heat::{measured_at, time_to_target};
use softcrumb::sheet::HeatSettings;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Moment, Sheet, examples};

use crate::days::{minutes, ms, step};

/// Friday evening.
const NOW: f64 = 1_774_634_400_000.0;

fn at(celsius: f64) -> Temperature {
    Temperature::from_celsius(celsius).unwrap()
}

fn first() -> Sheet {
    examples().remove(0).1
}

fn asked<T>(bench: &Bench, now: Moment, ask: impl FnOnce(&DayInput) -> T) -> T {
    ask(&DayInput {
        sheet: &first(),
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now,
        bench: Some(bench),
    })
}

fn plan(bench: &Bench, now: Moment) -> DayResults {
    asked(bench, now, |asked| day::of(asked).unwrap())
}

/// A bake that begins as planned.
fn begun() -> Bench {
    let mut bench = Bench::new(Bake::new(Id::from_random(1), ms(NOW)));
    bench.planned = plan_snapshot(&plan(&bench, ms(NOW)));
    bench
}

#[test]
fn a_cold_dough_takes_longer_and_a_warmer_place_corrects_it() {
    let mut bench = begun();
    let off = |bench: &Bench| {
        asked(bench, ms(NOW), |asked| {
            rise_deviation(asked, &day::of(asked).unwrap(), WhichRise::Bulk)
        })
    };
    assert_eq!(off(&bench), None, "nothing is off yet");
    let planned = asked(&bench, ms(NOW), |asked| asked.run().dough);
    let off_by = |kelvin: f64| Some(at(planned.celsius() + kelvin));
    bench.bake.noted.dough = off_by(-3.0);
    let cold = off(&bench).unwrap();
    assert!(
        cold.now.minutes() > cold.planned.minutes() + 3.0,
        "{cold:?}"
    );
    let place = cold.place.unwrap();
    assert!(place.at > Kitchen::default().room, "{place:?}");
    let miss = (place.due.minutes() - cold.planned.minutes()).abs();
    assert!(miss < 5.0, "{cold:?}");
    // Once it is applied, the plan has the dough up in that time.
    bench.bulk_place = Some(place.at);
    let taken = off(&bench).unwrap();
    assert_eq!(taken.chosen, Some(place.at));
    assert!((taken.now.minutes() - place.due.minutes()).abs() < 1e-9);
    // A warm dough that begins its rise in time is made up for by a cooler place.
    bench.bulk_place = None;
    let bulk = step(StepKind::Bulk, 0);
    let planned = bench.planned(bulk).unwrap().begins;
    bench.bake.begin(bulk, planned);
    bench.bake.noted.dough = off_by(13.0);
    let warm = off(&bench).unwrap();
    assert!(warm.now < warm.planned && warm.place.unwrap().at < Kitchen::default().room);
}

#[test]
fn a_rise_that_begins_late_is_up_in_time_in_a_warmer_place() {
    let mut bench = begun();
    let bulk = step(StepKind::Bulk, 0);
    let planned = bench.planned(bulk).unwrap().begins;
    let late = planned.instant().later(minutes(20.0));
    bench.bake.begin(bulk, Moment::from_instant(late));
    let off = asked(&bench, Moment::from_instant(late), |asked| {
        rise_deviation(asked, &day::of(asked).unwrap(), WhichRise::Bulk)
    });
    let off = off.unwrap();
    assert!((off.late.minutes() - 20.0).abs() < 0.1, "{off:?}");
    let place = off.place.unwrap();
    assert!(place.due.minutes() < off.now.minutes() - 5.0, "{off:?}");
}

/// Common practice: a dough below its wished temperature is not cooled further, and a place is chosen as
/// the dough is covered, not as it is nearly up.
#[test]
fn a_cooler_place_is_for_a_dough_that_is_too_warm_and_for_one_that_has_just_been_covered() {
    let bulk = step(StepKind::Bulk, 0);
    let mut bench = begun();
    let planned = bench.planned(bulk).unwrap().begins;
    bench.bake.begin(bulk, planned);
    let off = |bench: &Bench, later: f64| {
        let now = Moment::from_instant(planned.instant().later(minutes(later)));
        asked(bench, now, |asked| {
            rise_deviation(asked, &day::of(asked).unwrap(), WhichRise::Bulk).unwrap()
        })
    };
    let (expected, wished) = asked(&bench, ms(NOW), |asked| {
        (asked.run().dough, asked.sheet.heat.dough)
    });
    let below = at(expected.celsius().midpoint(wished.celsius()));
    assert!(expected < below && below < wished);
    bench.bake.noted.dough = Some(below);
    let still_cold = off(&bench, 1.0);
    assert!(still_cold.now < still_cold.planned);
    assert_eq!(still_cold.place, None, "{still_cold:?}");
    bench.bake.noted.dough = Some(at(wished.celsius() + 4.0));
    let warm = off(&bench, 1.0);
    assert!(warm.place.unwrap().at < Kitchen::default().room);
    let nearly_up = off(&bench, warm.now.minutes() - 9.0);
    assert_eq!(nearly_up.place, None, "{nearly_up:?}");
}

/// Among places of whole degrees none is nearer to the time than the one that is given.
#[test]
fn no_other_place_is_nearer_to_the_wished_time() {
    let (sheet, kitchen) = (first(), Kitchen::default());
    let settings = RiseSettings::default();
    let known = ReferenceRises::of(&settings);
    let input = RiseInput {
        formula: &sheet.formula,
        kitchen: &kitchen,
        dough: at(23.0),
        pieces: 9,
        settings: &settings,
        references: &known,
    };
    let due_at = |celsius: f64| {
        let settings = RiseSettings {
            bulk_place: Some(at(celsius)),
            ..settings
        };
        let rises = rises(&RiseInput {
            settings: &settings,
            ..input
        });
        rises.bulk.ok().map(|risen| risen.due.minutes())
    };
    for wanted in [20.0, 45.0, 60.0, 75.0, 100.0, 160.0, 400.0] {
        let asked = (WhichRise::Bulk, minutes(wanted));
        let place = rise_place(&input, asked).unwrap();
        let miss = (place.due.minutes() - wanted).abs();
        for celsius in 10..=35 {
            if let Some(due) = due_at(f64::from(celsius)) {
                assert!((due - wanted).abs() >= miss - 1e-9, "{wanted} {celsius}");
            }
        }
    }
}

#[test]
fn a_paste_that_is_too_warm_must_wait_and_the_colder_it_is_the_less() {
    let (sheet, kitchen, heat) = (first(), Kitchen::default(), HeatSettings::default());
    let needs =
        |work, celsius| time_to_target(&sheet.formula, &kitchen, &heat, (work, 0), at(celsius));
    for work in [StepKind::CoolPaste, StepKind::ChillPaste] {
        let mut before = Minutes::ZERO;
        for celsius in [4.0, 8.0, 15.0, 25.0, 40.0, 60.0, 75.0] {
            let needs = needs(work, celsius).unwrap();
            assert!(needs.there >= before, "{work:?} {celsius}");
            assert_eq!(needs.there > Minutes::ZERO, at(celsius) > needs.wanted);
            if let Some(ice) = needs.in_ice {
                assert!(ice < needs.there, "ice water is faster");
            }
            before = needs.there;
        }
        assert!(before > minutes(5.0));
    }
    let nothing = needs(StepKind::Bulk, 5.0);
    assert!(nothing.is_err());
}

#[test]
fn a_preferment_out_of_the_fridge_needs_less_time_the_warmer_it_is() {
    let (sheet, kitchen) = (first(), Kitchen::default());
    let warm_up = HeatSettings {
        standing: minutes(60.0),
        ..HeatSettings::default()
    };
    let needs = |celsius| {
        time_to_target(
            &sheet.formula,
            &kitchen,
            &warm_up,
            (StepKind::WarmUp, 1),
            at(celsius),
        )
        .unwrap()
    };
    // Out of the fridge it takes the hour that was planned; warmer, less.
    let fridge = kitchen.fridge.celsius();
    assert!((needs(fridge).there.minutes() - 60.0).abs() < 3.0);
    assert!(needs(fridge + 3.0).there < needs(fridge).there);
    assert_eq!(needs(20.5).there, Minutes::ZERO);
    assert_eq!(measured_at(StepKind::WarmUp, 0, &sheet.formula), [0, 1]);
    assert_eq!(
        measured_at(StepKind::ChillPreferment, 1, &sheet.formula),
        [1]
    );
    assert!(measured_at(StepKind::Bulk, 0, &sheet.formula).is_empty());
}

/// Every temperature that can be typed is answered.
#[test]
fn whatever_is_measured_is_answered() {
    for (_, sheet) in examples() {
        for work in StepKind::ALL {
            for tenth in (-400..=3500).step_by(125) {
                let measured = at(f64::from(tenth) / 10.0);
                for part in 0..4 {
                    let heat = HeatSettings::default();
                    let kitchen = Kitchen::default();
                    let asked = (work, part);
                    let found = time_to_target(&sheet.formula, &kitchen, &heat, asked, measured);
                    if let Ok(needs) = found {
                        assert!(needs.there.minutes() <= 1440.0);
                    }
                }
            }
        }
    }
}

#[test]
fn what_falls_short_is_added_and_what_is_over_is_made_up_for_with_flour() {
    let formula = first().formula;
    let water = LineAt { part: 0, line: 2 };
    let weighed = |grams: f64| {
        let mut bench = Bench::new(Bake::new(Id::from_random(1), ms(NOW)));
        bench.weigh(water, Mass::from_grams(grams).ok());
        bench
    };
    let short = additions(&formula, &weighed(104.0));
    assert_eq!(short.len(), 1);
    assert_eq!((short[0].at, short[0].more.grams()), (water, 8.0));
    assert!(short[0].as_asked);
    assert_eq!(additions(&formula, &weighed(112.0)), []);
    let mut bench = weighed(120.0);
    let over = additions(&formula, &bench);
    assert_eq!(over.len(), 1);
    assert!(!over[0].as_asked && over[0].more.grams() > 5.0, "{over:?}");
    // Once it is applied, the dough has its planned water, and no further addition is advised.
    bench.weigh(over[0].at, Some(over[0].then));
    let share = |formula| {
        Figures::of(formula, Form::AsMade)
            .share(Figure::TrueWater)
            .unwrap()
    };
    let made = as_weighed(&formula, &bench);
    assert!((share(&made).fraction() - share(&formula).fraction()).abs() < 1e-4);
    assert_eq!(additions(&formula, &bench), []);
}

#[test]
fn what_gives_way_is_what_lasts_otherwise_than_promised() {
    let mut bench = begun();
    assert_eq!(duration_changes(&plan(&bench, ms(NOW)), &bench), []);
    let proof = step(StepKind::Proof, 0);
    let was = bench.planned(proof).unwrap().lasts;
    bench.let_last(proof, minutes(was.minutes() + 30.0));
    let given = duration_changes(&plan(&bench, ms(NOW)), &bench);
    let change = given.iter().find(|change| change.step == proof).unwrap();
    let longer = change.now.minutes() - was.minutes();
    assert!(
        (longer - 30.0).abs() < 1e-9 && change.planned == was,
        "{given:?}"
    );
    assert!(!change.fills_time);
}
