//! The batch's results: scaling, rounding, aids, dividing.

use serde_json::{Value, json};
use softcrumb::engine::batch::{
    Divided, PocketScale, Rounded, RoundedLine, Scaled, SolutionAid, WeighingAids,
};
use softcrumb::engine::quantity::Share;

use super::weights;
use crate::error::or_error;
use crate::evaluation::Evaluation;
use crate::spelling::snake;

pub(super) fn to_json(evaluation: &Evaluation) -> Value {
    let divisions = evaluation.divisions.iter();
    json!({
        "scaled": or_error(&evaluation.batch.scaled, "batch", scaled),
        "rounded": evaluation.batch.rounded.as_ref().map(rounded),
        "divided": evaluation.divided.as_ref().map(|d| or_error(d, "batch", divided)),
        "divide": divisions.map(|d| or_error(d, "divide", divided)).collect::<Vec<_>>(),
    })
}

fn scaled(scaled: &Scaled) -> Value {
    json!({
        "factor": scaled.factor.number(),
        "factor_beside": scaled.beside.number(),
        "weighed_in_g": scaled.weighed_in.grams(),
        "steam_g": scaled.steam.grams(),
        "mixed_g": scaled.mixed.grams(),
        "left_behind_g": scaled.left_behind.grams(),
        "lost_dividing_g": scaled.lost_dividing.grams(),
        "needed_g": scaled.needed.grams(),
        "pieces": scaled.pieces.count,
        "piece_g": scaled.pieces.each.grams(),
        "filling_g": scaled.filling.grams(),
        "lost_baking_g": scaled.lost_baking.grams(),
        "baked_g": scaled.baked.grams(),
        "baked_piece_g": scaled.baked_each.grams(),
        "lines_g": weights(&scaled.formula),
        "cautions": scaled.cautions.iter().map(snake).collect::<Vec<_>>(),
    })
}

fn rounded(rounded: &Rounded) -> Value {
    json!({
        "lines": rounded.lines.iter().map(line).collect::<Vec<_>>(),
        "dough_exact_g": rounded.dough_exact.grams(),
        "dough_weighed_g": rounded.dough_weighed.grams(),
        "true_water_exact_share": rounded.true_water_exact.map(Share::fraction),
        "true_water_weighed_share": rounded.true_water_weighed.map(Share::fraction),
    })
}

fn line(line: &RoundedLine) -> Value {
    json!({
        "stream": line.at.part, "line": line.at.line,
        "exact_g": line.exact.grams(), "division_g": line.division.grams(),
        "on_pocket_scale": line.on_pocket_scale, "weighed_g": line.weighed.grams(),
        "shown": snake(&line.reading), "error_g": line.error.grams(),
        "error_share": line.error_share.map(Share::fraction),
        "percent_exact_share": line.percent_exact.map(Share::fraction),
        "percent_weighed_share": line.percent_weighed.map(Share::fraction),
        "cures": line.aids.as_ref().map(aids),
    })
}

fn aids(aids: &WeighingAids) -> Value {
    let pocket = |aid: PocketScale| {
        json!({
            "division_g": aid.division.grams(), "weighed_g": aid.weighed.grams(),
            "error_g": aid.error.grams(),
        })
    };
    json!({ "pocket_scale": aids.pocket_scale.map(pocket), "solution": aids.solution.map(solution) })
}

fn solution(aid: SolutionAid) -> Value {
    let kind = snake(&aid);
    match aid {
        SolutionAid::Take(take) => json!({
            "kind": kind, "stir_in_yeast_g": take.stir_in_yeast.grams(),
            "stir_in_water_g": take.stir_in_water.grams(),
            "solution_exact_g": take.solution_exact.grams(), "solution_g": take.solution.grams(),
            "yeast_g": take.yeast.grams(), "water_g": take.water.grams(),
            "stream_water_g": take.part_water.grams(),
            "water_left_exact_g": take.water_left_exact.grams(),
            "water_left_g": take.water_left.grams(), "error_g": take.error.grams(),
        }),
        SolutionAid::StillBelowScale { solution } => {
            json!({ "kind": kind, "solution_g": solution.grams() })
        }
        SolutionAid::NotEnoughWater { brings, water } => {
            json!({ "kind": kind, "brings_g": brings.grams(), "water_g": water.grams() })
        }
    }
}

fn divided(divided: &Divided) -> Value {
    let portion = |portion: softcrumb::engine::batch::Portion| {
        json!({
            "count": portion.count, "divisions": portion.divisions, "each_g": portion.each.grams(),
        })
    };
    json!({
        "dough_g": divided.dough.grams(), "division_g": divided.division.grams(),
        "divisions": divided.divisions, "heavier": portion(divided.heavier),
        "lighter": portion(divided.lighter), "below_division_g": divided.below_division.grams(),
    })
}
