//! What stands beside the formulas in a file of everything, each part by itself.

use crate::sheet::day::DaySettings;
use crate::sheet::{Id, Kitchens, Workspace};

use super::error::RecordError;
use super::fields::{Fields, list};
use super::print::Writer;
use super::shelf::id;
use super::tree::Tree;
use super::{class, day, kitchen, log, pantry, tin};

/// The keys of what may stand beside the formulas. Files of the first releases have `kitchen`, the
/// one that was chosen.
pub(super) const KEYS: [&str; 7] = [
    "kitchen", "kitchens", "tins", "pantry", "class", "days", "log",
];

const MOST_DAYS: usize = crate::sheet::Shelf::MOST;

/// Writes it; what is empty is left out.
pub(super) fn write<'t>(beside: &'t Workspace, begun: Writer<'t>) -> Writer<'t> {
    let Workspace {
        kitchens,
        tins,
        pantry,
        class,
        days,
        log,
    } = beside;
    let component = Writer::new;
    let begun = begun.maybe_tree(
        "kitchens",
        kitchens
            .as_ref()
            .map(|all| kitchen::body_of_all(all, component())),
    );
    let begun = if tins.is_empty() {
        begun
    } else {
        tin::list_of(tins, begun)
    };
    let known = *pantry != crate::sheet::Pantry::default();
    let begun = begun
        .maybe_tree("pantry", known.then(|| pantry::body(pantry, component())))
        .maybe_tree(
            "class",
            class.as_ref().map(|one| class::body(one, component())),
        );
    let begun = if days.is_empty() {
        begun
    } else {
        begun.list("days", days.iter().map(write_day))
    };
    let baked = !log.bakes().is_empty();
    begun.maybe_tree("log", baked.then(|| log::body(log, component())))
}

fn write_day((of, settings): &(Id, DaySettings)) -> Tree<'_> {
    Writer::new()
        .text("id", of.as_text())
        .tree("day", day::body(settings, Writer::new()))
        .done()
}

/// Reads it; a part that cannot be read is named, and the others stand.
pub(super) fn read(fields: &Fields) -> (Workspace, Vec<RecordError>) {
    let mut refused = Vec::new();
    let beside = Workspace {
        kitchens: kept(read_kitchens(fields), &mut refused),
        tins: kept(fields.maybe("tins", tin::read_list), &mut refused).unwrap_or_default(),
        pantry: kept(
            fields.maybe("pantry", |tree| {
                pantry::read_body(&Fields::of(tree, pantry::KNOWN)?)
            }),
            &mut refused,
        )
        .unwrap_or_default(),
        class: kept(
            fields.maybe("class", |tree| {
                class::read_body(&Fields::of(tree, class::KNOWN)?)
            }),
            &mut refused,
        ),
        days: kept(
            fields.maybe("days", |tree| list(tree, MOST_DAYS, read_day)),
            &mut refused,
        )
        .unwrap_or_default(),
        log: kept(
            fields.maybe("log", |tree| log::read_body(&Fields::of(tree, log::KNOWN)?)),
            &mut refused,
        )
        .unwrap_or_default(),
    };
    (beside, refused)
}

fn kept<T>(read: Result<Option<T>, RecordError>, refused: &mut Vec<RecordError>) -> Option<T> {
    read.unwrap_or_else(|error| {
        refused.push(error);
        None
    })
}

fn read_kitchens(fields: &Fields) -> Result<Option<Kitchens>, RecordError> {
    let all = fields.maybe("kitchens", |tree| {
        kitchen::read_all_body(&Fields::of(tree, kitchen::KNOWN_OF_ALL)?)
    })?;
    let one = fields.maybe("kitchen", |tree| {
        kitchen::read_body(&Fields::of(tree, kitchen::KNOWN)?)
    })?;
    Ok(all.or(one.map(Kitchens::only)))
}

fn read_day(tree: &Tree) -> Result<(Id, DaySettings), RecordError> {
    let fields = Fields::of(tree, &["id", "day"])?;
    let settings = fields.needed("day", |tree| day::read_body(&Fields::of(tree, day::KNOWN)?))?;
    Ok((fields.needed("id", id)?, settings))
}
