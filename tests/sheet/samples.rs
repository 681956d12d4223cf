//! Frozen samples: what a released version has written opens for ever. Files are added, never
//! changed.

use crate::written::write_log_file;
use softcrumb::engine::heat::CoolingVessel;
use softcrumb::sheet::Kitchens;
use softcrumb::sheet::Sheet;
use softcrumb::sheet::Shelf;
use softcrumb::sheet::day::Bench;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::day::Log;
use softcrumb::sheet::{Kitchen, Settings, Trial};
use softcrumb::storage::link;
use softcrumb::storage::record::{FormulaFile, FormulaInFile, LogFile, Record, SavedTrial};

/// Each version's samples: a formula, and what else it writes.
const V1_FORMULA: &str = include_str!("samples/v1.formula.json");
const V1_OWN: &str = include_str!("samples/v1.own.json");
const V1_KITCHEN: &str = include_str!("samples/v1.kitchen.json");
const V1_KITCHENS: &str = include_str!("samples/v1.kitchens.json");
const V1_SETTINGS: &str = include_str!("samples/v1.settings.json");
const V1_SHELF: &str = include_str!("samples/v1.shelf.json");
const V1_FILE: &str = include_str!("samples/v1.formulas.json");
const V1_LINKS: &str = include_str!("samples/v1.links.txt");

#[test]
fn version_1_formulas_open_with_every_figure() {
    let sheet = Sheet::read(V1_FORMULA).unwrap();
    assert_eq!(sheet.name, "Frozen sample");
    assert_eq!(sheet.formula.parts.len(), 6);
    let grams: f64 = sheet
        .formula
        .parts
        .iter()
        .map(|part| part.mass().grams())
        .sum();
    assert!((grams - 1042.35).abs() < 1e-9, "{grams}");
    assert_eq!(sheet.batch.pieces.get(), 9);
    assert_eq!(sheet.heat.bake.phases.len(), 2);
    let (bench, ice) = sheet.heat.cooling.own_times().unwrap();
    assert_eq!((bench.minutes(), ice.minutes()), (20.0, 15.0));
    assert_eq!(sheet.heat.cooling.vessel, CoolingVessel::Dish);
    let at = sheet.formula.parts[1].temperature.unwrap();
    assert_eq!(at.celsius(), 6.5);
    assert_eq!(sheet.note, "Two lines\nof words, with \"quotes\".");
    // The release that added nothing writes the very same text.
    assert_eq!(sheet.write(), V1_FORMULA.trim_end());
}

#[test]
fn version_1_own_ingredients_open() {
    let sheet = Sheet::read(V1_OWN).unwrap();
    let food = &sheet.formula.parts[0].lines[0].food;
    assert_eq!(food.name(), "Mill No. 7 dark bar");
    assert_eq!(food.allergens().len(), 2);
    assert_eq!(sheet.write(), V1_OWN.trim_end());
}

#[test]
fn version_1_kitchen_settings_and_shelf_open() {
    let kitchen = Kitchen::read(V1_KITCHEN).unwrap();
    assert_ne!(kitchen, Kitchen::default());
    assert_eq!(kitchen.write(), V1_KITCHEN.trim_end());
    let kitchens = Kitchens::read(V1_KITCHENS).unwrap();
    assert_eq!((kitchens.all().count(), kitchens.chosen()), (2, 1));
    assert_eq!(kitchens.all().next(), Some(&kitchen));
    assert_eq!(kitchens.write(), V1_KITCHENS.trim_end());
    assert_ne!(Settings::read(V1_SETTINGS), Ok(Settings::default()));
    let shelf = Shelf::read(V1_SHELF).unwrap();
    assert_eq!((shelf.shelved().len(), shelf.binned().len()), (2, 1));
}

