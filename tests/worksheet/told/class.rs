//! Results beside the batch: tins, nutrition, allergens, shopping, class.

use std::num::{NonZeroU16, NonZeroU32};

use serde_json::{Value, json};
use softcrumb::engine::class::{self, Bench, BowlNeed, Load, OvenPlan, bowls, oven};
use softcrumb::engine::nutrition::{
    self, Declared, DeclaredLine, LabelLaw, Nutrients, Nutrition, declare,
};
use softcrumb::engine::quantity::{Length, Mass, Money};
use softcrumb::engine::shopping::{self, Item, needs};
use softcrumb::engine::tin::{DoughHeight, Filling, Layout, Spot, dough_height, filling, layout};

use super::weights;
use crate::asked::Asked;
use crate::error::or_error;
use crate::evaluation::Evaluation;
use crate::spelling::snake;

pub(super) fn tin(asked: &Asked, evaluation: &Evaluation) -> Value {
    let (Some(used), Ok(scaled)) = (asked.sheet.batch.tin, &evaluation.scaled) else {
        return Value::Null;
    };
    let count = f64::from(used.tins.count.get());
    let each = Mass::from_grams(scaled.needed.grams() / count).unwrap_or_default();
    let filled = filling(used.tins, asked.sheet.bread, used.room, Some(scaled.needed));
    let pieces = scaled
        .pieces
        .count
        .get()
        .div_ceil(u32::from(used.tins.count.get()));
    let pieces = u16::try_from(pieces)
        .ok()
        .and_then(NonZeroU16::new)
        .unwrap_or(NonZeroU16::MAX);
    let laid = layout(
        &used.tins.tin,
        pieces,
        used.rows,
        scaled.pieces.each,
        used.rise,
    );
    json!({
        "filling": or_error(&filled, "batch.tin", filled_told),
        "stand": or_error(&dough_height(&used.tins.tin, each, used.rise), "batch.tin", stand_told),
        "layout": or_error(&laid, "batch.tin", layout_told),
    })
}

fn filled_told(filled: &Filling) -> Value {
    json!({
        "volume_cm3": filled.volume.cubic_centimetres(),
        "room_cm3_per_g": filled.wished.cubic_centimetres_per_gram(),
        "dough_g": filled.all.grams(),
        "found_cm3_per_g": filled.found.map(|room| room.cubic_centimetres_per_gram()),
        "fullness": filled.fullness.as_ref().map(snake),
    })
}

fn stand_told(stands: &DoughHeight) -> Value {
    json!({
        "risen_cm3": stands.risen.cubic_centimetres(),
        "of_rim_share": stands.of_rim.fraction(),
        "below_m": stands.below.map(Length::metres),
        "above_m": stands.above.map(Length::metres),
        "level_at": stands.level_at.number(),
    })
}

fn layout_told(laid: &Layout) -> Value {
    let spot = |spot: &Spot| json!([spot.along.fraction(), spot.across.fraction()]);
    json!({
        "rows": laid.grid.map(|grid| grid.rows), "columns": laid.grid.map(|grid| grid.columns),
        "spots": laid.spots.iter().map(spot).collect::<Vec<_>>(),
        "place_m": laid.place.metres(), "ball_m": laid.ball.metres(), "risen_m": laid.risen.metres(),
        "put_in": snake(&laid.put_in), "when_risen": snake(&laid.when_risen),
    })
}

pub(super) fn nutrition(evaluation: &Evaluation) -> Value {
    let Ok(scaled) = &evaluation.scaled else {
        return Value::Null;
    };
    or_error(
        &nutrition::nutrition(scaled),
        "batch",
        |found: &Nutrition| {
            let (piece, in_piece) = found.in_piece();
            json!({
                "mass_g": found.mass.grams(), "piece_g": piece.grams(), "all": held(&found.all),
                "hundred_grams": both(&found.in_hundred_grams()), "piece": both(&in_piece),
            })
        },
    )
}

fn held(held: &Nutrients) -> Value {
    json!({
        "fat_g": held.fat.grams(), "saturates_g": held.saturates.grams(),
        "carbohydrate_g": held.carbohydrate.grams(), "sugars_g": held.sugars.grams(),
        "fibre_g": held.fibre.grams(), "protein_g": held.protein.grams(),
        "sodium_g": held.sodium.grams(), "alcohol_g": held.alcohol.grams(),
    })
}

fn both(portion: &Nutrients) -> Value {
    let of = |law| {
        or_error(&declare(portion, law), "batch", |(energy, lines)| {
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
                "kilojoules": energy.kilojoules, "kilocalories": energy.kilocalories,
                "lines": lines.iter().map(line).collect::<Vec<_>>(),
            })
        })
    };
    json!({ "exact": held(portion), "eu": of(LabelLaw::Eu), "us": of(LabelLaw::Us) })
}

pub(super) fn allergens(asked: &Asked) -> Value {
    let formula = &asked.sheet.formula;
    let marks = asked.class.pantry.marks(formula);
    let of = |law| {
        let rows = nutrition::allergens(formula, &marks, law);
        let row = |row: &nutrition::AllergenRow| {
            json!({
                "allergen": snake(&row.allergen), "contained": row.contained(),
                "told_by": row.told_by.iter().map(snake).collect::<Vec<_>>(),
            })
        };
        rows.iter().map(row).collect::<Vec<_>>()
    };
    json!({ "eu": of(LabelLaw::Eu), "us": of(LabelLaw::Us) })
}

pub(super) fn shopping(asked: &Asked, evaluation: &Evaluation) -> Value {
    let Ok(scaled) = &evaluation.scaled else {
        return Value::Null;
    };
    let packs = asked.class.pantry.packs(&scaled.formula);
    let list = shopping::shopping(needs(&scaled.formula), &packs);
    or_error(&list, "pantry", |list| {
        let item = |item: &Item| {
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
    let (sheet, batch) = (&asked.sheet, &asked.sheet.batch);
    let made = class::class(&sheet.formula, settings, batch.losses, batch.pieces);
    or_error(&made, "class", |made| {
        let bench = |bench: &Bench| {
            json!({
                "count": bench.count, "students": bench.students, "loaves": bench.loaves,
                "lines_g": weights(&bench.batch.formula),
            })
        };
        let bowl = |need: &BowlNeed| {
            json!({
                "stream": need.part, "count": need.count, "holds_g": need.holds.grams(),
                "room_cm3": need.room.cubic_centimetres(),
            })
        };
        let loaves = NonZeroU32::new(made.loaves).unwrap_or(NonZeroU32::MIN);
        json!({
            "stations": made.stations, "loaves": made.loaves, "dough_g": made.dough.grams(),
            "benches": made.benches.iter().map(bench).collect::<Vec<_>>(),
            "total_g": weights(&made.total),
            "bowls": bowls(made).iter().map(bowl).collect::<Vec<_>>(),
            "oven": or_error(&oven(loaves, settings.oven), "class.oven", oven_told),
        })
    })
}

fn oven_told(plan: &OvenPlan) -> Value {
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
