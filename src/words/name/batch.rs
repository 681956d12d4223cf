//! What the ways of asking for a batch are called.

use crate::engine::batch::{Wanted, Way};
use crate::words::{manner::Manner, say, write};

/// What a way of asking is called.
#[must_use]
pub fn wanted_kind(wanted: &Wanted) -> &'static str {
    way(wanted.way())
}

/// What a way of asking is called.
#[must_use]
pub fn way(way: Way) -> &'static str {
    match way {
        Way::Times => say!("Times the formula"),
        Way::Dough => say!("Weight of dough"),
        Way::Pieces => say!("Pieces"),
        Way::FlourOnHand => say!("Flour on hand"),
        Way::OnHand => say!("One ingredient on hand"),
        Way::Class => say!("A class"),
    }
}

/// What is wanted, in words: "9 pieces of 70 g".
#[must_use]
pub fn wanted(wanted: &Wanted, manner: Manner) -> String {
    match wanted {
        Wanted::Times(factor) => say!("{} the formula", write::factor(*factor, manner)),
        Wanted::Dough(mass) => say!("{} of dough", write::mass(*mass, manner)),
        Wanted::Pieces { count, each } => {
            let pieces = counted(count.get(), say!("piece"), say!("pieces"), manner);
            say!("{pieces} of {}", pieces, write::mass(*each, manner))
        }
        Wanted::FlourOnHand(mass) => {
            say!("as much as {} of flour makes", write::mass(*mass, manner))
        }
        Wanted::OnHand { mass, .. } => {
            say!("as much as {} on hand makes", write::mass(*mass, manner))
        }
        Wanted::Class {
            students,
            loaves,
            loaf,
        } => {
            let students = counted(students.get(), say!("student"), say!("students"), manner);
            let loaves = counted(loaves.get(), say!("loaf"), say!("loaves"), manner);
            let each = write::mass(*loaf, manner);
            say!(
                "{students}, {loaves} each, {each} of dough a loaf",
                students,
                loaves,
                each
            )
        }
    }
}

/// A number with its noun.
fn counted(count: u16, one: &str, several: &str, manner: Manner) -> String {
    let noun = if count == 1 { one } else { several };
    format!("{}\u{A0}{noun}", write::count(count, manner))
}
