//! What the ways of asking for a batch are called.

use crate::engine::batch::{BatchTarget, Way};
use crate::text::{format, format_options::FormatOptions, tr};

/// What a way of asking is called.
#[must_use]
pub fn wanted_kind(wanted: &BatchTarget) -> &'static str {
    way(wanted.way())
}

/// What a way of asking is called.
#[must_use]
pub fn way(way: Way) -> &'static str {
    match way {
        Way::Times => tr!("Times the formula"),
        Way::Dough => tr!("Weight of dough"),
        Way::Pieces => tr!("Pieces"),
        Way::FlourOnHand => tr!("Flour on hand"),
        Way::OnHand => tr!("One ingredient on hand"),
        Way::Class => tr!("A class"),
    }
}

/// What is wanted, in words: "9 pieces of 70 g".
#[must_use]
pub fn wanted(wanted: &BatchTarget, options: FormatOptions) -> String {
    match wanted {
        BatchTarget::Times(factor) => tr!(
            "{value} the formula",
            value = format::factor(*factor, options)
        ),
        BatchTarget::Dough(mass) => tr!("{value} of dough", value = format::mass(*mass, options)),
        BatchTarget::Pieces { count, each } => {
            let pieces = counted(count.get(), tr!("piece"), tr!("pieces"), options);
            tr!(
                "{pieces} of {value}",
                pieces = pieces,
                value = format::mass(*each, options)
            )
        }
        BatchTarget::FlourOnHand(mass) => {
            tr!(
                "as much as {value} of flour makes",
                value = format::mass(*mass, options)
            )
        }
        BatchTarget::OnHand { mass, .. } => {
            tr!(
                "as much as {value} on hand makes",
                value = format::mass(*mass, options)
            )
        }
        BatchTarget::Class {
            students,
            loaves,
            loaf,
        } => {
            let students = counted(students.get(), tr!("student"), tr!("students"), options);
            let loaves = counted(loaves.get(), tr!("loaf"), tr!("loaves"), options);
            let each = format::mass(*loaf, options);
            tr!(
                "{students}, {loaves} each, {each} of dough a loaf",
                students = students,
                loaves = loaves,
                each = each
            )
        }
    }
}

/// A number with its noun.
fn counted(count: u16, one: &str, several: &str, options: FormatOptions) -> String {
    let noun = if count == 1 { one } else { several };
    format!("{}\u{A0}{noun}", format::count(count, options))
}
