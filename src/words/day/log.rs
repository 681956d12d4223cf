//! The log in sentences: bakes taken in from a file, and photos.

use crate::sheet::day::TakenIn;
use crate::words::manner::Manner;
use crate::words::{say, write};

/// What came of bakes that were taken in, and of so many photos that had no room.
#[must_use]
pub fn taken_in(taken: &TakenIn, photos_left: u32, manner: Manner) -> Vec<String> {
    let count = |number: u32| write::count(number, manner);
    let added = u32::try_from(taken.added.len()).unwrap_or(u32::MAX);
    let mut said = vec![match added {
        0 => say!("No bake of this file is new here.").to_owned(),
        1 => say!("One bake was taken in.").to_owned(),
        many => say!("{many} bakes were taken in.", count(many)),
    }];
    match taken.there {
        0 => {}
        1 => said.push(say!("One was there already, and is left as it is.").to_owned()),
        many => said.push(say!(
            "{many} were there already, and are left as they are.",
            count(many)
        )),
    }
    match taken.no_room {
        0 => {}
        1 => said.push(say!("One older bake was left out: the log is full.").to_owned()),
        many => said.push(say!(
            "{many} older bakes were left out: the log is full.",
            count(many)
        )),
    }
    match photos_left {
        0 => {}
        1 => said.push(say!("One photo was left out: there is no room for more.").to_owned()),
        many => said.push(say!(
            "{many} photos were left out: there is no room for more.",
            count(many)
        )),
    }
    said
}

/// What a photo is called for those who do not see it.
#[must_use]
pub fn photo_of(name: &str, date: &str) -> String {
    say!("Photo of “{name}”, baked {date}", name, date)
}

/// A photo is kept.
#[must_use]
pub fn photo_kept() -> &'static str {
    say!("The photo is kept with the bake, drawn small, on this device only.")
}

/// A photo was taken away.
#[must_use]
pub fn photo_gone() -> &'static str {
    say!("The photo is gone.")
}

/// There is no room for another photo.
#[must_use]
pub fn photos_full() -> &'static str {
    say!(
        "There is no room for another photo. Take one away from an older bake, or save the log to \
         a file first. Nothing else is lost."
    )
}

/// The file is no picture.
#[must_use]
pub fn not_a_picture() -> &'static str {
    say!("This file is not a picture. Choose a photo.")
}

/// The browser can make no picture of the file.
#[must_use]
pub fn picture_broken() -> &'static str {
    say!(
        "This picture cannot be opened here: it is damaged, or of a kind this browser does not \
         know. Choose another."
    )
}

/// The file is larger than what is opened.
#[must_use]
pub fn photo_too_large(bytes: f64, most: f64, manner: Manner) -> String {
    let megabytes = |bytes: f64| write::significant(bytes / 1e6, 2, manner.numbers);
    say!(
        "This file has {has}\u{A0}MB, more than the {most}\u{A0}MB a photo may have. Choose a \
         smaller one.",
        megabytes(bytes),
        megabytes(most)
    )
}
