//! Frozen samples of files, and of the records of a first visit.

use softcrumb::engine::class::ClassSettings;
use softcrumb::sheet::day::{DaySettings, Log};
use softcrumb::sheet::{Id, Kitchen, Kitchens, Pantry, Settings, Shelf, Workspace};
use softcrumb::storage::record::{FormulaFile, Record, SavedTins};

use crate::days::ms;
use crate::frozen::opens;
use crate::written::read_tins;
use crate::{full, full_days};

/// What each record says where nothing was ever set.
#[test]
fn records_of_a_first_visit_open_as_usual() {
    let samples = include_str!("samples/v1.usual.jsonl");
    let line = |at: usize| samples.lines().nth(at).unwrap();
    assert_eq!(samples.lines().count(), 10);
    let usual = full::former_kitchen();
    assert_eq!(opens(line(0), Kitchen::read, Record::write), usual);
    let usual = Kitchens::only(full::former_kitchen());
    assert_eq!(opens(line(1), Kitchens::read, Record::write), usual);
    assert_eq!(opens(line(2), SavedTins::read, Record::write).tins, []);
    let usual = Pantry::default();
    assert_eq!(opens(line(3), Pantry::read, Record::write), usual);
    let usual = ClassSettings::default();
    let usual = usual.with_loaf(usual.loaf);
    assert_eq!(opens(line(4), ClassSettings::read, Record::write), usual);
    let usual = DaySettings::default();
    assert_eq!(opens(line(5), DaySettings::read, Record::write), usual);
    assert_eq!(opens(line(6), Log::read, Record::write), Log::default());
    assert_eq!(
        opens(line(7), Settings::read, Record::write),
        Settings::default()
    );
    assert_eq!(opens(line(8), Shelf::read, Record::write), Shelf::default());
    assert_eq!(
        opens(line(9), FormulaFile::read, Record::write),
        FormulaFile::default()
    );
}

/// Every formula and every other record, in one file.
#[test]
fn a_file_of_everything_opens_whole() {
    let opened = opens(
        include_str!("samples/v1.full.everything.json"),
        FormulaFile::read,
        Record::write,
    );
    assert_eq!(opened.refused, []);
    let ids: Vec<Option<Id>> = opened.formulas.iter().map(|one| one.id.clone()).collect();
    assert_eq!(
        ids,
        [Id::from_text("a2"), Id::from_text("eveningclass2"), None]
    );
    let one = &opened.formulas[1];
    assert_eq!(
        (one.changed, one.binned),
        (Some(ms(1_774_712_345_679.0)), Some(ms(1_774_812_345_680.0)))
    );
    assert_eq!(one.sheet, full::sheet());
    let beside: &Workspace = &opened.beside;
    let three = vec![full::high(), full::stormy(), full::former_kitchen()];
    assert_eq!(beside.kitchens, Some(Kitchens::of(three, 1)));
    let days = [
        (Id::from_text("eveningclass2").unwrap(), full_days::day()),
        (Id::from_text("a2").unwrap(), full_days::sleepless()),
    ];
    assert_eq!(beside.days, days);
    assert_eq!(beside.log, full_days::log());
    let drawn = |samples: &'static str| samples.lines().nth(1).unwrap();
    let tins = read_tins(drawn(include_str!("samples/v1.drawn_tins.jsonl")));
    assert_eq!(Ok(&beside.tins), tins.as_ref());
    let pantry = Pantry::read(drawn(include_str!("samples/v1.drawn_pantries.jsonl")));
    assert_eq!(Ok(&beside.pantry), pantry.as_ref());
    let class = ClassSettings::read(drawn(include_str!("samples/v1.drawn_classes.jsonl")));
    assert_eq!(beside.class, class.ok());
}
