//! Packed: the tins of a batch. This layout is version 1: frozen.

use std::num::NonZeroU16;

use serde::{Deserialize, Serialize};

use crate::engine::quantity::{Factor, Length, SpecificVolume};
use crate::engine::tin::{Across, Tin, TinRise, TinShape, Tins};
use crate::sheet::TinUse;

use super::LinkError;
use super::number::Short;
use super::tagged::tagged;

#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedTin {
    shape: PackedShape,
    lidded: bool,
    count: u16,
    rows: Option<u16>,
    room: Option<Short>,
    rise: Short,
}

tagged! {
    #[derive(Debug, PartialEq)]
    enum PackedShape {
        /// Top, bottom, depth.
        0 => Rectangle(lengths: [Short; 5]),
        1 => Round(lengths: [Short; 3]),
        /// The tube last.
        2 => Ring(lengths: [Short; 4]),
        3 => Muffin(lengths: [Short; 3], cups: u16),
        4 => Tray(lengths: [Short; 2]),
    }
}

impl PackedTin {
    pub(super) fn of(used: &TinUse) -> Self {
        Self {
            shape: PackedShape::of(&used.tins.tin.shape),
            lidded: used.tins.tin.lidded,
            count: used.tins.count.get(),
            rows: used.rows.map(NonZeroU16::get),
            room: used
                .room
                .map(|room| Short::of(room.cubic_centimetres_per_gram())),
            rise: Short::of(used.rise.as_factor().number()),
        }
    }

    pub(super) fn tin_use(self) -> Result<TinUse, LinkError> {
        let count = |number: u16| NonZeroU16::new(number).ok_or(LinkError::Damaged);
        let tin = Tin::open(self.shape.shape()?).map_err(|_| LinkError::Damaged)?;
        let room = |short: Short| SpecificVolume::from_cubic_centimetres_per_gram(short.value());
        Ok(TinUse {
            tins: Tins {
                tin: tin.with_lid(self.lidded),
                count: count(self.count)?,
            },
            rows: self.rows.map(count).transpose()?,
            room: self.room.map(room).transpose()?,
            rise: TinRise::of_factor(Factor::from_number(self.rise.value())?),
        })
    }
}

impl PackedShape {
    fn of(shape: &TinShape) -> Self {
        let side = |across: Across| [across.long, across.wide];
        match *shape {
            TinShape::Rectangle { top, bottom, deep } => {
                let ([a, b], [c, d]) = (side(top), side(bottom));
                Self::Rectangle([a, b, c, d, deep].map(packed))
            }
            TinShape::Round { top, bottom, deep } => Self::Round([top, bottom, deep].map(packed)),
            TinShape::Ring {
                top,
                bottom,
                tube,
                deep,
            } => Self::Ring([top, bottom, deep, tube].map(packed)),
            TinShape::Muffin {
                top,
                bottom,
                deep,
                cups,
            } => Self::Muffin([top, bottom, deep].map(packed), cups.get()),
            TinShape::Tray { across } => Self::Tray(side(across).map(packed)),
        }
    }

    fn shape(self) -> Result<TinShape, LinkError> {
        Ok(match self {
            Self::Rectangle([a, b, c, d, deep]) => TinShape::Rectangle {
                top: Across {
                    long: length(a)?,
                    wide: length(b)?,
                },
                bottom: Across {
                    long: length(c)?,
                    wide: length(d)?,
                },
                deep: length(deep)?,
            },
            Self::Round([top, bottom, deep]) => TinShape::Round {
                top: length(top)?,
                bottom: length(bottom)?,
                deep: length(deep)?,
            },
            Self::Ring([top, bottom, deep, tube]) => TinShape::Ring {
                top: length(top)?,
                bottom: length(bottom)?,
                tube: length(tube)?,
                deep: length(deep)?,
            },
            Self::Muffin([top, bottom, deep], cups) => TinShape::Muffin {
                top: length(top)?,
                bottom: length(bottom)?,
                deep: length(deep)?,
                cups: NonZeroU16::new(cups).ok_or(LinkError::Damaged)?,
            },
            Self::Tray([long, wide]) => TinShape::Tray {
                across: Across {
                    long: length(long)?,
                    wide: length(wide)?,
                },
            },
        })
    }
}

/// In metres: a tenth of a millimetre is a hundredth of a per cent, so it takes few bytes.
fn packed(length: Length) -> Short {
    Short::of(length.metres())
}

fn length(short: Short) -> Result<Length, LinkError> {
    Ok(Length::from_metres(short.value())?)
}
