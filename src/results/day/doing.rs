//! Who begins and ends each kind of step at the bench.

use crate::engine::plan::StepKind;

/// Who begins and ends a kind of step at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// The baker's hands, until it is done.
    ByHand,
    /// The baker sets it going; it runs beside other work.
    SetGoing,
    /// It begins when the work before it is done, and runs beside other work.
    ByItself,
}

/// Who begins and ends a kind of step.
#[must_use]
pub const fn doing(kind: StepKind) -> Doing {
    match kind {
        StepKind::CoolPaste
        | StepKind::ChillPaste
        | StepKind::ChillPreferment
        | StepKind::WarmUp
        | StepKind::Preheat
        | StepKind::Bake
        | StepKind::Cool
        | StepKind::Refill
        | StepKind::LaterBake => Doing::SetGoing,
        StepKind::StandPreferment
        | StepKind::Bulk
        | StepKind::Rest
        | StepKind::Proof
        | StepKind::LaterProof => Doing::ByItself,
        StepKind::Scald
        | StepKind::MixPreferment
        | StepKind::Mix
        | StepKind::ButterIn
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Shape
        | StepKind::Tin
        | StepKind::Melt
        | StepKind::Drizzle
        | StepKind::Brush
        | StepKind::Own
        | StepKind::LaterDough => Doing::ByHand,
    }
}
