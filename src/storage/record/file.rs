//! A file of formulas: one, or all of them with the workspace, without loss.

use serde::{Deserialize, Serialize};

use crate::engine::class::ClassSettings;
use crate::sheet::day::{DaySettings, Log};
use crate::sheet::{Id, Kitchen, Kitchens, Moment, Pantry, SavedTin, Sheet, Shelf, Workspace};

use super::each::{Each, good, one};
use super::error::RecordError;
use super::read::{converted, described};
use super::text::List;
use super::{FILE_LIMIT, Record, head, upgrade};

/// One formula in a file.
#[derive(Clone, Debug, Deserialize, PartialEq, Serialize)]
#[serde(remote = "Self", deny_unknown_fields)]
pub struct FormulaInFile {
    /// The id of its record.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<Id>,
    /// When it was last changed.
    #[serde(rename = "changed_ms", skip_serializing_if = "Option::is_none")]
    pub changed: Option<Moment>,
    /// When it was put into the bin, if it was.
    #[serde(rename = "binned_ms", skip_serializing_if = "Option::is_none")]
    pub binned: Option<Moment>,
    /// The formula.
    pub sheet: Sheet,
}

/// A file of formulas, and the workspace.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FormulaFile {
    /// The formulas that could be read.
    pub formulas: Vec<FormulaInFile>,
    /// The workspace.
    pub beside: Workspace,
    /// What is wrong with the others, one by one.
    pub refused: Vec<RecordError>,
}

described! {
    DayOf: DayOf;
    FormulaInFile: FormulaInFile;
}

converted! { FormulaFile: FileRecord; }

impl Record for FormulaFile {
    const KIND: &'static str = "formulas";
    const LIMIT: usize = FILE_LIMIT;

    /// The record of a single formula is a file too. A formula that cannot be read does not stand
    /// in the way of the others.
    fn read(text: &str) -> Result<Self, RecordError> {
        let head = head::head(text, Self::LIMIT)?;
        upgrade::known(&head, Self::VERSION)?;
        if head.kind == Sheet::KIND {
            upgrade::is_a(&head, Sheet::KIND)?;
            let one = FormulaInFile {
                id: None,
                changed: None,
                binned: None,
                sheet: upgrade::read(&head, Sheet::UPGRADES)?,
            };
            return Ok(Self {
                formulas: vec![one],
                ..Self::default()
            });
        }
        upgrade::is_a(&head, Self::KIND)?;
        upgrade::read(&head, Self::UPGRADES)
    }
}

/// What is empty is left out.
#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct FileRecord {
    #[serde(with = "List::<{ Shelf::MOST }>")]
    formulas: Vec<Each<FormulaInFile>>,
    /// Files of the first releases have the one that was chosen.
    #[serde(skip_serializing_if = "Option::is_none")]
    kitchen: Option<Each<Kitchen>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    kitchens: Option<Each<Kitchens>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    tins: Option<Each<TinList>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pantry: Option<Each<Pantry>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    class: Option<Each<ClassSettings>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    days: Option<Each<Days>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    log: Option<Each<Log>>,
}

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct TinList(#[serde(with = "List::<{ SavedTin::MOST }>")] Vec<SavedTin>);

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Days(#[serde(with = "List::<{ Shelf::MOST }>")] Vec<DayOf>);

/// A plan, and the formula it belongs to.
#[derive(Deserialize, Serialize)]
#[serde(remote = "Self", deny_unknown_fields)]
struct DayOf {
    id: Id,
    day: DaySettings,
}

impl From<&FormulaFile> for FileRecord {
    fn from(file: &FormulaFile) -> Self {
        let Workspace {
            kitchens,
            tins,
            pantry,
            class,
            days,
            log,
        } = &file.beside;
        let day = |(id, day): &(Id, DaySettings)| DayOf {
            id: id.clone(),
            day: day.clone(),
        };
        let filed = file.formulas.iter();
        let days = || Days(days.iter().map(day).collect());
        Self {
            formulas: filed.map(|filed| Each(Ok(filed.clone()))).collect(),
            kitchen: None,
            kitchens: kitchens.clone().map(|all| Each(Ok(all))),
            tins: some(!tins.is_empty(), || TinList(tins.clone())),
            pantry: some(*pantry != Pantry::default(), || pantry.clone()),
            class: class.map(|class| Each(Ok(class))),
            days: some(!file.beside.days.is_empty(), days),
            log: some(!log.bakes().is_empty(), || log.clone()),
        }
    }
}

fn some<T>(is_there: bool, component: impl FnOnce() -> T) -> Option<Each<T>> {
    is_there.then(|| Each(Ok(component())))
}

impl From<FileRecord> for FormulaFile {
    fn from(record: FileRecord) -> Self {
        let mut refused = Vec::new();
        let formulas = good(record.formulas, "formulas", &mut refused);
        let chosen = one(record.kitchen, "kitchen", &mut refused);
        let all = one(record.kitchens, "kitchens", &mut refused);
        let tins = one(record.tins, "tins", &mut refused);
        let days = one(record.days, "days", &mut refused);
        let days = days.map_or_else(Vec::new, |days| days.0);
        let beside = Workspace {
            kitchens: all.or(chosen.map(Kitchens::only)),
            tins: tins.map_or_else(Vec::new, |tins| tins.0),
            pantry: one(record.pantry, "pantry", &mut refused).unwrap_or_default(),
            class: one(record.class, "class", &mut refused),
            days: days.into_iter().map(|of| (of.id, of.day)).collect(),
            log: one(record.log, "log", &mut refused).unwrap_or_default(),
        };
        Self {
            formulas,
            beside,
            refused,
        }
    }
}
