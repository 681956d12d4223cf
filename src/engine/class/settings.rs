//! What is wanted of a class.

use std::num::NonZeroU16;

use crate::engine::batch::BatchTarget;
use crate::engine::quantity::{Mass, Minutes};

/// What is wanted of a class.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassSettings {
    /// How many students.
    pub students: NonZeroU16,
    /// Students at one bench: 1 alone, 2 in pairs.
    pub at_bench: NonZeroU16,
    /// Loaves for each student.
    pub loaves: NonZeroU16,
    /// Dough in each loaf, ready for the tin.
    pub loaf: Mass,
    /// Loaves the teacher makes to show.
    pub shown: u16,
    /// The oven.
    pub oven: OvenSettings,
}

/// What is true of the oven of a class.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OvenSettings {
    /// Loaves that go in at once, all ovens together.
    pub places: NonZeroU16,
    /// How long a load bakes.
    pub bake: Minutes,
    /// Between loads: emptying, filling, coming back to heat.
    pub between: Minutes,
}

impl ClassSettings {
    /// All loaves, the teacher's included.
    #[must_use]
    pub fn loaves_in_all(&self) -> u32 {
        u32::from(self.students.get()) * u32::from(self.loaves.get()) + u32::from(self.shown)
    }
}

impl ClassSettings {
    /// The batch target of the students' loaves.
    #[must_use]
    pub const fn target(&self) -> BatchTarget {
        BatchTarget::Class {
            students: self.students,
            loaves: self.loaves,
            loaf: self.loaf,
        }
    }
}

impl Default for ClassSettings {
    fn default() -> Self {
        Self {
            students: NonZeroU16::MIN.saturating_add(11),
            at_bench: NonZeroU16::MIN,
            loaves: NonZeroU16::MIN,
            loaf: Mass::known(450.0),
            shown: 1,
            oven: OvenSettings {
                places: NonZeroU16::MIN.saturating_add(5),
                bake: Minutes::known(30.0),
                between: Minutes::known(10.0),
            },
        }
    }
}
