//! A line that the scale rounds by too much, and its cure.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::batch::{Cures, PocketScale, RoundedLine, Shown, SolutionCure, YeastSolution};
use crate::words::{manner::Manner, say, write};

/// What to know about a line whose rounding passes 2 %; `None` where it does not.
#[must_use]
pub fn rounding(food: &str, line: &RoundedLine, manner: Manner) -> Option<Advice> {
    let cures = line.cures.as_ref()?;
    let exact = write::mass(line.exact, manner);
    let means = match (line.shown, line.error_share) {
        (Shown::AsWeighed, Some(off)) => say!(
            "{food}: for {exact} the scale shows {}, which is {} off.",
            food,
            exact,
            write::mass_weighed(line.weighed, line.division, manner),
            write::share(off, manner)
        ),
        (Shown::AsWeighed | Shown::BelowScale, _) => say!(
            "{food}: {exact} is too little for a scale that steps by {}.",
            food,
            exact,
            write::division(line.division, manner)
        ),
    };
    Some(Advice::new(means, cure(cures, manner), COMMON_PRACTICE))
}

/// What helps.
fn cure(cures: &Cures, manner: Manner) -> String {
    let pocket = cures.pocket_scale.map(|scale| pocket(&scale, manner));
    let solution = cures.solution.as_ref().map(|cure| solution(cure, manner));
    match (pocket, solution) {
        (Some(pocket), Some(solution)) => format!("{pocket} {solution}"),
        (Some(only), None) | (None, Some(only)) => only,
        (None, None) => say!(
            "Make a larger batch, or measure it into several batches at once and \
                         share it out."
        )
        .to_owned(),
    }
}

fn pocket(scale: &PocketScale, manner: Manner) -> String {
    say!(
        "Weigh {} on a pocket scale that steps by {}.",
        write::mass_weighed(scale.weighed, scale.division, manner),
        write::division(scale.division, manner)
    )
}

fn solution(cure: &SolutionCure, manner: Manner) -> String {
    match cure {
        SolutionCure::Take(take) => take_solution(take, manner),
        SolutionCure::StillBelowScale { .. } => say!(
            "Even stirred into twenty times its weight of water it is too little for this scale."
        )
        .to_owned(),
        SolutionCure::NotEnoughWater { brings, water } => say!(
            "Stirred into water it would bring {} of water, more than the {} this stream has.",
            write::mass(*brings, manner),
            write::mass(*water, manner)
        ),
    }
}

fn take_solution(take: &YeastSolution, manner: Manner) -> String {
    let weigh = |mass| write::mass_weighed(mass, take.division, manner);
    say!(
        "Or stir {} of yeast into {} of water, weigh {} of that into the dough, and pour only {} \
         of this stream’s water.",
        weigh(take.stir_in_yeast),
        weigh(take.stir_in_water),
        weigh(take.solution),
        weigh(take.water_left)
    )
}
