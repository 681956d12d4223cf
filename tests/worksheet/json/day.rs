//! The day's results: rises, nights, the plan with its times, the calendar file.

use serde_json::{Value, json};
use softcrumb::engine::learn::{Learnt, LearntFactor};
use softcrumb::engine::plan::{Step, Timed};
use softcrumb::engine::quantity::{Instant, Minutes};
use softcrumb::engine::rise::{RiseError, Risen};
use softcrumb::results::day::{ConflictedPlan, DayResults, PrefermentRise, learnt};
use softcrumb::sheet::civil::Zone;
use softcrumb::storage::calendar;
use softcrumb::text::{FormatOptions, day, name};

use crate::asked::Asked;
use crate::day::AskedDay;
use crate::error::or_error;
use crate::evaluation::Evaluation;
use crate::spelling::{name as spelt, snake};

pub(super) fn to_json(asked: &Asked, evaluation: &Evaluation) -> Value {
    let (Some(wanted), Some(planned)) = (&asked.day, &evaluation.day) else {
        return Value::Null;
    };
    or_error(planned, "day", |planned| whole(asked, wanted, planned))
}

fn whole(asked: &Asked, wanted: &AskedDay, planned: &DayResults) -> Value {
    let solved = &planned.solved;
    let steps: Vec<Value> = planned
        .steps()
        .map(|(one, timed)| step(one, timed, asked, &wanted.zone))
        .collect();
    let nights = planned.run.rises.preferments.iter();
    let nights = nights.map(|rise| or_error(rise, "formula", preferment));
    let conflicts = solved.conflicts.iter().map(|conflict| {
        let formula = &asked.sheet.formula;
        let zone = &wanted.zone;
        let said = day::conflict(
            conflict,
            &planned.plan,
            formula,
            zone,
            FormatOptions::default(),
        );
        json!({ "kind": spelt(conflict), "told": said })
    });
    let solutions = ConflictedPlan::of(planned).map(|conflicted| conflicted.solutions());
    let solutions = solutions.unwrap_or_default();
    json!({
        "bulk": rise(&planned.run.rises.bulk), "proof": rise(&planned.run.rises.proof),
        "nights": nights.collect::<Vec<_>>(), "steps": steps,
        "begins_s": solved.begins.seconds(), "table_s": solved.table.seconds(),
        "conflicts": conflicts.collect::<Vec<_>>(),
        "changes": solutions.iter().map(spelt).collect::<Vec<_>>(),
        "calendar": calendar(asked, wanted, planned),
        "learnt": learnt_json(&learnt(&wanted.log, &asked.kitchen, None)),
    })
}

fn learnt_json(learnt: &Learnt) -> Value {
    let factor = |factor: &LearntFactor| json!({ "times": factor.factor.number(), "spread_share": factor.rests.spread.fraction() });
    json!({
        "friction": learnt.friction.as_ref().map(|friction| json!({
            "k_per_min": friction.rate.kelvin_per_minute(),
            "spread_k_per_min": friction.spread.kelvin_per_minute(),
        })),
        "steam": learnt.steam.as_ref().map(factor),
        "transfer": learnt.transfer.as_ref().map(factor),
    })
}

fn rise(risen: &Result<Risen, RiseError>) -> Value {
    or_error(risen, "day.rises", |risen| {
        let points = risen.points.iter().map(|point| {
            let volume = point.volume.number();
            json!([
                point.time.minutes(),
                point.temperature.celsius(),
                point.done.fraction(),
                volume
            ])
        });
        json!({
            "soonest_min": risen.soonest.minutes(), "due_min": risen.due.minutes(),
            "latest_min": risen.latest.map(Minutes::minutes),
            "mean_rate_share": risen.mean_rate.fraction(),
            "known_min": risen.asked.anchor.time.minutes(),
            "known_at_c": risen.asked.anchor.at.celsius(),
            "spread_share": risen.asked.anchor.spread.fraction(),
            "times_as_fast": risen.asked.yeast_activity.number(),
            "min_c_done_volume": points.collect::<Vec<_>>(),
        })
    })
}

fn preferment(rise: &PrefermentRise) -> Value {
    json!({
        "stream": rise.part, "at_c": rise.equivalent_time.at.celsius(),
        "equals_min": rise.equivalent_time.equals.minutes(),
        "never_chilled_equals_min": rise.never_chilled.equals.minutes(),
        "chilled_at_once_equals_min": rise.chilled_at_once.equals.minutes(),
        "comes_out_c": rise.end_temperature().map(|at| at.celsius()),
    })
}

fn step(step: &Step, timed: &Timed, asked: &Asked, zone: &Zone) -> Value {
    json!({
        "work": snake(&step.at.work), "of": step.at.of,
        "name": name::step(step, &asked.sheet.formula), "after": step.after,
        "begins_s": timed.begins.seconds(), "ends_s": timed.ends.seconds(),
        "begins_local": local(timed.begins, zone), "ends_local": local(timed.ends, zone),
        "lasts_min": timed.lasts.minutes(), "hands_min": step.hands.minutes(),
        "least_min": step.lasts.least().minutes(), "wished_min": step.lasts.wished().minutes(),
        "most_min": step.lasts.most().minutes(),
    })
}

/// "2026-03-29T01:30:15".
fn local(at: Instant, zone: &Zone) -> String {
    let civil = zone.civil(at);
    let (year, month, day) = civil.date.numbers();
    let (hour, minute, second) = (civil.clock.hour(), civil.clock.minute(), civil.second);
    format!("{year:04}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:02}")
}

fn calendar(asked: &Asked, wanted: &AskedDay, planned: &DayResults) -> String {
    let events = day::calendar_events(
        planned,
        &asked.sheet.formula,
        "step",
        &wanted.zone,
        FormatOptions::default(),
    );
    calendar::write(&events, wanted.now.instant())
}
