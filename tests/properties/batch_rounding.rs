//! Rounding is bounded by half a division a line, and dividing is exact, over generated cases.

use std::num::NonZeroU32;

use proptest::prelude::*;
use softcrumb::engine::batch::{
    ScaleReading, ScaleSettings, SolutionAid, WeighingAids, divide, round,
};
use softcrumb::engine::formula::{Formula, LineAt};
use softcrumb::engine::quantity::{Division, Mass, Share};

use crate::batches::{CASES, alike, formula, grams, runner};
use crate::cases::cases;

fn weighing() -> impl Strategy<Value = ScaleSettings> {
    let division = || (0..Division::ALL.len()).prop_map(|at| Division::ALL[at]);
    (division(), prop::option::of(division()))
        .prop_map(|(main, pocket)| ScaleSettings { main, pocket })
}

#[test]
fn rounding_is_bounded_by_half_a_division_a_line() {
    runner()
        .run(&(formula(), weighing()), |(formula, weighing)| {
            let rounded = round(&formula, weighing);
            let mut allowed = 0.0;
            for line in &rounded.lines {
                let half = 0.5 * line.division.grams() + 1e-7;
                assert!(line.error.size().grams() <= half, "{line:?}");
                let whole = line.division.times(line.division.whole_in(line.weighed));
                alike(whole.grams(), line.weighed.grams(), "whole divisions");
                let nothing = line.exact > Mass::ZERO && line.weighed == Mass::ZERO;
                assert_eq!(
                    line.reading == ScaleReading::BelowScale,
                    nothing,
                    "{line:?}"
                );
                let share = line.error_share.map_or(0.0, Share::fraction);
                assert_eq!(line.aids.is_some(), share > 0.02, "{line:?}");
                if formula.parts[line.at.part].kind.in_dough() {
                    allowed += half;
                }
                cures_hold(&formula, line.at, line.aids);
            }
            let change = rounded.dough_weighed - rounded.dough_exact;
            assert!(change.size().grams() <= allowed + 1e-6);
            Ok(())
        })
        .unwrap();
}

/// What a aid says can be done.
fn cures_hold(formula: &Formula, at: LineAt, aids: Option<WeighingAids>) {
    let Some(aids) = aids else { return };
    let exact = formula.line(at).unwrap().mass.grams();
    if let Some(scale) = aids.pocket_scale {
        assert!(scale.error.size().grams() <= 0.02 * exact + 1e-12);
    }
    if let Some(SolutionAid::Take(solution)) = aids.solution {
        alike(
            solution.yeast.grams() * 21.0,
            solution.solution.grams(),
            "solution",
        );
        let both = solution.water_left_exact + solution.water;
        alike(
            both.grams(),
            solution.part_water.grams(),
            "water of the stream",
        );
        let stirred = solution.stir_in_yeast + solution.stir_in_water;
        assert!(
            stirred.grams() >= solution.solution.grams() - 1e-9,
            "{solution:?}"
        );
        let left = (solution.water_left - solution.water_left_exact).size();
        assert!(left.grams() <= 0.5 * solution.water_division.grams() + 1e-7);
    }
}

#[test]
fn pieces_add_up_to_the_dough_and_differ_by_one_division_at_most() {
    let divided = std::cell::Cell::new(0);
    let division = (0..Division::ALL.len()).prop_map(|at| Division::ALL[at]);
    let dough = (1.0..6.0_f64).prop_map(|power| libm::pow(10.0, power));
    let drawn = (dough, 1..100_u32, division);
    runner()
        .run(&drawn, |(dough, pieces, division)| {
            let wanted = NonZeroU32::new(pieces).unwrap();
            if let Ok(answer) = divide(grams(dough), wanted, division) {
                divided.set(divided.get() + 1);
                let (heavier, lighter) = (answer.heavier, answer.lighter);
                assert_eq!(heavier.count + lighter.count, pieces);
                assert_eq!(heavier.divisions, lighter.divisions + 1);
                let sum = heavier.count * heavier.divisions + lighter.count * lighter.divisions;
                assert_eq!(sum, answer.divisions);
                assert!(lighter.divisions > 0 && lighter.count > 0);
                let below = answer.below_division.grams();
                assert!((-1e-5..division.grams()).contains(&below), "{answer:?}");
                alike(division.times(sum).grams() + below, dough, "dough");
            } else {
                assert!(dough < f64::from(pieces) * division.grams());
            }
            Ok(())
        })
        .unwrap();
    let divided = divided.get();
    let least = cases(CASES).div_ceil(5) * 3;
    assert!(divided > least, "only {divided} were divided");
}
