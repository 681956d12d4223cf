//! Messages for errors of a plan.

use super::ErrorText;
use crate::engine::numerics::saturating_u32;
use crate::engine::plan::PlanError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for PlanError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::NoDough => {
                tr!("There is nothing to bake yet. Enter the ingredients of the dough in Formula.")
                    .to_owned()
            }
            Self::NoSteps => tr!("Every step has been left out. Restore one.").to_owned(),
            Self::TooManySteps { most } => tr!(
                "There are more than {value} steps. Leave some out.",
                value = format::count(saturating_u32(*most), options)
            ),
            Self::NoSuchInput { .. } => tr!(
                "A step waits for one that is no longer there. Restore it, or leave this one out."
            )
            .to_owned(),
            Self::GoesInCircles { .. } => {
                tr!("Some steps wait for each other in a circle. Move one of them.").to_owned()
            }
            Self::NoSuchRange {
                least,
                wished,
                most,
            } => tr!(
                "At least {first}, as wished {second}, at most {third}: the three must rise. Change one of them.",
                first = format::minutes(*least, options),
                second = format::minutes(*wished, options),
                third = format::minutes(*most, options)
            ),
        }
    }
}
