//! Capacity: the volume of a tin up to its rim or to any height.

use std::f64::consts::PI;
use std::num::NonZeroU16;

use super::error::TinError;
use super::shape::{Tin, TinShape};
use crate::engine::quantity::{Length, Volume};

/// The volume of a tin: its level area grows with the height t, from 0 at the bottom to 1 at the
/// rim, as `a + b·t + c·t²`. For straight sides that is exact.
///
/// The volume up to t is `h·(a·t + b·t²/2 + c·t³/3)`; for a flared rectangle with top a × b,
/// bottom c × d and depth h the whole is `h/6·(ab + cd + (a + c)(b + d))`, for a round tin
/// `π·h/12·(D² + D·d + d²)`.
///
/// Source: prismatoid and frustum of a cone (geometry).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Capacity {
    /// Level area at the bottom, cm².
    level: f64,
    /// Coefficient of t, cm².
    grows: f64,
    /// Coefficient of t², cm².
    curves: f64,
    /// Depth, cm.
    deep: f64,
}

impl Capacity {
    /// The capacity of one tin, all of its cups together.
    ///
    /// # Errors
    /// [`TinError::NoSides`] for a tray; [`TinError::TubeFillsTin`] for a ring whose tube fills it.
    pub fn of(tin: &Tin) -> Result<Self, TinError> {
        match tin.shape {
            TinShape::Rectangle { top, bottom, deep } => {
                let (long, wide) = (cm(bottom.long), cm(bottom.wide));
                let (flare, flare_wide) = (cm(top.long) - long, cm(top.wide) - wide);
                Ok(Self {
                    level: long * wide,
                    grows: long * flare_wide + wide * flare,
                    curves: flare * flare_wide,
                    deep: cm(deep),
                })
            }
            TinShape::Round { top, bottom, deep } => Ok(Self::round(top, bottom, deep)),
            TinShape::Ring {
                top,
                bottom,
                tube,
                deep,
            } => {
                if tube >= bottom || tube >= top {
                    return Err(TinError::TubeFillsTin);
                }
                let mut room = Self::round(top, bottom, deep);
                room.level -= PI / 4.0 * cm(tube) * cm(tube);
                Ok(room)
            }
            TinShape::Muffin {
                top,
                bottom,
                deep,
                cups,
            } => Ok(Self::round(top, bottom, deep).times(cups)),
            TinShape::Tray { .. } => Err(TinError::NoSides),
        }
    }

    fn round(top: Length, bottom: Length, deep: Length) -> Self {
        let (across, flare) = (cm(bottom), cm(top) - cm(bottom));
        Self {
            level: PI / 4.0 * across * across,
            grows: PI / 2.0 * across * flare,
            curves: PI / 4.0 * flare * flare,
            deep: cm(deep),
        }
    }

    fn times(self, cups: NonZeroU16) -> Self {
        let cups = f64::from(cups.get());
        Self {
            level: self.level * cups,
            grows: self.grows * cups,
            curves: self.curves * cups,
            deep: self.deep,
        }
    }

    /// The volume up to the rim.
    ///
    /// # Errors
    /// [`TinError::OffScale`] when it is larger than any tin.
    pub fn volume(&self) -> Result<Volume, TinError> {
        Ok(Volume::from_cubic_centimetres(self.up_to(1.0))?)
    }

    /// The volume up to a share of the depth, cm³.
    pub(super) fn up_to(&self, component: f64) -> f64 {
        let area = self.level + component * (self.grows / 2.0 + component * self.curves / 3.0);
        self.deep * component * area
    }

    /// The level area at the rim, cm².
    pub(super) fn at_rim(&self) -> f64 {
        self.level + self.grows + self.curves
    }

    /// The depth, cm.
    pub(super) const fn deep(&self) -> f64 {
        self.deep
    }
}

/// A length in centimetres.
pub(super) fn cm(length: Length) -> f64 {
    length.metres() * 100.0
}
