//! What batch targets are called.

use std::num::NonZeroU16;

use crate::engine::batch::{BatchTarget, TargetKind};
use crate::engine::quantity::Mass;
use crate::text::{format, format_options::FormatOptions, tr};

/// What the kind of a target is called.
#[must_use]
pub fn wanted_kind(wanted: &BatchTarget) -> &'static str {
    target_kind(wanted.kind())
}

/// What a kind of target is called.
#[must_use]
pub fn target_kind(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Times => tr!("Times the formula"),
        TargetKind::Dough => tr!("Weight of dough"),
        TargetKind::Pieces => tr!("Pieces"),
        TargetKind::FlourOnHand => tr!("Flour on hand"),
        TargetKind::OnHand => tr!("One ingredient on hand"),
        TargetKind::Class => tr!("A class"),
    }
}

/// A target in words: "9 pieces of 70 g".
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
        } => class_wanted(*students, *loaves, *loaf, options),
    }
}

/// "12 students, 1 loaf each, 450 g of dough a loaf".
fn class_wanted(
    students: NonZeroU16,
    loaves: NonZeroU16,
    loaf: Mass,
    options: FormatOptions,
) -> String {
    let students = counted(students.get(), tr!("student"), tr!("students"), options);
    let loaves = counted(loaves.get(), tr!("loaf"), tr!("loaves"), options);
    let each = format::mass(loaf, options);
    tr!(
        "{students}, {loaves} each, {each} of dough a loaf",
        students = students,
        loaves = loaves,
        each = each
    )
}

/// A number with its noun.
fn counted(count: u16, one: &str, several: &str, options: FormatOptions) -> String {
    let noun = if count == 1 { one } else { several };
    format!("{}\u{A0}{noun}", format::count(count, options))
}
