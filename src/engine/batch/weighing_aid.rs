//! Weighing aids: how to weigh what is too little for the scale.

use crate::engine::formula::{Line, Part};
use crate::engine::ingredients::Role;
use crate::engine::numerics::whole;
use crate::engine::quantity::{Division, Mass, MassChange, Share};

/// What helps where rounding changes a line by more than 2 %.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighingAids {
    /// The coarsest pocket scale on which the error stays within 2 %; none when none does.
    pub pocket_scale: Option<PocketScale>,
    /// A yeast solution, for yeast only.
    pub solution: Option<SolutionAid>,
}

impl WeighingAids {
    /// The rounding error that asks for an aid, as a fraction: 2 % (common practice).
    pub const MOST_ERROR: f64 = 0.02;
}

/// A line on a pocket scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PocketScale {
    /// Its division.
    pub division: Division,
    /// What it would show.
    pub weighed: Mass,
    /// Weighed less exact.
    pub error: MassChange,
}

/// A yeast solution, or why there is none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SolutionAid {
    /// How to make and weigh it.
    Take(YeastSolution),
    /// Even 21 times the yeast is below what the scale shows.
    StillBelowScale {
        /// The solution that would have to be weighed.
        solution: Mass,
    },
    /// The part holds too little plain water to give up.
    NotEnoughWater {
        /// Plain water the solution would bring.
        brings: Mass,
        /// Plain water in the part.
        water: Mass,
    },
}

/// Yeast stirred into twenty times its weight of water, so that the scale can show it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YeastSolution {
    /// The yeast that is wanted, exact.
    pub wanted: Mass,
    /// The division of the scale on which yeast and solution are weighed.
    pub division: Division,
    /// The division of the scale on which the water of the part is weighed.
    pub water_division: Division,
    /// Yeast to stir in.
    pub stir_in_yeast: Mass,
    /// Water to stir it into.
    pub stir_in_water: Mass,
    /// Solution to weigh into the part, exact: 21 times the yeast.
    pub solution_exact: Mass,
    /// Solution to weigh into the part, rounded.
    pub solution: Mass,
    /// The yeast that is in it.
    pub yeast: Mass,
    /// The water that is in it.
    pub water: Mass,
    /// Plain water of the part before.
    pub part_water: Mass,
    /// Plain water of the part left to weigh, exact.
    pub water_left_exact: Mass,
    /// Plain water of the part left to weigh, rounded.
    pub water_left: Mass,
    /// Yeast in the solution less yeast wanted.
    pub error: MassChange,
    /// The size of that error as a share of the yeast wanted.
    pub error_share: Option<Share>,
    /// The most by which the yeast can be off: that error, and half a division each of the yeast
    /// stirred in and of the solution weighed in.
    pub within: Option<Share>,
}

impl YeastSolution {
    /// The least yeast to stir in, in divisions of the scale, so that half of one is 5 % of it. Common
    /// practice.
    pub const LEAST_DIVISIONS: u32 = 10;
}

/// Parts of water to one of yeast.
pub(super) const PARTS_WATER: f64 = 20.0;
/// Parts of solution to one of yeast.
pub(super) const PARTS_SOLUTION: f64 = 21.0;

/// The divisions of two scales.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scales {
    /// That on which the line is weighed.
    pub line: Division,
    /// The kitchen scale.
    pub main: Division,
}

/// What helps with a line whose rounding error passes 2 %, on the scale of the `line` beside the `main`
/// scale of the kitchen.
pub(super) fn aids(part: &Part, line: &Line, scales: Scales) -> WeighingAids {
    let solution = (line.food.role() == Role::Yeast)
        .then(|| yeast_solution(part, line.mass, scales))
        .flatten();
    WeighingAids {
        pocket_scale: pocket_scale(line.mass),
        solution,
    }
}

/// The coarsest division of 0.1 g or finer on which the error stays within 2 %.
fn pocket_scale(exact: Mass) -> Option<PocketScale> {
    Division::ALL
        .into_iter()
        .rev()
        .filter(|division| division.grams() <= 0.1)
        .map(|division| {
            let weighed = division.nearest(exact);
            PocketScale {
                division,
                weighed,
                error: weighed - exact,
            }
        })
        .find(|aid| aid.error.size().grams() <= WeighingAids::MOST_ERROR * exact.grams())
}

/// A solution of 1 part of yeast in 20 of water: weigh 21 times the yeast, and take the water it
/// brings off the plain water of the same part.
///
/// So much is stirred that the scale shows its yeast well, and at least what is weighed in; the rest is
/// thrown away. Yeast and solution go on the pocket scale where there is one.
/// Source: common practice.
fn yeast_solution(part: &Part, wanted: Mass, scales: Scales) -> Option<SolutionAid> {
    let division = scales.line;
    let solution_exact = Mass::from_grams(wanted.grams() * PARTS_SOLUTION).ok()?;
    let solution = division.nearest(solution_exact);
    if solution <= Mass::ZERO {
        return Some(SolutionAid::StillBelowScale {
            solution: solution_exact,
        });
    }
    let yeast = Mass::from_grams(solution.grams() / PARTS_SOLUTION).ok()?;
    let water = Mass::from_grams(yeast.grams() * PARTS_WATER).ok()?;
    let part_water = plain_water(part);
    if water > part_water {
        return Some(SolutionAid::NotEnoughWater {
            brings: water,
            water: part_water,
        });
    }
    let stir_in_yeast = start(yeast, division);
    let water_left_exact = part_water.less(water);
    let error = yeast - wanted;
    let error_share = error.size().share_of(wanted);
    Some(SolutionAid::Take(YeastSolution {
        wanted,
        division,
        water_division: scales.main,
        stir_in_yeast,
        stir_in_water: Mass::from_grams(stir_in_yeast.grams() * PARTS_WATER).ok()?,
        solution_exact,
        solution,
        yeast,
        water,
        part_water,
        water_left_exact,
        water_left: scales.main.nearest(water_left_exact),
        error,
        error_share,
        within: within(error_share, division, [stir_in_yeast, solution]),
    }))
}

fn plain_water(part: &Part) -> Mass {
    let water = part.lines.iter();
    let water = water.filter(|line| line.food.role() == Role::Water);
    water.map(|line| line.mass).sum()
}

/// The yeast to stir in, in whole divisions: as much as goes in, and what the scale shows well.
fn start(yeast: Mass, division: Division) -> Mass {
    let enough = whole(yeast.grams() / division.grams() - 1e-9).saturating_add(1);
    division.times(enough.max(YeastSolution::LEAST_DIVISIONS))
}

/// An error and half a division each of what is weighed, added up as shares.
fn within(error: Option<Share>, division: Division, weighed: [Mass; 2]) -> Option<Share> {
    let half = Mass::from_grams(division.grams() / 2.0).ok()?;
    let [start, solution] = weighed.map(|mass| half.share_of(mass));
    Some(error?.plus(start?).plus(solution?))
}
