//! The report on an imported file.

use crate::sheet::Added;
use crate::text::{chart::listed, tr};

/// Says how many formulas were imported.
#[must_use]
pub fn formulas_imported(formulas: usize) -> String {
    match formulas {
        0 => tr!("No formula in this file could be imported.").to_owned(),
        1 => tr!("One formula is on your shelf, and open.").to_owned(),
        many => tr!(
            "{many} formulas are on your shelf; the first is open.",
            many = many
        ),
    }
}

/// Says what else was imported; `None` if nothing was new.
#[must_use]
pub fn beside(added: Added) -> Option<String> {
    let counted = |count: usize, [one, several]: [&str; 2]| match count {
        0 => None,
        1 => Some(one.to_owned()),
        many => Some(tr!("{many} {several}", many = many, several = several)),
    };
    let all = [
        counted(added.kitchens, [tr!("one kitchen"), tr!("kitchens")]),
        counted(added.tins, [tr!("one tin"), tr!("tins")]),
        counted(
            added.foods,
            [
                tr!("the packet of one ingredient"),
                tr!("packets of ingredients"),
            ],
        ),
        added.class.then(|| tr!("the class").to_owned()),
        counted(added.days, [tr!("one plan"), tr!("plans")]),
        counted(
            added.bakes,
            [tr!("one bake of the log"), tr!("bakes of the log")],
        ),
    ];
    let all: Vec<String> = all.into_iter().flatten().collect();
    let list = listed(&all)?;
    Some(tr!(
        "Added: {list}. What was here stays as it is.",
        list = list
    ))
}
