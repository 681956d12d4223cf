//! Baked shapes: the body that a dough is in the oven, by its tin, or standing apart.

use std::f64::consts::PI;

use super::error::HeatError;
use super::loaf_body::LoafBody;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Length, Mass, SpecificVolume, Volume};
use crate::engine::tin::{Across, Capacity, Tin, TinShape, UsualSpecificVolume};
use crate::engine::working::{WorkingLine, given};

/// How dough bakes: as one loaf in a tin, however many pieces touch in it, or piece by piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BakedShape {
    /// In a tin, as one loaf.
    Loaf,
    /// Apart from each other: on a tray, in cups, without a tin.
    Apart,
}

/// The volume that a gram of dough has once it is baked: 3.3 cm³/g, of rye 2.4.
///
/// Common practice: soft breads; tins for rye hold 2.2 to 3 cm³ for each gram of dough.
#[must_use]
pub const fn baked_specific_volume(bread: Bread) -> SpecificVolume {
    match bread {
        Bread::SoftTin | Bread::SweetBun | Bread::RichEgg | Bread::PlainTin => {
            SpecificVolume::known(3.3)
        }
        Bread::Rye => SpecificVolume::known(2.4),
    }
}

/// How many times as wide as high a piece is that bakes by itself. Common practice.
const WIDER_THAN_HIGH: f64 = 1.9;

/// A tin for 794 g of dough, length and width in m, for a known loaf of which only the mass is known.
///
/// Source: US Armed Forces recipe card D 009 00 (10.5 × 5 in for 28 oz).
const USUAL_TIN: (f64, f64, f64) = (794.0, 0.2667, 0.127);

/// What bakes as one body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BakedBody {
    /// How it bakes.
    pub shape: BakedShape,
    /// The dough in it.
    pub dough: Mass,
    /// Its volume once baked.
    pub volume: Volume,
    /// Its measures.
    pub body: LoafBody,
    /// The least dough that suits its tin, where this is less and bakes as in a tin of its own.
    pub suits: Option<Mass>,
}

impl BakedShape {
    /// Both, in the order lists are shown.
    pub const ALL: [Self; 2] = [Self::Loaf, Self::Apart];
}

