//! What the ways of asking for a batch are called.

use crate::engine::batch::{Wanted, Way};
use crate::words::manner::Manner;
use crate::words::write;

/// What a way of asking is called.
#[must_use]
pub const fn wanted_kind(wanted: &Wanted) -> &'static str {
    way(wanted.way())
}

/// What a way of asking is called.
#[must_use]
pub const fn way(way: Way) -> &'static str {
    match way {
        Way::Times => "Times the formula",
        Way::Dough => "Weight of dough",
        Way::Pieces => "Pieces",
        Way::FlourOnHand => "Flour on hand",
        Way::OnHand => "One ingredient on hand",
        Way::Class => "A class",
    }
}

/// What is wanted, in words: "9 pieces of 70 g".
#[must_use]
pub fn wanted(wanted: &Wanted, manner: Manner) -> String {
    match wanted {
        Wanted::Times(factor) => format!("{} the formula", write::factor(*factor, manner)),
        Wanted::Dough(mass) => format!("{} of dough", write::mass(*mass, manner)),
        Wanted::Pieces { count, each } => {
            let pieces = counted(count.get(), "piece", "pieces", manner);
            format!("{pieces} of {}", write::mass(*each, manner))
        }
        Wanted::FlourOnHand(mass) => {
            format!("as much as {} of flour makes", write::mass(*mass, manner))
        }
        Wanted::OnHand { mass, .. } => {
            format!("as much as {} on hand makes", write::mass(*mass, manner))
        }
        Wanted::Class {
            students,
            loaves,
            loaf,
        } => {
            let students = counted(students.get(), "student", "students", manner);
            let loaves = counted(loaves.get(), "loaf", "loaves", manner);
            let each = write::mass(*loaf, manner);
            format!("{students}, {loaves} each, {each} of dough a loaf")
        }
    }
}

/// A number with its noun.
fn counted(count: u16, one: &str, several: &str, manner: Manner) -> String {
    let noun = if count == 1 { one } else { several };
    format!("{}\u{A0}{noun}", write::count(count, manner))
}
