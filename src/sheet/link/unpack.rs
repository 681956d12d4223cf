//! Unpacking: from the bytes of a link to a sheet, through the same constructors as typing.

use std::num::NonZeroU16;

use crate::engine::batch::{Losses, Wanted};
use crate::engine::formula::{Formula, Line, LineAt, Stream};
use crate::engine::larder::{Food, Listed, OwnFood};
use crate::engine::quantity::{Factor, Mass, Share, Temperature};
use crate::sheet::kept::{Batch, Sheet};
use crate::sheet::plain;
use crate::sheet::spelling::{BREADS, STREAMS};

use super::LinkError;
use super::choice::standing;
use super::heat::PackedHeat;
use super::number::Short;
use super::own::PackedOwn;
use super::packed::{Packed, PackedFood, PackedLine, PackedStream, PackedWanted};
use super::tin::PackedTin;

pub(super) fn sheet(packed: Packed) -> Result<Sheet, LinkError> {
    let lines: usize = packed.streams.iter().map(|stream| stream.lines.len()).sum();
    if packed.streams.len() > Formula::MOST_STREAMS || lines > Formula::MOST_LINES {
        return Err(LinkError::TooMany);
    }
    let own = packed.own.into_iter().take(Formula::MOST_LINES);
    let own = own.map(PackedOwn::food).collect::<Result<Vec<_>, _>>()?;
    let streams = packed
        .streams
        .into_iter()
        .map(|packed| stream(packed, &own));
    let mut formula = Formula {
        streams: streams.collect::<Result<_, _>>()?,
    };
    for warmth in &packed.warmth {
        warmth.put(&mut formula)?;
    }
    let heat = packed.heat.map(PackedHeat::wishes).transpose()?;
    Ok(Sheet {
        name: plain::name(&packed.name, Sheet::NAME_LENGTH),
        bread: standing(packed.bread, BREADS)?,
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

fn stream(packed: PackedStream, own: &[OwnFood]) -> Result<Stream, LinkError> {
    let lines = packed.lines.into_iter().map(|packed| line(&packed, own));
    Ok(Stream {
        kind: standing(packed.kind, STREAMS)?,
        name: plain::name(&packed.name, Sheet::STREAM_NAME_LENGTH),
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

fn wanted(packed: PackedWanted) -> Result<Wanted, LinkError> {
    Ok(match packed {
        PackedWanted::Times(factor) => Wanted::Times(Factor::from_number(factor.value())?),
        PackedWanted::Dough(dough) => Wanted::Dough(mass(dough)?),
        PackedWanted::Pieces(pieces, each) => Wanted::Pieces {
            count: count(pieces)?,
            each: mass(each)?,
        },
        PackedWanted::Flour(flour) => Wanted::FlourOnHand(mass(flour)?),
        PackedWanted::OnHand(stream, line, on_hand) => Wanted::OnHand {
            at: line_at(usize::from(stream), usize::from(line))?,
            mass: mass(on_hand)?,
        },
        PackedWanted::Class(students, loaves, loaf) => Wanted::Class {
            students: count(students)?,
            loaves: count(loaves)?,
            loaf: mass(loaf)?,
        },
    })
}

/// A place that some formula could have.
fn line_at(stream: usize, line: usize) -> Result<LineAt, LinkError> {
    if stream < Formula::MOST_STREAMS && line < Formula::MOST_LINES {
        Ok(LineAt { stream, line })
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
