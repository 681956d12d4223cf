//! The teacher's bowl: pastes and preferments made once for all benches.

use super::error::ClassError;
use super::settings::Ahead;
use super::sum::sum;
use crate::engine::formula::{Formula, Part, PartKind};
use crate::engine::quantity::Mass;

/// Whether a part is made ahead.
pub(super) const fn is_ahead(kind: PartKind) -> bool {
    matches!(kind, PartKind::Paste | PartKind::Preferment)
}

fn empty(part: &mut Part) {
    part.steam = Mass::ZERO;
    for line in &mut part.lines {
        line.mass = Mass::ZERO;
        line.poured = None;
    }
}

/// What a part weighs once it is made.
pub(super) fn made(part: &Part) -> Mass {
    part.mass().less(part.steam)
}

/// What a bench weighs out itself.
pub(super) fn weighed_at_bench(formula: &Formula, ahead: Ahead) -> Formula {
    let mut own = formula.clone();
    if ahead == Ahead::TeacherBowl {
        let parts = own.parts.iter_mut();
        parts.filter(|part| is_ahead(part.kind)).for_each(empty);
    }
    own
}

/// What the teacher weighs out: all that the benches, each so many times, need of what is made ahead, and `residue` of
/// each part that stays in its bowl.
pub(super) fn teacher_bowl(
    formula: &Formula,
    benches: &[(u32, &Formula)],
    residue: Mass,
) -> Result<Formula, ClassError> {
    let mut bowl = sum(formula, benches)?;
    for part in &mut bowl.parts {
        if !is_ahead(part.kind) {
            empty(part);
            continue;
        }
        let holds = made(part);
        let Some(times) = (holds + residue).share_of(holds) else {
            continue;
        };
        part.steam = part.steam.try_component(times)?;
        for line in &mut part.lines {
            line.mass = line.mass.try_component(times)?;
        }
    }
    Ok(bowl)
}
