//! The results about heat: boiling, pastes and their cooling, the bowl, the bake, melting.

use serde_json::{Value, json};
use softcrumb::engine::chocolate::{MeltRemedy, melt_remedies};
use softcrumb::engine::heat::{
    BakeTime, BakedBody, Boiling, CookedFlour, CookedPaste, Cooled, CooledRange, CoolingAdvice,
    CoolingRemedy, CoolingWay, Curve, DoughRemedy, HeatError, LiquidAnswer, LoafBody, LoafCooling,
    PasteRemedy, Programme, StageResult,
};
use softcrumb::engine::quantity::{Length, Mass, Minutes, Temperature};
use softcrumb::results::heat::{
    Baking, CoolingPlan, CoolingResult, HeatShare, MixingResult, PasteResult, StepAmount,
    step_amount,
};

use crate::asked::Asked;
use crate::asked_heat::PLACES;
use crate::error::or_error;
use crate::heat::{Heat, MeltSums, Remedies};
use crate::spelling::snake;

pub(super) fn to_json(asked: &Asked, heat: &Heat) -> Value {
    let pastes = heat.results.pastes.iter().zip(&heat.paste_coolings);
    let melts = heat.melts.iter();
    let coolings = heat.coolings.iter().zip(&asked.heat.coolings);
    let in_vessels = heat.vessel_coolings.iter().zip(&asked.heat.vessel_coolings);
    json!({
        "boiling": or_error(&heat.results.boiling, "kitchen", boiling),
        "pastes": pastes.map(|(one, cooling)| json!({
            "stream": one.part,
            "answer": or_error(&sums(one, cooling), "formula", paste),
        })).collect::<Vec<_>>(),
        "bowl": or_error(&heat.results.mixing, "formula", |mixing| bowl(mixing, &heat.remedies)),
        "baking": or_error(&heat.results.baking, "heat", baking),
        "melts": melts.map(|(at, sums)| json!({
            "stream": at, "answer": or_error(sums, "formula", melted),
        })).collect::<Vec<_>>(),
        "coolings": coolings.map(|(curve, asked)| {
            or_error(curve, "coolings", |curve| read_off(curve, &asked.times))
        }).collect::<Vec<_>>(),
        "vessel_coolings": in_vessels.map(|(curve, asked)| {
            or_error(curve, "vessel_coolings", |curve| read_off(curve, &asked.times))
        }).collect::<Vec<_>>(),
        "boilings": heat.boilings.iter().map(|one| or_error(one, "boilings", boiling)).collect::<Vec<_>>(),
    })
}

fn boiling(boiling: &Boiling) -> Value {
    json!({
        "pressure_hpa": boiling.pressure.hectopascals(),
        "boils_c": boiling.temperature.celsius(),
    })
}

/// A paste with its cooling; why it cannot be had where either cannot.
fn sums<'s>(
    paste: &'s PasteResult,
    cooling: &'s CoolingResult,
) -> Result<(&'s CookedPaste, CoolingPlan, Option<&'s CooledRange>), HeatError> {
    let cooked = paste.cooked.as_ref().map_err(Clone::clone)?;
    let plan = cooling.plan.clone().unwrap_or(Err(HeatError::NoTarget))?;
    Ok((cooked, plan, cooling.cooled.as_ref()))
}

fn paste((cooked, plan, cooling): &(&CookedPaste, CoolingPlan, Option<&CooledRange>)) -> Value {
    json!({
        "poured_c": cooked.poured.celsius(), "paste_c": cooked.temperature.celsius(),
        "steamed_g": cooked.steamed.grams(),
        "water_g": cooked.water.grams(), "starch_g": cooked.starch.grams(),
        "cooked_share": cooked.cooked.fraction(),
        "flours": cooked.flours.iter().map(flour).collect::<Vec<_>>(),
        "remedies": cooked.remedies.iter().map(paste_remedy).collect::<Vec<_>>(),
        "cooling": cooling.map(|cooling| cooled(&cooling.slow)),
        "cooling_range": cooling.map(cooled_range),
        "cooling_way": way(&plan.way),
        "stays_min": plan.stays().iter().map(|stay| stay.minutes.minutes()).collect::<Vec<_>>(),
        "advice": or_error(&plan.advise(), "formula", advice),
    })
}

fn flour(flour: &CookedFlour) -> Value {
    json!({
        "of": flour.of, "grain": snake(&flour.grain), "starch_g": flour.starch.grams(),
        "by_temperature_share": flour.by_temperature.fraction(),
        "by_water_share": flour.by_water.fraction(),
        "cooked_share": flour.cooked.fraction(), "limit": snake(&flour.limit),
    })
}

