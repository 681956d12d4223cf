//! Bowls: which are wanted on the benches, and how large.

use super::bench::Class;
use crate::engine::formula::PartKind;
use crate::engine::quantity::{Mass, Volume};
use crate::engine::tin::DOUGH_SPECIFIC_VOLUME;

/// Bowls for one part at one kind of bench.
#[derive(Clone, Debug, PartialEq)]
pub struct BowlNeed {
    /// Which part of the formula.
    pub part: usize,
    /// What becomes of it.
    pub kind: PartKind,
    /// How many bowls.
    pub count: u32,
    /// The mass in each.
    pub holds: Mass,
    /// The least volume of each.
    pub room: Volume,
}

/// The bowls of a class, bench by bench.
///
/// The volume of a bowl is a multiple of the dough in it: 2 for a paste that is stirred,
/// 4 for a preferment, which may treble, 3 for a dough that doubles, 2 for anything else. The final
/// dough's bowl takes pastes and preferments too.
///
/// Source: common practice; dough at rest: see [`DOUGH_SPECIFIC_VOLUME`].
#[must_use]
pub fn bowls(class: &Class) -> Vec<BowlNeed> {
    let mut found = Vec::new();
    for bench in &class.benches {
        for (part, own) in bench.batch.formula.parts.iter().enumerate() {
            let (holds, times) = match own.kind {
                PartKind::Paste => (own.mass(), 2.0),
                PartKind::Preferment => (own.mass(), 4.0),
                PartKind::Final => (bench.batch.mixed, 3.0),
                PartKind::Filling | PartKind::Topping | PartKind::Wash => (own.mass(), 2.0),
            };
            let room = holds.grams() * DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram() * times;
            found.push(BowlNeed {
                part,
                kind: own.kind,
                count: bench.count.get(),
                holds,
                room: Volume::from_cubic_centimetres(room).unwrap_or_default(),
            });
        }
    }
    found.retain(|need| need.holds > Mass::ZERO);
    found
}
