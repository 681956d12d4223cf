//! The chocolate's results: filling, syrup, flow curve.

use serde_json::{Map, Value, json};
use softcrumb::engine::chocolate::{CurvePoint, Fill, Flow, FlowCurve, LiquidNeeded, Syrup};
use softcrumb::engine::quantity::{Factor, Mass, Share, Viscosity};

use crate::error::or_error;
use crate::evaluation::{Evaluation, SyrupSums};
use crate::spelling::snake;

pub(super) fn to_json(evaluation: &Evaluation) -> Value {
    let fills = evaluation.fills.iter();
    let fills = fills.map(|(at, result)| with_part(*at, or_error(result, "batch", fill)));
    let syrups = evaluation.syrups.iter();
    let syrups = syrups.map(|(at, result)| with_part(*at, or_error(result, "formula", sums)));
    json!({ "fills": fills.collect::<Vec<_>>(), "syrups": syrups.collect::<Vec<_>>() })
}

fn with_part(at: usize, value: Value) -> Value {
    let mut all = Map::new();
    all.insert("stream".to_owned(), json!(at));
    if let Value::Object(fields) = value {
        all.extend(fields);
    }
    Value::Object(all)
}

fn fill(fill: &Fill) -> Value {
    json!({
        "pieces": fill.pieces, "dough_each_g": fill.dough_each.grams(),
        "stays_share": fill.stays.fraction(), "each_g": fill.each.grams(),
        "in_pieces_g": fill.in_pieces.grams(), "to_make_g": fill.to_make.grams(),
        "with_spare_g": fill.with_spare.grams(), "of_dough_share": fill.of_dough.fraction(),
        "cautions": fill.cautions.iter().map(snake).collect::<Vec<_>>(),
    })
}

fn sums(sums: &SyrupSums) -> Value {
    let wished = sums
        .wished
        .iter()
        .map(|w| or_error(w, "thickness_pa_s", needed));
    json!({
        "syrup": syrup(&sums.found.syrup), "curve": curve(&sums.found.curve),
        "liquid_for": wished.collect::<Vec<_>>(),
    })
}

fn syrup(syrup: &Syrup) -> Value {
    let (thickness, handling) = match syrup.flow {
        Flow::Flows {
            thickness,
            handling,
        } => (Some(thickness.pascal_seconds()), Some(snake(&handling))),
        Flow::Seized | Flow::MeltedOnly => (None, None),
    };
    json!({
        "at_c": syrup.temperature.celsius(),
        "packing_share": syrup.model.packing.fraction(),
        "chocolate_g": syrup.chocolate.grams(), "liquid_g": syrup.liquid.grams(),
        "liquid_on_chocolate": syrup.liquid_on_chocolate.fraction(),
        "water_g": syrup.water.grams(), "water_brought_g": syrup.water_brought.grams(),
        "sugars_g": syrup.sugars.grams(), "dissolved_g": syrup.dissolved.grams(),
        "undissolved_g": syrup.undissolved.grams(), "fat_g": syrup.fat.grams(),
        "sugar_in_water_share": syrup.sugar_in_water.fraction(),
        "water_thickness_pa_s": syrup.water_thickness.pascal_seconds(),
        "crowding_share": syrup.crowding.fraction(),
        "thickening": syrup.thickening.map(Factor::number),
        "flow": snake(&syrup.flow), "thickness_pa_s": thickness, "handling": handling,
        "least_liquid_g": syrup.least_liquid.map(Mass::grams),
        "beyond_seizing_g": syrup.beyond_seizing().map(Mass::grams),
        "rule": { "cocoa_share": syrup.rule.cocoa.fraction(), "needed_g": syrup.rule.needed.grams(),
            "brought_g": syrup.rule.brought.grams(), "met": syrup.rule.met() },
        "water_activity": syrup.keeping.water_activity.fraction(),
        "keeps_as": snake(&syrup.keeping.keeps_as),
        "cautions": syrup.cautions.iter().map(snake).collect::<Vec<_>>(),
    })
}

fn curve(curve: &FlowCurve) -> Value {
    let point = |point: &CurvePoint| {
        json!({
            "liquid_on_chocolate": point.liquid_on_chocolate.fraction(),
            "thickness_pa_s": point.thickness.map(Viscosity::pascal_seconds),
        })
    };
    json!({
        "points": curve.points.iter().map(point).collect::<Vec<_>>(),
        "seizes_below": curve.seizes_below.map(Share::fraction),
        "here": point(&curve.here),
    })
}

fn needed(needed: &LiquidNeeded) -> Value {
    json!({
        "wished_pa_s": needed.wished.pascal_seconds(), "liquid_g": needed.liquid.grams(),
        "liquid_on_chocolate": needed.liquid_on_chocolate.fraction(),
        "gives_pa_s": needed.thickness.pascal_seconds(), "handling": snake(&needed.handling),
    })
}