fn paste_remedy(remedy: &PasteRemedy) -> Value {
    let kind = snake(remedy);
    match remedy {
        PasteRemedy::WarmBowl { to } => json!({ "kind": kind, "to_c": to.celsius() }),
        PasteRemedy::MoreHeat { liquid } | PasteRemedy::MoreWater { liquid } => {
            json!({ "kind": kind, "liquid_g": liquid.grams() })
        }
        PasteRemedy::Stove { to, heat } => {
            json!({ "kind": kind, "to_c": to.celsius(), "heat_j": heat.joules() })
        }
    }
}

fn cooled(cooled: &Cooled) -> Value {
    let minutes = |time: Option<Minutes>| time.map(Minutes::minutes);
    let stage = |one: &StageResult| {
        json!({
            "by": snake(&one.stage.by), "from_c": one.stage.from.celsius(),
            "to_c": one.stage.to.celsius(), "within_min": one.stage.within.minutes(),
            "began_min": one.began.minutes(), "ended_min": minutes(one.ended),
            "took_min": minutes(one.took), "passes": one.passes,
        })
    };
    json!({
        "passes": cooled.passes, "lost_j": cooled.curve.lost.joules(),
        "stages": cooled.stages.iter().map(stage).collect::<Vec<_>>(),
    })
}

/// When it is cold and what evaporates, at each end of what is uncertain.
fn cooled_range(cooling: &CooledRange) -> Value {
    json!({
        "cold_min": cooling.cold().map(|time| time.map(Minutes::minutes)),
        "evaporated_g": cooling.evaporated.map(Mass::grams),
    })
}

fn way(way: &CoolingWay) -> Value {
    json!({
        "vessel": snake(&way.vessel), "across_m": way.laid.across.metres(),
        "count": way.laid.count, "bench_min": way.bench.minutes(), "ice_min": way.ice.minutes(),
    })
}

fn advice(advice: &CoolingAdvice) -> Value {
    let remedy = |one: &CoolingRemedy| {
        json!({
            "way": way(&one.way), "deep_m": one.deep.metres(), "cooling": cooled(&one.cooled.slow),
        })
    };
    json!({
        "bench_at_most_min": advice.bench_at_most.map(Minutes::minutes),
        "remedies": advice.remedies.iter().map(remedy).collect::<Vec<_>>(),
    })
}

fn bowl(mixing: &MixingResult, remedies: &Remedies) -> Value {
    let dough = &mixing.load.dough;
    let components = dough.components();
    let share = |share: &HeatShare| {
        json!({
            "giver": snake(&share.giver), "at_c": share.temperature.map(Temperature::celsius),
            "heat_j": share.heat.joules(),
        })
    };
    json!({
        "dough_c": mixing.dough.temperature.celsius(),
        "low_c": mixing.dough.low.celsius(), "high_c": mixing.dough.high.celsius(),
        "developed_min": mixing.development.minutes.minutes(),
        "settles_c": mixing.dough.mixed.temperature.celsius(),
        "rise_k": mixing.dough.rise.kelvin(), "dry_flour_g": dough.dry_flour.grams(),
        "parts": components.iter().map(|component| json!({
            "of": component.of, "mass_g": component.mass.grams(), "at_c": component.temperature.celsius(),
        })).collect::<Vec<_>>(),
        "shares": mixing.shares.iter().map(share).collect::<Vec<_>>(),
        "liquid": or_error(&mixing.liquid, "formula", |answer| liquid(answer, &remedies.at_best)),
        "ways": remedies.as_it_is.iter().map(dough_remedy).collect::<Vec<_>>(),
        "factor_method_c": or_error(&mixing.factor, "heat", |factor| json!(factor.water.celsius())),
    })
}

fn liquid(answer: &LiquidAnswer, remedies: &[DoughRemedy]) -> Value {
    match answer {
        LiquidAnswer::At { liquid, dough } => json!({
            "reached": true, "liquid_c": liquid.celsius(), "dough_c": dough.temperature.celsius(),
        }),
        LiquidAnswer::OutOfReach(out) => json!({
            "reached": false, "wanted_c": out.wanted.map(Temperature::celsius),
            "best_c": out.best.celsius(), "dough_c": out.dough.temperature.celsius(),
            "short_k": out.short.kelvin(),
            "remedies": remedies.iter().map(dough_remedy).collect::<Vec<_>>(),
        }),
    }
}

