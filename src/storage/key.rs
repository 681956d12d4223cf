//! The key of each record in the browser's storage.

use crate::engine::class::ClassSettings;
use crate::sheet::day::{Bench, Log};
use crate::sheet::{Id, Kitchens, Pantry, Settings, Shelf};

use super::record::{Record, SavedTins};

/// The index of the shelf and the bin.
pub const SHELF: &str = "softcrumb.shelf";
/// All kitchens, and which of them is chosen.
pub const KITCHEN: &str = "softcrumb.kitchen";
/// The user's tins.
pub const TINS: &str = "softcrumb.tins";
/// Packs, prices and the allergens on packets.
pub const PANTRY: &str = "softcrumb.pantry";
/// The settings of a class.
pub const CLASS: &str = "softcrumb.class";
/// The settings.
pub const SETTINGS: &str = "softcrumb.settings";
/// The id of the formula that is open, as plain text.
pub const OPEN: &str = "softcrumb.open";
/// The link whose notice was closed, as plain text.
pub const CLOSED_VISIT: &str = "softcrumb.closed_visit";
/// Changes since formulas were last saved to a file, as plain digits.
pub const UNFILED: &str = "softcrumb.unfiled";

/// The log of bakes.
pub const LOG: &str = "softcrumb.log";
/// The bake under way.
pub const BENCH: &str = "softcrumb.bench";
/// The copy of a link that is being baked, which no formula of the shelf is.
pub const BENCH_COPY: &str = "softcrumb.bench_copy";
/// The plan settings of that copy.
pub const BENCH_DAY: &str = "softcrumb.bench_day";

/// Number of changes after which saving to a file is suggested.
pub const FILE_SUGGESTED: u32 = 200;

const FORMULA: &str = "softcrumb.formula.";
const HANDED: &str = "softcrumb.handed.";
const DAY: &str = "softcrumb.day.";
const PHOTO: &str = "softcrumb.photo.";
const TRIAL: &str = "softcrumb.trial.";

/// The key of one formula.
#[must_use]
pub fn of_formula(id: &Id) -> String {
    format!("{FORMULA}{}", id.as_text())
}

/// The key that says that a formula came by a link and begins with what to weigh.
#[must_use]
pub fn of_handed(id: &Id) -> String {
    format!("{HANDED}{}", id.as_text())
}

/// Whether a key is one of these.
#[must_use]
pub fn is_ours(key: &str) -> bool {
    key.starts_with("softcrumb.")
}

/// The formula a key belongs to; `None` for any other key.
#[must_use]
pub fn formula_of(key: &str) -> Option<Id> {
    Id::from_text(key.strip_prefix(FORMULA)?)
}

/// The key of the plan settings of a formula.
#[must_use]
pub fn of_day(formula: &Id) -> String {
    format!("{DAY}{}", formula.as_text())
}

/// The formula whose plan a key belongs to; `None` for any other key.
#[must_use]
pub fn day_of(key: &str) -> Option<Id> {
    Id::from_text(key.strip_prefix(DAY)?)
}

/// Whether a key is one of a photo.
#[must_use]
pub fn is_photo(key: &str) -> bool {
    key.starts_with(PHOTO)
}

/// The key of a bake's photo.
#[must_use]
pub fn of_photo(bake: &Id) -> String {
    format!("{PHOTO}{}", bake.as_text())
}

/// The key of the trial that an open page (`tab`) has on a formula; on a visitor's copy without
/// one.
#[must_use]
pub fn of_trial(formula: Option<&Id>, tab: &Id) -> String {
    format!("{}{}", of_trials(formula), tab.as_text())
}

/// What the keys of all trials on a formula begin with.
#[must_use]
pub fn of_trials(formula: Option<&Id>) -> String {
    format!("{TRIAL}{}.", formula.map_or("-", Id::as_text))
}

/// A record that has one place of its own in the browser's storage.
pub trait Keyed: Record {
    /// Its key.
    const KEY: &'static str;
}

/// Kinds of records with their keys.
macro_rules! keyed {
    ($($of:ty: $key:ident;)+) => {$(
        impl Keyed for $of {
            const KEY: &'static str = $key;
        }
    )+};
}

keyed! {
    Shelf: SHELF;
    Kitchens: KITCHEN;
    SavedTins: TINS;
    Pantry: PANTRY;
    ClassSettings: CLASS;
    Settings: SETTINGS;
    Log: LOG;
    Bench: BENCH;
}
