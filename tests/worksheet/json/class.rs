//! Results beside the batch: tins, nutrition, allergens, shopping, class.

use serde_json::{Value, json};
use softcrumb::engine::class::{BenchBatch, BowlNeed, BowlPortion, Load, OvenPlan};
use softcrumb::engine::nutrition::{
    AllergenRow, Declared, DeclaredLine, LabelLaw, Nutrients, NutritionError,
};
use softcrumb::engine::quantity::{Length, Mass, Money};
use softcrumb::engine::shopping::ShoppingItem;
use softcrumb::engine::tin::{DoughHeight, Filling, Layout, PiecePosition};
use softcrumb::results::batch::nutrition::{self, NutritionPortion, NutritionResults};
use softcrumb::results::batch::shopping::{self, ShoppingResults};
use softcrumb::results::batch::{allergens, class, tins};

use crate::asked::Asked;
use crate::error::or_error;
use crate::evaluation::Evaluation;
use crate::spelling::snake;

pub(super) fn tin(asked: &Asked, evaluation: &Evaluation) -> Value {
    let scaled = evaluation.batch.scaled.as_ref().ok();
    let Some(tins) = scaled.and_then(|scaled| tins::of(&asked.sheet, scaled)) else {
        return Value::Null;
    };
    json!({
        "filling": or_error(&tins.filling, "batch.tin", filling_json),
        "stand": or_error(&tins.height, "batch.tin", dough_height_json),
        "layout": or_error(&tins.layout, "batch.tin", layout_json),
    })
}

fn filling_json(filled: &Filling) -> Value {
    json!({
        "volume_cm3": filled.volume.cubic_centimetres(),
        "room_cm3_per_g": filled.wished.cubic_centimetres_per_gram(),
        "dough_g": filled.all.grams(),
        "found_cm3_per_g": filled.found.map(|room| room.cubic_centimetres_per_gram()),
        "fullness": filled.fullness.as_ref().map(snake),
    })
}

fn dough_height_json(dough_height: &DoughHeight) -> Value {
    json!({
        "risen_cm3": dough_height.risen.cubic_centimetres(),
        "of_rim_share": dough_height.of_rim.fraction(),
        "below_m": dough_height.below.map(Length::metres),
        "above_m": dough_height.above.map(Length::metres),
        "level_at": dough_height.level_at.number(),
    })
}

fn layout_json(laid: &Layout) -> Value {
    let spot = |spot: &PiecePosition| json!([spot.along.fraction(), spot.across.fraction()]);
    json!({
        "rows": laid.grid.map(|grid| grid.rows), "columns": laid.grid.map(|grid| grid.columns),
        "spots": laid.spots.iter().map(spot).collect::<Vec<_>>(),
        "place_m": laid.place.metres(), "ball_m": laid.ball.metres(), "risen_m": laid.risen.metres(),
        "put_in": snake(&laid.put_in), "when_risen": snake(&laid.when_risen),
    })
}

pub(super) fn nutrition(asked: &Asked, evaluation: &Evaluation) -> Value {
    let Ok(scaled) = &evaluation.batch.scaled else {
        return Value::Null;
    };
    let [eu, us] = LabelLaw::ALL.map(|law| nutrition::of(&asked.sheet, scaled, law));
    or_error(&eu, "batch", |found: &NutritionResults| {
        json!({
            "mass_g": found.whole.mass.grams(), "piece_g": found.piece.mass.grams(),
            "all": held(&found.whole.all),
            "hundred_grams": both(&found.hundred_grams, &us, |us| &us.hundred_grams),
            "piece": both(&found.piece, &us, |us| &us.piece),
        })
    })
}

fn held(held: &Nutrients) -> Value {
    json!({
        "fat_g": held.fat.grams(), "saturates_g": held.saturates.grams(),
        "carbohydrate_g": held.carbohydrate.grams(), "sugars_g": held.sugars.grams(),
        "fibre_g": held.fibre.grams(), "protein_g": held.protein.grams(),
        "sodium_g": held.sodium.grams(), "alcohol_g": held.alcohol.grams(),
    })
}

fn both(
    eu: &NutritionPortion,
    us: &Result<NutritionResults, NutritionError>,
    portion: impl Fn(&NutritionResults) -> &NutritionPortion,
) -> Value {
    json!({
        "exact": held(&eu.nutrients), "eu": declared(eu),
        "us": or_error(us, "batch", |us| declared(portion(us))),
    })
}

