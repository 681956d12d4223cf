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

/// The bowls of a class, bench by bench, then the teacher's for what is made ahead.
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
        for (part, own) in bench.weighs.parts.iter().enumerate() {
            let holds = match own.kind {
                PartKind::Final => bench.batch.mixed,
                PartKind::Paste
                | PartKind::Preferment
                | PartKind::Filling
                | PartKind::Topping
                | PartKind::Wash => own.mass(),
            };
            found.push(need(part, own.kind, bench.count.get(), holds));
        }
    }
    if let Some(bowl) = &class.bowl {
        for (part, own) in bowl.parts.iter().enumerate() {
            found.push(need(part, own.kind, 1, own.mass()));
        }
    }
    found.retain(|need| need.holds > Mass::ZERO);
    found
}

fn need(part: usize, kind: PartKind, count: u32, holds: Mass) -> BowlNeed {
    let times = match kind {
        PartKind::Preferment => 4.0,
        PartKind::Final => 3.0,
        PartKind::Paste | PartKind::Filling | PartKind::Topping | PartKind::Wash => 2.0,
    };
    let room = holds.grams() * DOUGH_SPECIFIC_VOLUME.cubic_centimetres_per_gram() * times;
    BowlNeed {
        part,
        kind,
        count,
        holds,
        room: Volume::from_cubic_centimetres(room).unwrap_or_default(),
    }
}