impl BakedBody {
    /// What bakes in a tin that holds `in_tin` of dough in pieces of `piece`.
    ///
    /// Dough that is too little for the tin does not spread over all of its bottom: it bakes as a loaf of
    /// its own mass, in a tin of the same proportions that just suits it.
    ///
    /// Pieces that touch bake as one: in a rectangular tin as a bar of its mean length and width, in
    /// a round tin as a short cylinder, in a ring as a bar as long as its mean circumference. The
    /// height is that of the baked volume, as if the sides went straight up. In cups and on a tray
    /// each piece bakes by itself.
    ///
    /// Source: geometry; [`baked_specific_volume`].
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] without dough; [`HeatError::OffScale`] when a measure leaves
    /// [`Length::RANGE`].
    pub fn in_tin(bread: Bread, tin: &Tin, in_tin: Mass, piece: Mass) -> Result<Self, HeatError> {
        let own = own_tin(bread, tin, in_tin);
        let scale = own.map_or(1.0, |(scale, _)| scale);
        let mean = |one: Length, other: Length| one.metres().midpoint(other.metres()) * scale;
        let body = match tin.shape {
            TinShape::Rectangle { top, bottom, .. } => {
                let side = |select: fn(&Across) -> Length| mean(select(&top), select(&bottom));
                Self::bar(bread, in_tin, (side(|a| a.long), side(|a| a.wide)))
            }
            TinShape::Ring {
                top, bottom, tube, ..
            } => {
                let (outside, inside) = (mean(top, bottom), tube.metres() * scale);
                let round = PI * outside.midpoint(inside);
                Self::bar(bread, in_tin, (round, (outside - inside) / 2.0))
            }
            TinShape::Round { top, bottom, .. } => {
                let across = mean(top, bottom);
                let volume = baked(bread, in_tin)?;
                let high = cubic_metres(volume) / (PI / 4.0 * across * across);
                Ok(Self {
                    shape: BakedShape::Loaf,
                    dough: in_tin,
                    volume,
                    body: LoafBody::Round {
                        across: Length::from_metres(across)?,
                        high: Length::from_metres(high)?,
                    },
                    suits: None,
                })
            }
            TinShape::Muffin { .. } | TinShape::Tray { .. } => Self::apart(bread, piece),
        };
        let suits = own.map(|(_, suits)| suits);
        body.map(|body| Self { suits, ..body })
    }

    /// A piece that bakes by itself: 1.9 times as wide as high. Common practice.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] where it weighs nothing; [`HeatError::OffScale`] when a measure
    /// leaves [`Length::RANGE`].
    pub fn apart(bread: Bread, piece: Mass) -> Result<Self, HeatError> {
        let volume = baked(bread, piece)?;
        let round = PI / 4.0 * WIDER_THAN_HIGH * WIDER_THAN_HIGH;
        let high = libm::cbrt(cubic_metres(volume) / round);
        Ok(Self {
            shape: BakedShape::Apart,
            dough: piece,
            volume,
            body: LoafBody::Round {
                across: Length::from_metres(WIDER_THAN_HIGH * high)?,
                high: Length::from_metres(high)?,
            },
            suits: None,
        })
    }

    /// What baked when only its shape and mass are known: a loaf in a tin of usual proportions, or
    /// a piece by itself.
    ///
    /// # Errors
    /// [`HeatError::NoKnownPiece`] where it weighs nothing; [`HeatError::OffScale`] when a measure
    /// leaves [`Length::RANGE`].
    pub fn known(bread: Bread, shape: BakedShape, mass: Mass) -> Result<Self, HeatError> {
        if mass <= Mass::ZERO {
            return Err(HeatError::NoKnownPiece);
        }
        match shape {
            BakedShape::Apart => Self::apart(bread, mass),
            BakedShape::Loaf => {
                let (of, long, wide) = USUAL_TIN;
                let usual = baked(Bread::SoftTin, Mass::from_grams(of)?)?;
                let own = baked(bread, mass)?;
                let scale = libm::cbrt(own.cubic_centimetres() / usual.cubic_centimetres());
                Self::bar(bread, mass, (long * scale, wide * scale))
            }
        }
    }

    fn bar(bread: Bread, dough: Mass, (long, wide): (f64, f64)) -> Result<Self, HeatError> {
        let volume = baked(bread, dough)?;
        Ok(Self {
            shape: BakedShape::Loaf,
            dough,
            volume,
            body: LoafBody::Bar {
                long: Length::from_metres(long)?,
                wide: Length::from_metres(wide)?,
                high: Length::from_metres(cubic_metres(volume) / (long * wide))?,
            },
            suits: None,
        })
    }

    /// The step that leads to the height of what is in the oven.
    #[must_use]
    pub fn working(&self) -> WorkingLine {
        let dough = given("m", "dough in it", self.dough.grams(), "g");
        // A body has dough, or there was an error.
        let room = self.volume.cubic_centimetres() / self.dough.grams();
        let room = given("v", "room a gram takes once baked", room, "cm³/g");
        let cm = |letter: &'static str, of: &'static str, length: Length| {
            given(letter, of, length.metres() * 100.0, "cm")
        };
        let (rule, with, high) = match self.body {
            LoafBody::Bar { long, wide, high } => (
                "m × v / (a × b)".to_owned(),
                vec![dough, room, cm("a", "length", long), cm("b", "width", wide)],
                high,
            ),
            LoafBody::Round { across, high } => (
                format!("m × v × 4 / ({PI} × d ^ 2)"),
                vec![dough, room, cm("d", "across", across)],
                high,
            ),
        };
        WorkingLine {
            rule: rule.into(),
            with,
            result: cm("h", "height once baked", high),
            source: "geometry; room by common practice".into(),
        }
    }
}

/// How many times as long and wide as a tin that one is which `in_tin` of dough just suits, and the least
/// dough that suits the tin itself; `None` where the dough suits it, or where pieces bake apart.
///
/// `∛(m / M)`: m the dough, M the least that suits the tin, the proportions being the same.
fn own_tin(bread: Bread, tin: &Tin, in_tin: Mass) -> Option<(f64, Mass)> {
    if matches!(tin.shape, TinShape::Muffin { .. } | TinShape::Tray { .. }) {
        return None;
    }
    let volume = Capacity::of(tin).ok()?.volume().ok()?;
    let usual = UsualSpecificVolume::of(bread, tin);
    let least = volume.filled_at(usual.most).ok()?;
    let share = in_tin.share_of(least)?.fraction();
    (share < 1.0).then(|| (libm::cbrt(share), least))
}

/// The baked volume of a dough.
fn baked(bread: Bread, dough: Mass) -> Result<Volume, HeatError> {
    if dough <= Mass::ZERO {
        return Err(HeatError::EmptyBowl);
    }
    let room = baked_specific_volume(bread).cubic_centimetres_per_gram();
    Ok(Volume::from_cubic_centimetres(dough.grams() * room)?)
}

fn cubic_metres(volume: Volume) -> f64 {
    volume.cubic_centimetres() * 1e-6
}
