//! The log in sentences: bakes imported from a file, photos, a bake of another formula.

use crate::engine::formula::Formula;
use crate::engine::numerics::saturating_u32;
use crate::engine::quantity::Instant;
use crate::sheet::civil::Zone;
use crate::sheet::day::{Bake, Bench, LogImport};
use crate::text::format_options::FormatOptions;
use crate::text::{chart::listed, format, language::tr_dynamic, name, tr};

/// The report of an import: the bakes, and the number of photos without room.
#[must_use]
pub fn log_imported(imported: &LogImport, photos_left: u32, options: FormatOptions) -> Vec<String> {
    let count = |number: u32| format::count(number, options);
    let added = saturating_u32(imported.added.len());
    let mut wording = vec![match added {
        0 => tr!("No bake of this file is new here.").to_owned(),
        1 => tr!("One bake was imported.").to_owned(),
        many => tr!("{many} bakes were imported.", many = count(many)),
    }];
    match imported.there {
        0 => {}
        1 => wording.push(tr!("One was there already, and is left as it is.").to_owned()),
        many => wording.push(tr!(
            "{many} were there already, and are left as they are.",
            many = count(many)
        )),
    }
    match imported.no_room {
        0 => {}
        1 => wording.push(tr!("One older bake was left out: the log is full.").to_owned()),
        many => wording.push(tr!(
            "{many} older bakes were left out: the log is full.",
            many = count(many)
        )),
    }
    match photos_left {
        0 => {}
        1 => wording.push(tr!("One photo was left out: there is no room for more.").to_owned()),
        many => wording.push(tr!(
            "{many} photos were left out: there is no room for more.",
            many = count(many)
        )),
    }
    wording
}

/// What a photo is called for those who do not see it.
#[must_use]
pub fn photo_of(name: &str, date: &str) -> String {
    tr!("Photo of “{name}”, baked {date}", name = name, date = date)
}

/// A photo is saved.
#[must_use]
pub fn photo_stored() -> &'static str {
    tr!("The photo is kept with the bake, drawn small, on this device only.")
}

/// A photo was removed.
#[must_use]
pub fn photo_gone() -> &'static str {
    tr!("The photo is gone.")
}

/// There is no room for another photo.
#[must_use]
pub fn photos_full() -> &'static str {
    tr!(
        "There is no room for another photo. Remove one from an older bake, or save the log to a file first. Nothing else is lost."
    )
}

/// The file is no picture.
#[must_use]
pub fn not_a_picture() -> &'static str {
    tr!("This file is not a picture. Choose a photo.")
}

/// The browser can make no picture of the file.
#[must_use]
pub fn picture_broken() -> &'static str {
    tr!(
        "This picture cannot be opened here: it is damaged, or of a kind this browser does not \
         know. Choose another."
    )
}

/// The file is larger than what is opened.
#[must_use]
pub fn photo_too_large(bytes: f64, most: f64, options: FormatOptions) -> String {
    let megabytes = |bytes: f64| format::significant(bytes / 1e6, 2, options.numbers);
    tr!(
        "This file has {has}\u{A0}MB, more than the {most}\u{A0}MB a photo may have. Choose a \
         smaller one.",
        has = megabytes(bytes),
        most = megabytes(most)
    )
}

/// A bake was under way as the page began: its name, and the step that is being done, by the parts of
/// its formula where that is at hand.
#[must_use]
pub fn bake_waits(bench: &Bench, formula: Option<&Formula>) -> String {
    let called = &bench.bake.name;
    bench.current().map_or_else(
        || tr!("A bake is under way: {name}.", name = called),
        |step| {
            tr!(
                "A bake is under way: {name}, {step}.",
                name = called,
                step = name::step_of(step, formula)
            )
        },
    )
}

/// The day on which a bake went into the oven, or on which it began where it never did; one of another
/// year than now says which. The zone is that of the bake.
#[must_use]
pub fn baked_on(bake: &Bake, now: Instant, zone: &Zone) -> String {
    let at = bake.baked().instant();
    let [year, this] = [at, now].map(|at| zone.civil(at).date.numbers().0);
    let date = format::date(at, zone);
    let date = if year == this {
        date
    } else {
        tr!("{date} {year}", date = date, year = year)
    };
    baked_or_begun(bake, &date)
}

/// A date of a bake, and what it is the date of.
pub(super) fn baked_or_begun(bake: &Bake, date: &str) -> String {
    if bake.in_oven().is_some() {
        tr!("baked {date}", date = date)
    } else {
        tr!("begun {date}", date = date)
    }
}

/// What was weighed otherwise than asked in a bake; `None` where all was as asked.
#[must_use]
pub fn weighed_otherwise(bake: &Bake, options: FormatOptions) -> Option<String> {
    let mass = |mass| format::mass(mass, options);
    let lines = bake.weighed.iter().map(|line| {
        tr!(
            "{food} {weighed} instead of {asked}",
            food = tr_dynamic(&line.food),
            weighed = mass(line.weighed),
            asked = mass(line.asked)
        )
    });
    let lines: Vec<String> = lines.collect();
    let listed = listed(&lines)?;
    Some(tr!("Weighed: {lines}.", lines = listed))
}

/// A bake of another formula is under way.
#[must_use]
pub fn other_bake(name: &str) -> String {
    tr!(
        "A bake of “{name}” is under way. One at a time can be followed at the bench.",
        name = name
    )
}
