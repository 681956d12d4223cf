//! Measures of a tin one by one, so that each can be typed.

use std::num::NonZeroU16;

use super::error::TinError;
use super::shape::{Across, Tin, TinShape};
use crate::engine::quantity::Length;

/// One measure of a tin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TinMeasure {
    /// Length at the rim.
    RimLong,
    /// Width at the rim.
    RimWide,
    /// Length at the bottom.
    BottomLong,
    /// Width at the bottom.
    BottomWide,
    /// Across a round rim.
    Rim,
    /// Across a round bottom.
    Bottom,
    /// Across the tube.
    Tube,
    /// From bottom to rim.
    Deep,
}

impl TinMeasure {
    /// The same measure at the rim, of one at the bottom.
    const fn at_rim(self) -> Option<Self> {
        match self {
            Self::BottomLong => Some(Self::RimLong),
            Self::BottomWide => Some(Self::RimWide),
            Self::Bottom => Some(Self::Rim),
            Self::RimLong | Self::RimWide | Self::Rim | Self::Tube | Self::Deep => None,
        }
    }

    /// The same measure at the bottom, of one at the rim.
    const fn at_bottom(self) -> Option<Self> {
        match self {
            Self::RimLong => Some(Self::BottomLong),
            Self::RimWide => Some(Self::BottomWide),
            Self::Rim => Some(Self::Bottom),
            Self::BottomLong | Self::BottomWide | Self::Bottom | Self::Tube | Self::Deep => None,
        }
    }
}

/// A kind of tin.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TinKind {
    /// Rectangular.
    Loaf,
    /// Round.
    Round,
    /// Round with a tube.
    Ring,
    /// Of cups.
    Cups,
    /// Flat.
    Tray,
}

impl TinKind {
    /// Every kind, in the order lists are shown.
    pub const ALL: [Self; 5] = [Self::Loaf, Self::Round, Self::Ring, Self::Cups, Self::Tray];

    /// A tin of this kind to begin with, in sizes as they are sold. Common practice.
    #[must_use]
    pub const fn tin(self) -> Tin {
        let shape = match self {
            Self::Loaf => TinShape::Rectangle {
                top: Self::side(0.25, 0.11),
                bottom: Self::side(0.24, 0.10),
                deep: Length::known(0.08),
            },
            Self::Round => TinShape::Round {
                top: Length::known(0.24),
                bottom: Length::known(0.23),
                deep: Length::known(0.07),
            },
            Self::Ring => TinShape::Ring {
                top: Length::known(0.24),
                bottom: Length::known(0.18),
                tube: Length::known(0.06),
                deep: Length::known(0.10),
            },
            Self::Cups => TinShape::Muffin {
                top: Length::known(0.07),
                bottom: Length::known(0.05),
                deep: Length::known(0.035),
                cups: Self::TWELVE,
            },
            Self::Tray => TinShape::Tray {
                across: Self::side(0.38, 0.28),
            },
        };
        Tin {
            shape,
            lidded: false,
        }
    }

    const TWELVE: NonZeroU16 = NonZeroU16::MIN.saturating_add(11);

    const fn side(long: f64, wide: f64) -> Across {
        Across {
            long: Length::known(long),
            wide: Length::known(wide),
        }
    }
}

impl Tin {
    /// What kind it is.
    #[must_use]
    pub const fn kind(&self) -> TinKind {
        match self.shape {
            TinShape::Rectangle { .. } => TinKind::Loaf,
            TinShape::Round { .. } => TinKind::Round,
            TinShape::Ring { .. } => TinKind::Ring,
            TinShape::Muffin { .. } => TinKind::Cups,
            TinShape::Tray { .. } => TinKind::Tray,
        }
    }

    /// Its measures, rim first.
    #[must_use]
    pub fn measures(&self) -> Vec<(TinMeasure, Length)> {
        use TinMeasure as M;
        match self.shape {
            TinShape::Rectangle { top, bottom, deep } => vec![
                (M::RimLong, top.long),
                (M::RimWide, top.wide),
                (M::BottomLong, bottom.long),
                (M::BottomWide, bottom.wide),
                (M::Deep, deep),
            ],
            TinShape::Round { top, bottom, deep }
            | TinShape::Muffin {
                top, bottom, deep, ..
            } => {
                vec![(M::Rim, top), (M::Bottom, bottom), (M::Deep, deep)]
            }
            TinShape::Ring {
                top,
                bottom,
                tube,
                deep,
            } => vec![
                (M::Rim, top),
                (M::Bottom, bottom),
                (M::Tube, tube),
                (M::Deep, deep),
            ],
            TinShape::Tray { across } => {
                vec![(M::BottomLong, across.long), (M::BottomWide, across.wide)]
            }
        }
    }

