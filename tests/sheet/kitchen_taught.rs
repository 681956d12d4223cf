//! A paste weighed and measured at the bench: what it teaches of the kitchen, and what follows it.

use softcrumb::engine::heat::{CoolingFactors, KitchenFactor, Pace, Probe};
use softcrumb::engine::learn::{Learnt, Observation};
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Factor, Mass, Minutes, Share, Temperature};
use softcrumb::results::day::{
    self, DayInput, learnt, measured_cooling, measured_steam, preferment_course, taught_kitchen,
};
use softcrumb::results::heat::{expected_steam, paste_cooling, stirred_in};
use softcrumb::results::run::StageKind;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, DaySettings, Log, Resets};
use softcrumb::sheet::{CoolingChoice, Id, Kitchen, Sheet};
use softcrumb::storage::Record;

use crate::bench_results::{NOW, begun, first};
use crate::days::{minutes, ms, step};

/// A sheet whose paste stands twenty minutes on the bench, then goes into the fridge.
fn sheet() -> Sheet {
    let mut sheet = first();
    sheet.heat.cooling.way = CoolingChoice::Own {
        bench: minutes(20.0),
        ice: Minutes::ZERO,
    };
    sheet
}

fn with<T>(bench: &Bench, learnt: &Learnt, run: impl FnOnce(&DayInput) -> T) -> T {
    run(&DayInput {
        sheet: &sheet(),
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt,
        rounded: None,
        zone: &Zone::default(),
        now: ms(NOW),
        bench: Some(bench),
    })
}

fn at(after: f64) -> softcrumb::sheet::Moment {
    ms(NOW + after * 60_000.0)
}

/// A kitchen that passes so many times the printed heat.
fn drawn(transfer: f64) -> Kitchen {
    let likely = Factor::from_number(transfer).unwrap();
    Kitchen {
        cooling: CoolingFactors {
            transfer: Some(KitchenFactor {
                likely,
                spread: Share::NONE,
            }),
            ..CoolingFactors::default()
        },
        ..Kitchen::default()
    }
}

/// The paste is put in the fridge after 20 min, and measured there.
fn chilled_bench() -> Bench {
    let mut bench = begun();
    bench.bake.begin(step(StepKind::CoolPaste, 0), at(0.0));
    bench.bake.begin(step(StepKind::ChillPaste, 0), at(20.0));
    bench
}

#[test]
fn a_paste_measured_on_the_bench_or_in_the_fridge_gives_the_factor_it_was_drawn_with() {
    let sheet = sheet();
    let bench = chilled_bench();
    for truth in [0.7, 1.0, 1.5] {
        let kitchen = drawn(truth);
        let plan = paste_cooling(&sheet.formula, 0, &kitchen, &sheet.heat).unwrap();
        let curve = plan
            .cooling
            .simulate(&plan.way, Pace::Middle)
            .unwrap()
            .curve;
        for (work, after, probe) in [
            (StepKind::CoolPaste, 15.0, Probe::Mean),
            (StepKind::ChillPaste, 60.0, Probe::Centre),
        ] {
            let found = curve.at(minutes(after), probe).unwrap();
            let asked = (step(work, 0), 0);
            let noted = with(&bench, &Learnt::default(), |input| {
                measured_cooling(input, asked, found, at(after))
            });
            let noted = noted.unwrap();
            let factor = noted.factor.number();
            assert!(
                (factor / truth - 1.0).abs() < 0.03,
                "{work:?} {truth}: {factor}"
            );
            assert!(noted.within.fraction() > 0.0);
        }
    }
}

#[test]
fn a_preferment_in_the_fridge_teaches_the_same() {
    let sheet = first();
    let mut formula = sheet.formula;
    let part = formula
        .parts
        .iter()
        .position(|own| own.kind == softcrumb::engine::formula::PartKind::Preferment);
    let Some(part) = part else {
        panic!("the first example has a preferment")
    };
    formula.parts[part].temperature = None;
    let of = u16::try_from(part).unwrap();
    let mut bench = begun();
    bench
        .bake
        .begin(step(StepKind::StandPreferment, of), at(0.0));
    bench
        .bake
        .begin(step(StepKind::ChillPreferment, of), at(40.0));
    let kitchen = drawn(1.3);
    let stages = [
        (minutes(40.0), kitchen.room),
        (minutes(50.0), kitchen.fridge),
    ];
    let course = preferment_course(&formula, part, &kitchen, &stages).unwrap();
    let found = course.end().unwrap().centre;
    let asked = (step(StepKind::ChillPreferment, of), part);
    let noted = with(&bench, &Learnt::default(), |input| {
        measured_cooling(input, asked, found, at(90.0))
    });
    assert!((noted.unwrap().factor.number() - 1.3).abs() < 0.05);
}

