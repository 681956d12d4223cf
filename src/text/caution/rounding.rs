//! A line that the scale rounds by too much, and its aid.

use super::Advice;
use super::advice::COMMON_PRACTICE;
use crate::engine::batch::{
    PocketScale, Rounded, RoundedLine, ScaleReading, SolutionAid, WeighingAids, YeastSolution,
};
use crate::text::{format, format_options::FormatOptions, name, tr};

/// What to know about a line whose rounding passes 2 %; `None` where it does not.
#[must_use]
pub fn rounding(food: &str, line: &RoundedLine, options: FormatOptions) -> Option<Advice> {
    let aids = line.aids.as_ref()?;
    let exact = format::mass(line.exact, options);
    let means = match (line.reading, line.error_share) {
        (ScaleReading::AsWeighed, Some(off)) => tr!(
            "{food}: for {exact} the scale shows {first}, which is {second} off.",
            food = food,
            exact = exact,
            first = format::mass_weighed(line.weighed, line.division, options),
            second = format::share(off, options)
        ),
        (ScaleReading::AsWeighed | ScaleReading::BelowScale, _) => tr!(
            "{food}: {exact} is too little for a scale that steps by {value}.",
            food = food,
            exact = exact,
            value = format::division(line.division, options)
        ),
    };
    Some(Advice::new(means, aid(aids, options), COMMON_PRACTICE))
}

/// How to weigh each line of which the scale shows nothing, or something far off, as paper tells it:
/// "Instant yeast, Night dough: 0.37 g is too little for a scale that steps by 1 g. Weigh 0.37 g on a
/// pocket scale …", and in one sentence "On a pocket scale: Instant yeast, Final dough 3.4 g."
#[must_use]
pub fn below_scale(rounded: &Rounded, options: FormatOptions) -> Vec<String> {
    let called = |line: &RoundedLine| {
        let part = rounded.formula.parts.get(line.at.part)?;
        let food = name::food_short(&part.lines.get(line.at.line)?.food);
        let part = name::part(part);
        Some(tr!("{food}, {part}", food = food, part = part))
    };
    let (mut told, mut far_off) = (Vec::new(), Vec::new());
    for line in rounded.lines.iter().filter(|line| line.is_far_off()) {
        let Some(called) = called(line) else { continue };
        if line.reading == ScaleReading::BelowScale {
            let advice = rounding(&called, line, options);
            told.extend(advice.map(|advice| format!("{} {}", advice.means, advice.to_do)));
        } else {
            far_off.push(format!("{called} {}", format::mass(line.exact, options)));
        }
    }
    if !far_off.is_empty() {
        let list = far_off.join(tr!("; "));
        told.push(tr!("On a pocket scale: {list}.", list = list));
    }
    told
}

/// What helps.
fn aid(aids: &WeighingAids, options: FormatOptions) -> String {
    let pocket = aids.pocket_scale.map(|scale| pocket(&scale, options));
    let solution = aids.solution.as_ref().map(|aid| solution(aid, options));
    match (pocket, solution) {
        (Some(pocket), Some(solution)) => format!("{pocket} {solution}"),
        (Some(only), None) | (None, Some(only)) => only,
        (None, None) => tr!(
            "Make a larger batch, or measure it into several batches at once and \
                         share it out."
        )
        .to_owned(),
    }
}

fn pocket(scale: &PocketScale, options: FormatOptions) -> String {
    tr!(
        "Weigh {first} on a pocket scale that steps by {second}.",
        first = format::mass_weighed(scale.weighed, scale.division, options),
        second = format::division(scale.division, options)
    )
}

fn solution(aid: &SolutionAid, options: FormatOptions) -> String {
    match aid {
        SolutionAid::Take(take) => take_solution(take, options),
        SolutionAid::StillBelowScale { .. } => tr!(
            "Even stirred into twenty times its weight of water it is too little for this scale."
        )
        .to_owned(),
        SolutionAid::NotEnoughWater { brings, water } => tr!(
            "Stirred into water it would bring {first} of water, more than the {second} this part has.",
            first = format::mass(*brings, options),
            second = format::mass(*water, options)
        ),
    }
}

fn take_solution(take: &YeastSolution, options: FormatOptions) -> String {
    let weigh = |mass| format::mass_weighed(mass, take.division, options);
    let to_do = tr!(
        "Or stir {first} of yeast into {second} of water, weigh {third} of that into the dough, and pour only {fourth} of this part’s water.",
        first = weigh(take.stir_in_yeast),
        second = weigh(take.stir_in_water),
        third = weigh(take.solution),
        fourth = format::mass_weighed(take.water_left, take.water_division, options)
    );
    let Some(within) = take.within else {
        return to_do;
    };
    let within = tr!(
        "The yeast is then right to within {value}; throw the rest away.",
        value = format::share(within, options)
    );
    format!("{to_do} {within}")
}
