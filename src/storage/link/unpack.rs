//! Unpacking: from the bytes of a link to a sheet, through the same constructors as typing.

use std::num::NonZeroU16;

use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Bread, Formula, Line, LineAt, Part, PartKind};
use crate::engine::ingredients::{Food, Listed, OwnFood};
use crate::engine::quantity::{Factor, Mass, Share, Temperature};
use crate::sheet::plain;
use crate::sheet::{Batch, Sheet};

use super::LinkError;
use super::choice::Choice;
use super::heat::PackedHeat;
use super::number::Short;
use super::own::PackedOwn;
use super::packed::{Packed, PackedFood, PackedLine, PackedPart, PackedTarget};
use super::tin::PackedTin;

pub(super) fn sheet(packed: Packed) -> Result<Sheet, LinkError> {
    let lines: usize = packed.parts.iter().map(|part| part.lines.len()).sum();
    if packed.parts.len() > Formula::MOST_PARTS || lines > Formula::MOST_LINES {
        return Err(LinkError::TooMany);
    }
    let own = packed.own.into_iter().take(Formula::MOST_LINES);
    let own = own.map(PackedOwn::food).collect::<Result<Vec<_>, _>>()?;
    let parts = packed.parts.into_iter().map(|packed| part(packed, &own));
    let mut formula = Formula {
        parts: parts.collect::<Result<_, _>>()?,
    };
    for warmth in &packed.warmth {
        warmth.put(&mut formula)?;
    }
    let heat = packed.heat.map(PackedHeat::settings).transpose()?;
    Ok(Sheet {
        name: plain::name(&packed.name, Sheet::NAME_LENGTH),
        bread: Bread::numbered(packed.bread)?,
        formula,
        batch: Batch {
            wanted: wanted(packed.wanted)?,
            losses: losses(packed.losses)?,
            pieces: count(packed.pieces)?,
            syrup_at: Temperature::from_celsius(packed.syrup_at.value())?,
            tin: packed.tin.map(PackedTin::tin_use).transpose()?,
        },
        heat: heat.unwrap_or_default(),
        note: plain::note(&packed.note, Sheet::NOTE_LENGTH),
    })
}

fn part(packed: PackedPart, own: &[OwnFood]) -> Result<Part, LinkError> {
    let lines = packed.lines.into_iter().map(|packed| line(&packed, own));
    Ok(Part {
        kind: PartKind::numbered(packed.kind)?,
        name: plain::name(&packed.name, Sheet::PART_NAME_LENGTH),
        steam: packed.steam.map(mass).transpose()?.unwrap_or(Mass::ZERO),
        temperature: None,
        lines: lines.collect::<Result<_, _>>()?,
    })
}

fn line(packed: &PackedLine, own: &[OwnFood]) -> Result<Line, LinkError> {
    let food = match packed.food {
        PackedFood::Listed(number) => Listed::numbered(number)
            .map(Food::Listed)
            .map_err(|_| LinkError::UnknownIngredient { number })?,
        PackedFood::Own(at) => {
            let food = own.get(usize::from(at)).ok_or(LinkError::Damaged)?;
            Food::Own(food.clone())
        }
    };
    Ok(Line {
        food,
        mass: mass(packed.mass)?,
        counts_as_flour: packed.counts_as_flour,
        poured: packed.poured.map(mass).transpose()?,
        temperature: None,
    })
}

fn wanted(packed: PackedTarget) -> Result<BatchTarget, LinkError> {
    Ok(match packed {
        PackedTarget::Times(factor) => BatchTarget::Times(Factor::from_number(factor.value())?),
        PackedTarget::Dough(dough) => BatchTarget::Dough(mass(dough)?),
        PackedTarget::Pieces(pieces, each) => BatchTarget::Pieces {
            count: count(pieces)?,
            each: mass(each)?,
        },
        PackedTarget::Flour(flour) => BatchTarget::FlourOnHand(mass(flour)?),
        PackedTarget::OnHand(part, line, on_hand) => BatchTarget::OnHand {
            at: line_at(usize::from(part), usize::from(line))?,
            mass: mass(on_hand)?,
        },
        PackedTarget::Class(students, loaves, loaf) => BatchTarget::Class {
            students: count(students)?,
            loaves: count(loaves)?,
            loaf: mass(loaf)?,
        },
    })
}

/// A place that some formula could have.
fn line_at(part: usize, line: usize) -> Result<LineAt, LinkError> {
    if part < Formula::MOST_PARTS && line < Formula::MOST_LINES {
        Ok(LineAt { part, line })
    } else {
        Err(LinkError::Damaged)
    }
}

fn losses([residue, in_bowls, dividing, bake, topping]: [Short; 5]) -> Result<Losses, LinkError> {
    Ok(Losses {
        residue: mass(residue)?,
        residue_share: share(in_bowls)?,
        dividing: share(dividing)?,
        bake: share(bake)?,
        topping: share(topping)?,
    })
}

fn mass(short: Short) -> Result<Mass, LinkError> {
    Ok(Mass::from_grams(short.value())?)
}

fn share(short: Short) -> Result<Share, LinkError> {
    Ok(Share::from_fraction(short.value())?)
}

fn count(number: u16) -> Result<NonZeroU16, LinkError> {
    NonZeroU16::new(number).ok_or(LinkError::Damaged)
}