#[test]
fn what_a_thermometer_cannot_tell_is_not_noted() {
    let bench = chilled_bench();
    let asked = |work: StepKind, found: f64, after: f64| {
        with(&bench, &Learnt::default(), |input| {
            let found = Temperature::from_celsius(found).unwrap();
            measured_cooling(input, (step(work, 0), 0), found, at(after))
        })
    };
    // At once, in no step that has begun, after a day as cold as the fridge, and hotter than made.
    assert_eq!(asked(StepKind::CoolPaste, 60.0, 1.0), None);
    assert_eq!(asked(StepKind::WarmUp, 10.0, 60.0), None);
    assert_eq!(asked(StepKind::ChillPaste, 4.0, 1400.0), None);
    assert_eq!(asked(StepKind::CoolPaste, 99.0, 15.0), None);
}

/// A log of so many bakes that noted the same.
fn log(noted: Observation, bakes: u32) -> Log {
    let bakes = (0..bakes).map(|number| {
        let began = ms(NOW + f64::from(number));
        let mut bake = Bake::new(Id::from_random(u64::from(number)), began);
        bake.kitchen = Kitchen::default().name;
        bake.noted = noted;
        bake
    });
    Log::of(bakes.collect(), Resets::default())
}

/// What a bake notes whose paste weighs `after` and cools half as fast again as is printed.
fn noted_of_drawn(bench: &Bench, sheet: &Sheet, chill: StepAt, after: Mass) -> Observation {
    let drawn = drawn(1.5);
    let plan = paste_cooling(&sheet.formula, 0, &drawn, &sheet.heat).unwrap();
    let course = plan.cooling.simulate(&plan.way, Pace::Middle).unwrap();
    let found = course.curve.at(minutes(60.0), Probe::Centre).unwrap();
    with(bench, &Learnt::default(), |input| Observation {
        steam: measured_steam(input, chill, after),
        cooling: measured_cooling(input, (chill, 0), found, at(60.0)),
        ..Observation::default()
    })
}

#[test]
fn what_the_log_taught_is_what_heat_plan_and_run_reckon_with() {
    let (bench, sheet, kitchen) = (chilled_bench(), sheet(), Kitchen::default());
    let nothing = Learnt::default();
    let chill: StepAt = step(StepKind::ChillPaste, 0);
    let before = stirred_in(&sheet.formula.parts[0]);
    let printed = expected_steam(&sheet.formula, 0, &kitchen, &sheet.heat).unwrap();
    let lost = printed.likely.grams() * 1.5;
    let after = before.less(Mass::from_grams(lost).unwrap());
    let made = with(&bench, &nothing, |input| day::of(input).unwrap().run);
    let noted = noted_of_drawn(&bench, &sheet, chill, after);
    assert!(noted.steam.is_some() && noted.cooling.is_some());
    let mut log = log(noted, 10);
    // The record is read as it was written.
    assert_eq!(Log::read(&log.write()).unwrap(), log);
    let taught = learnt(&log, &kitchen, None);
    let own = taught_kitchen(&kitchen, &taught);
    let predicted = expected_steam(&sheet.formula, 0, &own, &sheet.heat).unwrap();
    let times = predicted.likely.grams() / printed.likely.grams();
    assert!((1.2..1.5).contains(&times), "{times}");
    let wide = |it: &softcrumb::results::heat::SteamPrediction| it.most.grams() / it.least.grams();
    assert!(wide(&predicted) < wide(&printed));
    let run = with(&bench, &taught, |input| day::of(input).unwrap().run);
    assert_eq!(run.cooling, own.cooling);
    let stood = |run: &softcrumb::results::run::Run| {
        let stage = run
            .stages
            .iter()
            .find(|stage| stage.kind == StageKind::Stand);
        stage.unwrap().ends
    };
    assert!(stood(&run) < stood(&made), "it cools faster");
    // After these resets the log teaches nothing.
    log.resets.losses = Some(at(1.0));
    log.resets.oven = Some(at(1.0));
    assert_eq!(learnt(&log, &kitchen, None), Learnt::default());
}