fn declared(portion: &NutritionPortion) -> Value {
    let line = |line: &DeclaredLine| {
        json!({
            "nutrient": snake(&line.nutrient), "exact_g": line.exact.grams(),
            "declared": match line.declared {
                Declared::Nothing => json!(0),
                Declared::Below(limit) => json!({ "below_g": limit.grams() }),
                Declared::Amount { mass, places } => json!({ "g": mass.grams(), "places": places }),
            },
        })
    };
    json!({
        "kilojoules": portion.energy.kilojoules, "kilocalories": portion.energy.kilocalories,
        "lines": portion.lines.iter().map(line).collect::<Vec<_>>(),
    })
}

pub(super) fn allergens(asked: &Asked) -> Value {
    let formula = &asked.sheet.formula;
    let of = |law| {
        let found = allergens::of(formula, &asked.class.pantry, law);
        let row = |row: &AllergenRow| {
            json!({
                "allergen": snake(&row.allergen), "contained": row.contained(),
                "presence": snake(&row.presence()),
                "told_by": row.sources.iter().map(snake).collect::<Vec<_>>(),
            })
        };
        found.rows.iter().map(row).collect::<Vec<_>>()
    };
    let found = allergens::of(formula, &asked.class.pantry, LabelLaw::Eu);
    let unread = found.unread.iter();
    let unread = unread.filter_map(|at| formula.line(*at).map(|line| line.food.name().to_owned()));
    json!({
        "eu": of(LabelLaw::Eu), "us": of(LabelLaw::Us),
        "unread_packets": unread.collect::<Vec<_>>(),
    })
}

pub(super) fn shopping(asked: &Asked, evaluation: &Evaluation) -> Value {
    let Ok(scaled) = &evaluation.batch.scaled else {
        return Value::Null;
    };
    let found = shopping::of(scaled, &asked.class.pantry);
    or_error(&found, "pantry", |ShoppingResults { list, .. }| {
        let item = |item: &ShoppingItem| {
            json!({
                "name": item.food.name(), "needed_g": item.needed.grams(), "to_buy_g": item.to_buy.grams(),
                "packs": item.packs, "left_g": item.left.map(Mass::grams),
                "used": item.used.map(Money::amount), "paid": item.paid.map(Money::amount),
            })
        };
        json!({
            "items": list.items.iter().map(item).collect::<Vec<_>>(),
            "used": list.used.amount(), "paid": list.paid.amount(), "unpriced": list.unpriced,
        })
    })
}

pub(super) fn class(asked: &Asked) -> Value {
    let Some(settings) = asked.class.settings else {
        return Value::Null;
    };
    let class = class::of(&asked.sheet, &settings, asked.kitchen.scales);
    or_error(&class.weights, "class", |weights| {
        let bench = |bench: &BenchBatch| {
            json!({
                "count": bench.count, "students": bench.students, "loaves": bench.loaves,
                "lines_g": super::weights(&bench.weighs),
            })
        };
        let bowl = |need: &BowlNeed| {
            json!({
                "stream": need.part, "count": need.count, "holds_g": need.holds.grams(),
                "room_cm3": need.room.cubic_centimetres(),
            })
        };
        let portion = |portion: &BowlPortion| {
            json!({
                "stream": portion.part, "holds_g": portion.holds.grams(), "left_g": portion.left.grams(),
                "each_g": portion.each.iter().map(|each| each.grams()).collect::<Vec<_>>(),
            })
        };
        let made = &weights.class;
        json!({
            "stations": made.stations, "loaves": made.loaves, "dough_g": made.dough.grams(),
            "benches": made.benches.iter().map(bench).collect::<Vec<_>>(),
            "total_g": super::weights(&made.total),
            "bowl_g": made.bowl.as_ref().map(super::weights),
            "weighed_g": super::weights(&weights.total.formula),
            "portions": weights.portions.iter().map(portion).collect::<Vec<_>>(),
            "bowls": weights.bowls.iter().map(bowl).collect::<Vec<_>>(),
            "oven": or_error(&class.oven, "class.oven", oven_json),
        })
    })
}

fn oven_json(plan: &OvenPlan) -> Value {
    let load = |load: &Load| {
        json!({
            "first": load.first, "loaves": load.loaves,
            "goes_in_min": load.goes_in.minutes(), "comes_out_min": load.comes_out.minutes(),
        })
    };
    json!({
        "loads": plan.loads.iter().map(load).collect::<Vec<_>>(),
        "stagger_min": plan.stagger.minutes(), "all_out_min": plan.all_out.minutes(),
    })
}
