//! Frozen samples of all that the release of November 2026 writes: each opens as what it was read
//! as then, and is written again as it stands. Files are added, never changed.

use softcrumb::engine::class::ClassSettings;
use softcrumb::sheet::Pantry;
use softcrumb::sheet::Shelf;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::day::Log;
use std::fmt::Debug;

use softcrumb::sheet::day::Bench;
use softcrumb::sheet::{Kitchen, Kitchens, Language, Settings, Sheet, Theme, Trial, UnitSystem};
use softcrumb::storage::link;
use softcrumb::storage::record::{LogFile, Record, RecordError, SavedTins, SavedTrial};

use crate::days::bench;
use crate::{full, full_days};

const PHOTO: &str = "data:image/jpeg;base64,/9j/4AAQSkZJRgABAQ==";

/// What the present release writes for a sample. The former default friction of a mixer, 1 K/min,
/// has become the present one; all else is written as it was.
fn as_written_now(sample: &str) -> String {
    sample.replace(
        r#""friction_k_per_min":1,"mixing_min""#,
        r#""friction_k_per_min":0.12,"mixing_min""#,
    )
}

/// Reads a sample, and proves that writing it again gives the same text, and reading that the same
/// value.
#[track_caller]
pub(crate) fn opens<T: Debug + PartialEq>(
    sample: &str,
    read: impl Fn(&str) -> Result<T, RecordError>,
    write: impl Fn(&T) -> String,
) -> T {
    let sample = sample.trim_end();
    let value = read(sample).unwrap();
    let again = write(&value);
    assert_eq!(again, as_written_now(sample));
    assert_eq!(read(&again).as_ref(), Ok(&value));
    value
}

#[track_caller]
fn each_opens<T: Debug + PartialEq>(
    samples: &str,
    count: usize,
    read: impl Fn(&str) -> Result<T, RecordError>,
    write: impl Fn(&T) -> String,
) -> Vec<T> {
    let lines = samples.lines();
    let all: Vec<T> = lines.map(|line| opens(line, &read, &write)).collect();
    assert_eq!(all.len(), count);
    all
}

/// Each link opens as the formula of the record beside it, and is written again as it stands.
fn links_agree(links: &str, sheets: &[Sheet]) {
    assert_eq!(links.lines().count(), sheets.len());
    for (text, sheet) in links.lines().zip(sheets) {
        assert_eq!(link::read(text).as_ref(), Ok(sheet));
        assert_eq!(link::write(sheet).unwrap(), text);
    }
}

#[test]
fn the_examples_open_from_record_and_link() {
    let sheets = each_opens(
        include_str!("samples/v1.examples.jsonl"),
        4,
        Sheet::read,
        Record::write,
    );
    links_agree(include_str!("samples/v1.examples.links.txt"), &sheets);
    let parts: Vec<usize> = sheets.iter().map(|s| s.formula.parts.len()).collect();
    assert_eq!(parts, [5, 1, 3, 3]);
}

#[test]
fn a_formula_with_every_field_opens_from_record_and_link() {
    let sheet = opens(
        include_str!("samples/v1.full.formula.json"),
        Sheet::read,
        Record::write,
    );
    assert_eq!(sheet, full::sheet());
    links_agree(include_str!("samples/v1.full.links.txt"), &[sheet]);
}

/// Sixty formulas drawn at random: two ways of writing them, which share no code, agree.
#[test]
fn drawn_formulas_open_from_record_and_link() {
    let sheets = each_opens(
        include_str!("samples/v1.drawn_formulas.jsonl"),
        60,
        Sheet::read,
        Record::write,
    );
    links_agree(include_str!("samples/v1.drawn.links.txt"), &sheets);
}

#[test]
fn kitchens_with_every_field_open() {
    let all = opens(
        include_str!("samples/v1.full.kitchens.json"),
        Kitchens::read,
        Record::write,
    );
    let three = vec![full::high(), full::stormy(), full::former_kitchen()];
    assert_eq!(all, Kitchens::of(three, 1));
    let one = opens(
        include_str!("samples/v1.full.kitchen.json"),
        Kitchen::read,
        Record::write,
    );
    assert_eq!(one, full::high());
    each_opens(
        include_str!("samples/v1.drawn_kitchens.jsonl"),
        30,
        Kitchen::read,
        Record::write,
    );
}