#[test]
fn version_1_files_open_whole() {
    let opened = FormulaFile::read(V1_FILE).unwrap();
    assert_eq!(opened.refused, []);
    let names: Vec<&str> = opened
        .formulas
        .iter()
        .map(|f: &FormulaInFile| f.sheet.name.as_str())
        .collect();
    assert_eq!(names, ["Frozen sample", "Own bar"]);
    assert!(opened.beside.kitchens.is_some());
}

#[test]
fn version_1_links_open_as_the_same_formulas() {
    let links: Vec<&str> = V1_LINKS.lines().collect();
    assert_eq!(
        link::read(links[0]).unwrap(),
        Sheet::read(V1_FORMULA).unwrap()
    );
    assert_eq!(link::read(links[1]).unwrap(), Sheet::read(V1_OWN).unwrap());
}

const V1_DAY: &str = include_str!("samples/v1.day.json");
const V1_LOG: &str = include_str!("samples/v1.log.json");
const V1_BENCH: &str = include_str!("samples/v1.bench.json");

#[test]
fn version_1_days_logs_and_benches_open_with_every_figure() {
    let day = DaySettings::read(V1_DAY).unwrap();
    assert_eq!(day.edits.len(), 4);
    assert_eq!(day.rises.proof_place.unwrap().celsius(), 29.5);
    assert_eq!(day.write(), V1_DAY.trim_end());
    let log = Log::read(V1_LOG).unwrap();
    let names: Vec<&str> = log.bakes().iter().map(|bake| bake.name.as_str()).collect();
    assert_eq!(names, ["Evening class loaf"; 2]);
    assert_eq!(log.bakes()[0].noted.bowl.unwrap().after.grams(), 893.5);
    assert_eq!(log.write(), V1_LOG.trim_end());
    let bench = Bench::read(V1_BENCH).unwrap();
    assert_eq!((bench.timers.len(), bench.weighed.len()), (2, 2));
    assert_eq!(bench.write(), V1_BENCH.trim_end());
}

const V1_DAY_KNOWN: &str = include_str!("samples/v1.day_known.json");
const V1_BENCH_MADE_UP: &str = include_str!("samples/v1.bench_made_up.json");
const V1_LOG_FILE: &str = include_str!("samples/v1.log_file.json");

/// Known rises with their dough, a bench with what was planned and made up, a log with a photo.
#[test]
fn version_1_days_with_all_that_came_later_open_with_every_figure() {
    let day = DaySettings::read(V1_DAY_KNOWN).unwrap();
    // Its rises are the usual ones, which nobody stated of that dough: it is no dough of its own.
    assert_eq!(day.rises.dough, None);
    assert_eq!(day.rises.bulk_place.unwrap().celsius(), 27.0);
    let dough = r#""dough":{"yeast_share":0.025,"sugar_share":0.1,"salt_share":0.018},"#;
    assert_eq!(day.write(), V1_DAY_KNOWN.trim_end().replace(dough, ""));
    let bench = Bench::read(V1_BENCH_MADE_UP).unwrap();
    assert_eq!((bench.planned.len(), bench.measured.len()), (1, 1));
    assert_eq!((bench.edits.len(), bench.proof_place.is_some()), (1, true));
    assert_eq!(bench.write(), V1_BENCH_MADE_UP.trim_end());
    let file = LogFile::read(V1_LOG_FILE).unwrap();
    assert_eq!((file.log.bakes().len(), file.photos.len()), (2, 1));
    assert_eq!(
        write_log_file(&file.log, &file.photos),
        V1_LOG_FILE.trim_end()
    );
}

const V1_TRIAL: &str = include_str!("samples/v1.trial.json");

#[test]
fn version_1_trials_open_with_what_they_began_from() {
    let SavedTrial { base, tried } = SavedTrial::read(V1_TRIAL).unwrap();
    assert_eq!(base, Sheet::read(V1_FORMULA).unwrap());
    assert_eq!(tried.name, "Frozen sample, tried");
    assert_eq!(
        SavedTrial::of(&Trial::again(base, tried, 1)).write(),
        V1_TRIAL.trim_end()
    );
}
