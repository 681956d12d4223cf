//! A line that the scale rounds by too much, and its cure.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::batch::{Cures, PocketScale, RoundedLine, Shown, SolutionCure, YeastSolution};
use crate::text::{format_options::FormatOptions, tr, format};

/// What to know about a line whose rounding passes 2 %; `None` where it does not.
#[must_use]
pub fn rounding(food: &str, line: &RoundedLine, manner: FormatOptions) -> Option<Advice> {
    let cures = line.cures.as_ref()?;
    let exact = format::mass(line.exact, manner);
    let means = match (line.shown, line.error_share) {
        (Shown::AsWeighed, Some(off)) => tr!("{food}: for {exact} the scale shows {first}, which is {second} off.",
            food = food,
            exact = exact,
            first = format::mass_weighed(line.weighed, line.division, manner),
            second = format::share(off, manner)),
        (Shown::AsWeighed | Shown::BelowScale, _) => tr!("{food}: {exact} is too little for a scale that steps by {value}.",
            food = food,
            exact = exact,
            value = format::division(line.division, manner)),
    };
    Some(Advice::new(means, cure(cures, manner), COMMON_PRACTICE))
}

/// What helps.
fn cure(cures: &Cures, manner: FormatOptions) -> String {
    let pocket = cures.pocket_scale.map(|scale| pocket(&scale, manner));
    let solution = cures.solution.as_ref().map(|cure| solution(cure, manner));
    match (pocket, solution) {
        (Some(pocket), Some(solution)) => format!("{pocket} {solution}"),
        (Some(only), None) | (None, Some(only)) => only,
        (None, None) => tr!("Make a larger batch, or measure it into several batches at once and \
                         share it out.")
        .to_owned(),
    }
}

fn pocket(scale: &PocketScale, manner: FormatOptions) -> String {
    tr!("Weigh {first} on a pocket scale that steps by {second}.",
        first = format::mass_weighed(scale.weighed, scale.division, manner),
        second = format::division(scale.division, manner))
}

fn solution(cure: &SolutionCure, manner: FormatOptions) -> String {
    match cure {
        SolutionCure::Take(take) => take_solution(take, manner),
        SolutionCure::StillBelowScale { .. } => tr!("Even stirred into twenty times its weight of water it is too little for this scale.")
        .to_owned(),
        SolutionCure::NotEnoughWater { brings, water } => tr!("Stirred into water it would bring {first} of water, more than the {second} this stream has.",
            first = format::mass(*brings, manner),
            second = format::mass(*water, manner)),
    }
}

fn take_solution(take: &YeastSolution, manner: FormatOptions) -> String {
    let weigh = |mass| format::mass_weighed(mass, take.division, manner);
    tr!("Or stir {first} of yeast into {second} of water, weigh {third} of that into the dough, and pour only {fourth} \
         of this stream’s water.",
        first = weigh(take.stir_in_yeast),
        second = weigh(take.stir_in_water),
        third = weigh(take.solution),
        fourth = weigh(take.water_left))
}
