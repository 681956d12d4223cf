//! The settings of a class.

use std::num::NonZeroU16;

use crate::engine::batch::BatchTarget;
use crate::engine::quantity::{Mass, Minutes};

/// The settings of a class.
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
    /// Whether nobody has set that: a loaf is then as heavy as one of the batch.
    pub of_batch: bool,
    /// Loaves the teacher makes to show.
    pub shown: u16,
    /// The oven.
    pub oven: OvenSettings,
    /// Who makes paste and preferment.
    pub ahead: Ahead,
}

/// Who makes what is made ahead: pastes and preferments.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Ahead {
    /// Each bench its own.
    #[default]
    EachBench,
    /// The teacher all of it in one bowl, from which each bench takes its portion. So little yeast
    /// that a bench could not weigh it is weighed once for all.
    TeacherBowl,
}

impl Ahead {
    /// Every way, in the order lists are shown.
    pub const ALL: [Self; 2] = [Self::EachBench, Self::TeacherBowl];
}

/// The oven of a class.
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
    /// The batch target of all loaves, the teacher's included.
    #[must_use]
    pub fn target(&self) -> BatchTarget {
        let count = u16::try_from(self.loaves_in_all()).ok();
        match count.and_then(NonZeroU16::new) {
            Some(count) if self.shown > 0 => BatchTarget::Pieces {
                count,
                each: self.loaf,
            },
            Some(_) | None => self.students_target(),
        }
    }

    /// The batch target of one bench's loaves.
    #[must_use]
    pub fn bench_target(&self) -> BatchTarget {
        BatchTarget::Pieces {
            count: self.at_bench.saturating_mul(self.loaves),
            each: self.loaf,
        }
    }

    /// The batch target of the students' loaves.
    const fn students_target(&self) -> BatchTarget {
        BatchTarget::Class {
            students: self.students,
            loaves: self.loaves,
            loaf: self.loaf,
        }
    }

    /// Whether a batch is this class's: its target counts its loaves, or divides each of them into
    /// pieces. Where nobody has set what a loaf weighs, no batch was made by it.
    #[must_use]
    pub fn is_made_by(&self, wanted: BatchTarget) -> bool {
        !self.of_batch && (self.counts_loaves(wanted) || self.divides_loaves(wanted))
    }

    /// The same class with loaves that somebody has set.
    #[must_use]
    pub const fn with_loaf(self, loaf: Mass) -> Self {
        Self {
            loaf,
            of_batch: false,
            ..self
        }
    }

    /// Whether a target is that of all loaves, or of the students', each loaf counted as a piece.
    fn counts_loaves(&self, wanted: BatchTarget) -> bool {
        wanted == self.target() || wanted == self.students_target()
    }

    /// Whether a target is that of all loaves, each divided into as many pieces.
    fn divides_loaves(&self, wanted: BatchTarget) -> bool {
        let BatchTarget::Pieces { count, each } = wanted else {
            return false;
        };
        let loaves = self.loaves_in_all();
        let all = self.loaf.grams() * f64::from(loaves);
        let made = each.grams() * f64::from(count.get());
        u32::from(count.get()).is_multiple_of(loaves) && (made - all).abs() <= SAME * all
    }
}

/// Dough that differs by a smaller share is the same.
const SAME: f64 = 1e-6;

impl Default for ClassSettings {
    fn default() -> Self {
        Self {
            students: NonZeroU16::MIN.saturating_add(11),
            at_bench: NonZeroU16::MIN,
            loaves: NonZeroU16::MIN,
            loaf: Mass::known(450.0),
            of_batch: true,
            shown: 1,
            oven: OvenSettings {
                places: NonZeroU16::MIN.saturating_add(5),
                bake: Minutes::known(30.0),
                between: Minutes::known(10.0),
            },
            ahead: Ahead::EachBench,
        }
    }
}
