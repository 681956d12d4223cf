//! What stands in the way of a plan, in words.

use super::Trouble;
use crate::engine::plan::PlanError;
use crate::words::{manner::Manner, say, write};

impl Trouble for PlanError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::NoSteps => say!("Every step has been left out. Put one back.").to_owned(),
            Self::TooManySteps { most } => say!(
                "There are more than {} steps. Leave some out.",
                write::count(u32::try_from(*most).unwrap_or(u32::MAX), manner)
            ),
            Self::NoSuchInput { .. } => say!(
                "A step waits for one that is no longer there. Put it back, or leave this one out."
            )
            .to_owned(),
            Self::GoesInCircles { .. } => {
                say!("Some steps wait for each other in a circle. Move one of them.").to_owned()
            }
            Self::NoSuchRange {
                least,
                wished,
                most,
            } => say!(
                "At least {}, as wished {}, at most {}: the three must rise. Change one of them.",
                write::minutes(*least, manner),
                write::minutes(*wished, manner),
                write::minutes(*most, manner)
            ),
        }
    }
}
