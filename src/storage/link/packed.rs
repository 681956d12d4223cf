//! Packed: a sheet in the form that takes the fewest bytes. This layout is version 1: frozen.

use serde::{Deserialize, Serialize};

use crate::engine::batch::BatchTarget;
use crate::engine::formula::{Line, Part};
use crate::engine::ingredients::{Food, OwnFood};
use crate::sheet::Sheet;
use crate::sheet::plain;

use super::choice::Choice;
use super::heat::{PackedHeat, PackedWarmth};
use super::number::Short;
use super::own::PackedOwn;
use super::tagged::tagged;
use super::tin::PackedTin;

#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct Packed {
    pub(super) name: String,
    pub(super) bread: u8,
    pub(super) own: Vec<PackedOwn>,
    pub(super) parts: Vec<PackedPart>,
    pub(super) wanted: PackedTarget,
    /// Residue, its share, dividing, bake, topping.
    pub(super) losses: [Short; 5],
    pub(super) pieces: u16,
    pub(super) syrup_at: Short,
    pub(super) heat: Option<PackedHeat>,
    pub(super) warmth: Vec<PackedWarmth>,
    pub(super) tin: Option<PackedTin>,
    pub(super) note: String,
}

#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedPart {
    pub(super) kind: u8,
    pub(super) name: String,
    pub(super) steam: Option<Short>,
    pub(super) lines: Vec<PackedLine>,
}

#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedLine {
    pub(super) food: PackedFood,
    pub(super) mass: Short,
    pub(super) counts_as_flour: Option<bool>,
    pub(super) poured: Option<Short>,
}

tagged! {
    #[derive(Debug, PartialEq)]
    enum PackedFood {
        /// Its number among the ingredients.
        0 => Listed(number: u16),
        /// Its place among the sheet's own.
        1 => Own(place: u8),
    }
}

tagged! {
    #[derive(Debug, PartialEq)]
    enum PackedTarget {
        0 => Times(times: Short),
        1 => Dough(mass: Short),
        2 => Pieces(count: u16, each: Short),
        3 => Flour(mass: Short),
        4 => OnHand(part: u8, line: u8, mass: Short),
        5 => Class(students: u16, loaves: u16, loaf: Short),
    }
}

impl Packed {
    pub(super) fn of(sheet: &Sheet) -> Self {
        let own = own_foods(sheet);
        let losses = &sheet.batch.losses;
        let losses = [
            losses.residue.grams(),
            losses.residue_share.fraction(),
            losses.dividing.fraction(),
            losses.bake.fraction(),
            losses.topping.fraction(),
        ];
        Self {
            name: plain::name(&sheet.name, Sheet::NAME_LENGTH),
            bread: sheet.bread.number(),
            own: own.iter().map(|food| PackedOwn::of(food)).collect(),
            parts: sheet
                .formula
                .parts
                .iter()
                .map(|s| PackedPart::of(s, &own))
                .collect(),
            wanted: PackedTarget::of(sheet.batch.wanted),
            losses: losses.map(Short::of),
            pieces: sheet.batch.pieces.get(),
            syrup_at: Short::of(sheet.batch.syrup_at.celsius()),
            heat: PackedHeat::of(&sheet.heat),
            warmth: PackedWarmth::all_of(&sheet.formula),
            tin: sheet.batch.tin.as_ref().map(PackedTin::of),
            note: plain::note(&sheet.note, Sheet::NOTE_LENGTH),
        }
    }
}

impl PackedPart {
    fn of(part: &Part, own: &[&OwnFood]) -> Self {
        let steam = part.steam.grams();
        Self {
            kind: part.kind.number(),
            name: plain::name(&part.name, Sheet::PART_NAME_LENGTH),
            steam: (steam > 0.0).then(|| Short::of(steam)),
            lines: part
                .lines
                .iter()
                .map(|line| PackedLine::of(line, own))
                .collect(),
        }
    }
}

impl PackedLine {
    fn of(line: &Line, own: &[&OwnFood]) -> Self {
        let food = match &line.food {
            Food::Listed(listed) => PackedFood::Listed(listed.row().number),
            Food::Own(food) => PackedFood::Own(small(own.iter().position(|o| *o == food))),
        };
        Self {
            food,
            mass: Short::of(line.mass.grams()),
            counts_as_flour: line.counts_as_flour,
            poured: line.poured.map(|mass| Short::of(mass.grams())),
        }
    }
}

impl PackedTarget {
    fn of(wanted: BatchTarget) -> Self {
        match wanted {
            BatchTarget::Times(factor) => Self::Times(Short::of(factor.number())),
            BatchTarget::Dough(mass) => Self::Dough(Short::of(mass.grams())),
            BatchTarget::Pieces { count, each } => {
                Self::Pieces(count.get(), Short::of(each.grams()))
            }
            BatchTarget::FlourOnHand(mass) => Self::Flour(Short::of(mass.grams())),
            BatchTarget::OnHand { at, mass } => Self::OnHand(
                small(Some(at.part)),
                small(Some(at.line)),
                Short::of(mass.grams()),
            ),
            BatchTarget::Class {
                students,
                loaves,
                loaf,
            } => Self::Class(students.get(), loaves.get(), Short::of(loaf.grams())),
        }
    }
}

/// The sheet's own ingredients, each once.
fn own_foods(sheet: &Sheet) -> Vec<&OwnFood> {
    let lines = sheet.formula.parts.iter().flat_map(|part| &part.lines);
    lines.fold(Vec::new(), |mut found, line| {
        if let Food::Own(food) = &line.food
            && !found.contains(&food)
        {
            found.push(food);
        }
        found
    })
}

/// A place in a list; no formula is long enough to pass 255.
fn small(at: Option<usize>) -> u8 {
    at.and_then(|at| u8::try_from(at).ok()).unwrap_or(u8::MAX)
}
