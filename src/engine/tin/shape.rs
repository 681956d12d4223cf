//! Shapes: what a tin measures inside.

use std::num::NonZeroU16;

use super::error::TinError;
use crate::engine::quantity::Length;

/// Length and width of a rectangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Across {
    /// The longer side, as a rule.
    pub long: Length,
    /// The other.
    pub wide: Length,
}

/// A tin by its inside measures; flared where top and bottom differ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TinShape {
    /// Four straight sides.
    Rectangle {
        /// At the rim.
        top: Across,
        /// At the bottom.
        bottom: Across,
        /// From bottom to rim.
        deep: Length,
    },
    /// A round tin.
    Round {
        /// Across the rim.
        top: Length,
        /// Across the bottom.
        bottom: Length,
        /// From bottom to rim.
        deep: Length,
    },
    /// A round tin with a tube in the middle.
    Ring {
        /// Across the rim.
        top: Length,
        /// Across the bottom.
        bottom: Length,
        /// Across the tube, half-way up.
        tube: Length,
        /// From bottom to rim.
        deep: Length,
    },
    /// A tin of round cups.
    Muffin {
        /// Across the rim of a cup.
        top: Length,
        /// Across the bottom of a cup.
        bottom: Length,
        /// From bottom to rim.
        deep: Length,
        /// Cups in one tin.
        cups: NonZeroU16,
    },
    /// A flat tray on which dough stands freely.
    Tray {
        /// The part that is used.
        across: Across,
    },
}

/// One tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tin {
    /// What it measures.
    pub shape: TinShape,
    /// Whether a lid closes it.
    pub lidded: bool,
}

/// So many tins alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tins {
    /// One of them.
    pub tin: Tin,
    /// How many.
    pub count: NonZeroU16,
}

impl Tin {
    /// An open tin.
    ///
    /// # Errors
    /// [`TinError::TubeFillsTin`] when a ring's tube is as wide as its bottom or its rim.
    pub fn open(shape: TinShape) -> Result<Self, TinError> {
        if let TinShape::Ring {
            top, bottom, tube, ..
        } = shape
            && (tube >= bottom || tube >= top)
        {
            return Err(TinError::TubeFillsTin);
        }
        Ok(Self {
            shape,
            lidded: false,
        })
    }

    /// The same tin with a lid; a tray, a ring or a tin of cups has none.
    #[must_use]
    pub const fn with_lid(mut self, lidded: bool) -> Self {
        self.lidded = lidded && self.can_have_lid();
        self
    }

    /// Whether tins of this shape are made with a lid.
    #[must_use]
    pub const fn can_have_lid(&self) -> bool {
        matches!(
            self.shape,
            TinShape::Rectangle { .. } | TinShape::Round { .. }
        )
    }

    /// Cups in it: one for a tin that is no tin of cups.
    #[must_use]
    pub const fn cups(&self) -> NonZeroU16 {
        match self.shape {
            TinShape::Muffin { cups, .. } => cups,
            TinShape::Rectangle { .. }
            | TinShape::Round { .. }
            | TinShape::Ring { .. }
            | TinShape::Tray { .. } => NonZeroU16::MIN,
        }
    }
}