#[test]
fn every_setting_opens() {
    let all = each_opens(
        include_str!("samples/v1.every_setting.jsonl"),
        24,
        Settings::read,
        Record::write,
    );
    let languages = [None].into_iter().chain(Language::ALL.map(Some));
    let expected: Vec<Settings> = languages
        .flat_map(|language| {
            let units = [UnitSystem::Grams, UnitSystem::Ounces].into_iter();
            units.flat_map(move |units| {
                [Theme::Device, Theme::Light, Theme::Dark].map(|theme| Settings {
                    units,
                    theme,
                    language,
                })
            })
        })
        .collect();
    assert_eq!(all, expected);
}

#[test]
fn days_with_every_field_open() {
    let day = opens(
        include_str!("samples/v1.full.day.json"),
        DaySettings::read,
        Record::write,
    );
    assert_eq!(day, full_days::day());
    let night = opens(
        include_str!("samples/v1.sleepless.day.json"),
        DaySettings::read,
        Record::write,
    );
    assert_eq!(night, full_days::sleepless());
    let bench_read = opens(
        include_str!("samples/v1.full.bench.json"),
        Bench::read,
        Record::write,
    );
    assert_eq!(bench_read, full_bench());
}

fn full_bench() -> Bench {
    Bench {
        bake: full_days::bake(),
        put_in: Vec::new(),
        ..bench()
    }
}

#[test]
fn a_log_with_every_field_opens_by_itself_and_as_a_file() {
    let log = opens(
        include_str!("samples/v1.full.log.json"),
        Log::read,
        Record::write,
    );
    assert_eq!(log, full_days::log());
    let file = opens(
        include_str!("samples/v1.full.log_file.json"),
        LogFile::read,
        Record::write,
    );
    assert_eq!(file.log, full_days::log());
    assert_eq!(file.photos, [(full_days::bake().id, PHOTO.to_owned())]);
    assert_eq!(file.refused, []);
}

#[test]
fn tins_pantries_classes_and_the_index_open() {
    each_opens(
        include_str!("samples/v1.drawn_tins.jsonl"),
        20,
        SavedTins::read,
        Record::write,
    );
    each_opens(
        include_str!("samples/v1.drawn_pantries.jsonl"),
        20,
        Pantry::read,
        Record::write,
    );
    each_opens(
        include_str!("samples/v1.drawn_classes.jsonl"),
        20,
        ClassSettings::read,
        Record::write,
    );
    let sample = include_str!("samples/v1.drawn.shelf.json");
    let shelf = Shelf::read(sample).unwrap();
    let again = shelf.write();
    assert_eq!(Shelf::read(&again).as_ref(), Ok(&shelf));
    assert_eq!(json(&again), light(json(sample)));
    assert_eq!((shelf.shelved().len(), shelf.binned().len()), (21, 10));
}

fn json(text: &str) -> serde_json::Value {
    serde_json::from_str(text).unwrap()
}

/// A dough of more than a tonne is not shown, and is nought when the index is written again.
fn light(mut shelf: serde_json::Value) -> serde_json::Value {
    for entry in shelf["entries"].as_array_mut().unwrap() {
        if entry["dough_g"].as_f64().unwrap() > 1e6 {
            entry["dough_g"] = 0.into();
        }
    }
    shelf
}

#[test]
fn a_trial_of_the_full_formula_opens() {
    let read = |text: &str| {
        let saved = SavedTrial::read(text)?;
        Ok(Trial::again(saved.base, saved.tried, 7))
    };
    let trial = opens(
        include_str!("samples/v1.full.trial.json"),
        read,
        |trial: &Trial| SavedTrial::of(trial).write(),
    );
    assert_eq!(trial.base, full::sheet());
    assert_eq!(trial.steps.now().name, "Everything, tried");
}