fn dough_remedy(remedy: &DoughRemedy) -> Value {
    let (minutes, to, ice) = match step_amount(remedy.step) {
        StepAmount::Time(minutes) => (Some(minutes.minutes()), None, None),
        StepAmount::To(to) => (None, Some(to.celsius()), None),
        StepAmount::Ice(ice) => (None, None, Some(ice.grams())),
    };
    json!({
        "kind": snake(&remedy.step), "minutes": minutes, "to_c": to, "ice_g": ice,
        "with": remedy.steps().skip(1).map(|step| snake(&step)).collect::<Vec<_>>(),
        "reaches_c": remedy.reaches.celsius(), "enough": remedy.enough,
    })
}

fn baking(baking: &Baking) -> Value {
    let programme = |programme: &Programme| {
        json!({
            "total_min": programme.total.minutes(),
            "mean_as_still_c": programme.mean_as_still.celsius(),
            "heat_share": programme.heat.fraction(),
            "phases": programme.phases.iter().map(|one| json!({
                "begins_min": one.begins.minutes(), "ends_min": one.ends.minutes(),
                "as_still_c": one.as_still.celsius(), "advice": snake(&one.advice),
            })).collect::<Vec<_>>(),
        })
    };
    let time = |time: &BakeTime| {
        json!({
            "known_model_min": time.known_model.minutes(),
            "new_model_min": time.new_model.minutes(),
            "likely_min": time.likely.minutes(),
            "from_min": time.from.minutes(), "to_min": time.to.minutes(),
        })
    };
    let known = json!({
        "minutes": baking.known.minutes.minutes(), "oven_c": baking.known.oven.celsius(),
        "piece_g": baking.known.piece.grams(), "shape": snake(&baking.known.baked_as()),
    });
    json!({
        "core_from_c": baking.core.from.celsius(), "core_to_c": baking.core.to.celsius(),
        "capped": baking.core.capped,
        "programme": or_error(&baking.programme, "heat.bake", programme),
        "planned": or_error(&baking.planned, "heat.bake", programme),
        "body": or_error(&baking.baked, "batch", baked_body), "known": known,
        "time": or_error(&baking.time, "heat.bake", time),
        "cooling": or_error(&baking.cooling, "heat.bake", loaf_cooling),
    })
}

fn loaf_cooling(cooling: &LoafCooling) -> Value {
    json!({
        "by_conduction_min": cooling.by_conduction.minutes(),
        "from_min": cooling.from.minutes(), "likely_min": cooling.likely.minutes(),
        "to_min": cooling.to.minutes(),
    })
}

fn baked_body(baked: &BakedBody) -> Value {
    let (long, wide, across, high) = match baked.body {
        LoafBody::Bar { long, wide, high } => (Some(long), Some(wide), None, high),
        LoafBody::Round { across, high } => (None, None, Some(across), high),
    };
    json!({
        "shape": snake(&baked.shape), "dough_g": baked.dough.grams(),
        "long_m": long.map(Length::metres), "wide_m": wide.map(Length::metres),
        "across_m": across.map(Length::metres), "high_m": high.metres(),
    })
}

fn melted(sums: &MeltSums) -> Value {
    let remedies = melt_remedies(&sums.asked, &sums.melted);
    let remedy = |one: &MeltRemedy| {
        let kind = snake(one);
        match one {
            MeltRemedy::HotterLiquid { to } | MeltRemedy::WarmBowl { to } => {
                json!({ "kind": kind, "to_c": to.celsius() })
            }
            MeltRemedy::MoreLiquid { liquid } => {
                json!({ "kind": kind, "liquid_g": liquid.grams() })
            }
            MeltRemedy::WaterBath { at, minutes } => {
                json!({ "kind": kind, "at_c": at.celsius(), "minutes": minutes.minutes() })
            }
            MeltRemedy::FinerChop { to } => json!({ "kind": kind, "to_m": to.metres() }),
        }
    };
    json!({
        "settles_c": sums.melted.temperature.celsius(),
        "unmelted_share": sums.melted.unmelted.fraction(), "lumps": snake(&sums.melted.lumps),
        "remedies": or_error(&remedies, "formula", |all| json!(all.iter().map(remedy).collect::<Vec<_>>())),
    })
}

fn read_off(curve: &Curve, times: &[Minutes]) -> Value {
    let at = |time: &Minutes| {
        let [centre, mean, surface] =
            PLACES.map(|place| curve.at(*time, place).map(Temperature::celsius));
        json!({ "centre_c": centre, "mean_c": mean, "surface_c": surface })
    };
    json!({ "lost_j": curve.lost.joules(), "at": times.iter().map(at).collect::<Vec<_>>() })
}