    /// One of its measures; none where it has no such measure.
    #[must_use]
    pub fn measure(&self, measure: TinMeasure) -> Option<Length> {
        let mut measures = self.measures().into_iter();
        let found = measures.find(|(own, _)| *own == measure);
        found.map(|(_, length)| length)
    }

    /// Whether a measure is one of the bottom that may be as at the rim.
    #[must_use]
    pub fn may_be_as_rim(&self, measure: TinMeasure) -> bool {
        self.at_rim(measure).is_some()
    }

    /// Whether a measure of the bottom is as at the rim.
    #[must_use]
    pub fn is_as_rim(&self, measure: TinMeasure) -> bool {
        let rim = self.at_rim(measure);
        rim.is_some() && rim == self.measure(measure)
    }

    /// What it measures at the rim where `measure` is one of its bottom.
    fn at_rim(&self, measure: TinMeasure) -> Option<Length> {
        self.measure(measure.at_rim()?)
    }

    /// The same tin with another measure; itself where it has no such measure. A bottom that is as
    /// the rim follows the rim, and one that would be larger than the rim becomes as the rim.
    ///
    /// # Errors
    /// [`TinError::BottomOverRim`] for a bottom larger than the rim; [`TinError::TubeFillsTin`]
    /// when a ring's tube would be as wide as its bottom or rim.
    pub fn with_measure(&self, measure: TinMeasure, length: Length) -> Result<Self, TinError> {
        let now = self.measure(measure);
        if now != Some(length) && self.at_rim(measure).is_some_and(|rim| length > rim) {
            return Err(TinError::BottomOverRim);
        }
        let follows = measure.at_bottom().filter(|bottom| {
            let larger = self.measure(*bottom).is_some_and(|own| own > length);
            now != Some(length) && (larger || self.is_as_rim(*bottom))
        });
        let mut shape = self.shape;
        for one in [Some(measure), follows].into_iter().flatten() {
            if let Some(place) = place(&mut shape, one) {
                *place = length;
            }
        }
        Ok(Self::open(shape)?.with_lid(self.lidded))
    }

    /// The same tin with a measure as it was typed: a bottom that is left empty is as the rim.
    /// `None` where a measure that is not of the bottom is left empty.
    ///
    /// # Errors
    /// Those of [`Tin::with_measure`].
    pub fn with_typed(
        &self,
        measure: TinMeasure,
        length: Option<Length>,
    ) -> Option<Result<Self, TinError>> {
        let length = length.or_else(|| self.at_rim(measure))?;
        Some(self.with_measure(measure, length))
    }
}

/// The field of a shape that holds a measure.
const fn place(shape: &mut TinShape, measure: TinMeasure) -> Option<&mut Length> {
    use TinMeasure as M;
    Some(match (shape, measure) {
        (TinShape::Rectangle { top, .. }, M::RimLong) => &mut top.long,
        (TinShape::Rectangle { top, .. }, M::RimWide) => &mut top.wide,
        (TinShape::Rectangle { bottom, .. }, M::BottomLong) => &mut bottom.long,
        (TinShape::Rectangle { bottom, .. }, M::BottomWide) => &mut bottom.wide,
        (TinShape::Tray { across }, M::BottomLong) => &mut across.long,
        (TinShape::Tray { across }, M::BottomWide) => &mut across.wide,
        (
            TinShape::Round { top, .. } | TinShape::Ring { top, .. } | TinShape::Muffin { top, .. },
            M::Rim,
        ) => top,
        (
            TinShape::Round { bottom, .. }
            | TinShape::Ring { bottom, .. }
            | TinShape::Muffin { bottom, .. },
            M::Bottom,
        ) => bottom,
        (TinShape::Ring { tube, .. }, M::Tube) => tube,
        (
            TinShape::Rectangle { deep, .. }
            | TinShape::Round { deep, .. }
            | TinShape::Ring { deep, .. }
            | TinShape::Muffin { deep, .. },
            M::Deep,
        ) => deep,
        _ => return None,
    })
}
