//! Files in words: what came of taking one in.

use crate::sheet::Added;
use crate::words::{picture::listed, say};

/// How many formulas were put onto the shelf.
#[must_use]
pub fn taken_in(formulas: usize) -> String {
    match formulas {
        0 => say!("No formula in this file could be taken in.").to_owned(),
        1 => say!("One formula is on your shelf, and open.").to_owned(),
        many => say!(
            "{many} formulas are on your shelf; the first is open.",
            many
        ),
    }
}

/// What was added beside the formulas; nothing where nothing was new.
#[must_use]
pub fn beside(added: Added) -> Option<String> {
    let counted = |count: usize, [one, several]: [&str; 2]| match count {
        0 => None,
        1 => Some(one.to_owned()),
        many => Some(format!("{many} {several}")),
    };
    let all = [
        counted(added.kitchens, [say!("one kitchen"), say!("kitchens")]),
        counted(added.tins, [say!("one tin"), say!("tins")]),
        counted(
            added.foods,
            [
                say!("the packet of one ingredient"),
                say!("packets of ingredients"),
            ],
        ),
        added.class.then(|| say!("the class").to_owned()),
        counted(added.days, [say!("one plan"), say!("plans")]),
        counted(
            added.bakes,
            [say!("one bake of the log"), say!("bakes of the log")],
        ),
    ];
    let all: Vec<String> = all.into_iter().flatten().collect();
    let list = listed(&all)?;
    Some(say!("Added: {list}. What was here stays as it is.", list))
}
