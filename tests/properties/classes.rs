//! Classes of every size: no loaf, no gram and no minute is lost.

use std::num::{NonZeroU16, NonZeroU32};

use softcrumb::engine::class::{
    Class, ClassError, ClassSettings, OvenSettings, bowls, class, oven,
};
use softcrumb::engine::quantity::{Mass, Minutes};
use softcrumb::engine::tin::DOUGH_SPECIFIC_VOLUME;
use softcrumb::sheet::{Sheet, examples};

const COUNTS: [u16; 6] = [1, 2, 5, 12, 13, u16::MAX];

fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
}

fn settings(students: u16, at_bench: u16, loaves: u16, shown: u16) -> ClassSettings {
    ClassSettings {
        students: count(students),
        at_bench: count(at_bench),
        loaves: count(loaves),
        shown,
        loaf: Mass::from_grams(430.0).unwrap(),
        of_batch: false,
        ..ClassSettings::default()
    }
}

fn made(sheet: &Sheet, settings: ClassSettings) -> Result<Class, ClassError> {
    class(
        &sheet.formula,
        settings,
        sheet.batch.losses,
        sheet.batch.pieces,
    )
}

/// Every student has a bench and every loaf its dough; the benches together are the whole.
fn is_whole(sheet: &Sheet, made: &Class) {
    let settings = made.settings;
    let benches = made.benches.iter();
    let students: u32 = benches
        .map(|one| one.count.get() * u32::from(one.students))
        .sum();
    assert_eq!(students, u32::from(settings.students.get()));
    let loaves = u32::from(settings.students.get()) * u32::from(settings.loaves.get());
    assert_eq!(made.loaves, loaves + u32::from(settings.shown));
    for (part, own) in made.total.parts.iter().enumerate() {
        for (line, written) in own.lines.iter().enumerate() {
            let of = |bench: &softcrumb::engine::class::BenchBatch| {
                let one = bench.batch.formula.parts[part].lines[line].mass.grams();
                one * f64::from(bench.count.get())
            };
            let sum: f64 = made.benches.iter().map(of).sum();
            assert!((sum - written.mass.grams()).abs() <= 1e-9 * (1.0 + sum));
        }
    }
    let needed: f64 = made
        .benches
        .iter()
        .map(|bench| {
            let dough = 430.0 * f64::from(bench.loaves.get());
            assert!((bench.batch.needed.grams() - dough).abs() < 1e-6 * dough);
            dough * f64::from(bench.count.get())
        })
        .sum();
    assert!((made.dough.grams() - needed).abs() < 1e-6 * needed);
    assert_eq!(made.total.parts.len(), sheet.formula.parts.len());
}

#[test]
fn every_class_is_shared_out_whole_or_refused() {
    let (_, sheet) = examples().remove(0);
    let (mut answered, mut refused) = (0, 0);
    for students in COUNTS {
        for at_bench in COUNTS {
            for loaves in [1, 3, u16::MAX] {
                for shown in [0, 1] {
                    match made(&sheet, settings(students, at_bench, loaves, shown)) {
                        Ok(class) => {
                            answered += 1;
                            is_whole(&sheet, &class);
                        }
                        Err(_) => refused += 1,
                    }
                }
            }
        }
    }
    assert!(answered > 60 && refused > 30, "{answered} {refused}");
}

/// Thirteen in pairs with one loaf each: six benches of two, one of one, and the teacher's.
#[test]
fn an_odd_student_has_a_bench_and_the_teacher_too() {
    let (_, sheet) = examples().remove(0);
    let class = made(&sheet, settings(13, 2, 1, 1)).unwrap();
    let benches: Vec<_> = class
        .benches
        .iter()
        .map(|bench| (bench.count.get(), bench.students, bench.loaves.get()))
        .collect();
    assert_eq!(benches, [(6, 2, 2), (1, 1, 1), (1, 0, 1)]);
    assert_eq!((class.stations, class.loaves), (7, 14));
}

#[test]
fn bowls_are_as_many_as_benches_and_large_enough() {
    let (_, sheet) = examples().remove(0);
    let class = made(&sheet, settings(13, 2, 1, 1)).unwrap();
    let needs = bowls(&class);
    for part in 0..sheet.formula.parts.len() {
        let count: u32 = needs
            .iter()
            .filter(|one| one.part == part)
            .map(|one| one.count)
            .sum();
        assert_eq!(count, 8, "one at each of eight benches");
    }
    for need in &needs {
        let least = need.holds.grams() * DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram() * 2.0;
        assert!(need.room.cubic_centimetres() >= least - 1e-9);
    }
}

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap()
}

#[test]
fn every_loaf_is_in_one_load_and_no_load_is_too_large() {
    for loaves in [1, 2, 5, 6, 7, 13, 59, 60, 61, 4000] {
        for places in [1, 4, 6, 100] {
            let wish = OvenSettings {
                places: count(places),
                bake: minutes(28.0),
                between: minutes(7.0),
            };
            match oven(NonZeroU32::new(loaves).unwrap(), wish) {
                Err(ClassError::TooManyLoads { loads, most }) => assert!(loads > most),
                Err(error) => panic!("{error}"),
                Ok(plan) => {
                    assert!(
                        plan.loads
                            .iter()
                            .all(|load| load.loaves <= u32::from(places))
                    );
                    let most = plan.loads.iter().map(|load| load.loaves).max().unwrap();
                    let least = plan.loads.iter().map(|load| load.loaves).min().unwrap();
                    assert!(most - least <= 1);
                    let mut next = 1;
                    for load in &plan.loads {
                        assert_eq!(load.first, next);
                        next += load.loaves;
                    }
                    assert_eq!(next, loaves + 1);
                    for pair in plan.loads.windows(2) {
                        let gap = pair[1].goes_in.minutes() - pair[0].comes_out.minutes();
                        assert!((gap - 7.0).abs() < 1e-9);
                    }
                    let last = plan.loads.last().unwrap();
                    assert!((plan.all_out.minutes() - last.comes_out.minutes()).abs() < 1e-9);
                }
            }
        }
    }
}

/// Fourteen loaves, six at a time: 5, 5 and 4; in at 0, 40 and 80 minutes, the last out at 110.
#[test]
fn fourteen_loaves_six_at_a_time_are_three_loads() {
    let plan = oven(NonZeroU32::new(14).unwrap(), ClassSettings::default().oven).unwrap();
    let loads: Vec<_> = plan
        .loads
        .iter()
        .map(|load| (load.first, load.loaves, load.goes_in.minutes()))
        .collect();
    assert_eq!(loads, [(1, 5, 0.0), (6, 5, 40.0), (11, 4, 80.0)]);
    assert!((plan.all_out.minutes() - 110.0).abs() < 1e-9);
    assert!(plan.waits_longer_than(minutes(60.0)));
    assert!(!plan.waits_longer_than(minutes(80.0)));
}
