//! The working: every line of every answer, rule, numbers and source.

use serde_json::{Value, json};
use softcrumb::engine::working::{Given, WorkingLine};

use crate::evaluation::Evaluation;
use crate::heat::Heat;

/// Every line of working, each with the name of its subject.
pub(crate) fn working(evaluation: &Evaluation) -> Vec<(&'static str, WorkingLine)> {
    let mut all = Vec::new();
    of_formula(evaluation, &mut all);
    of_batch(evaluation, &mut all);
    of_chocolate(evaluation, &mut all);
    of_day(evaluation, &mut all);
    if let Some(heat) = &evaluation.heat {
        of_heat(heat, &mut all);
    }
    all
}

type Lines = Vec<(&'static str, WorkingLine)>;

fn add(all: &mut Lines, of: &'static str, lines: Vec<WorkingLine>) {
    all.extend(lines.into_iter().map(|line| (of, line)));
}

fn of_formula(evaluation: &Evaluation, all: &mut Lines) {
    let results = &evaluation.formula;
    for line in &results.lines {
        let both = [&line.of_all_flour, &line.of_own_part];
        for percentage in both.into_iter().flatten() {
            add(all, "percentage", percentage.working());
        }
    }
    let both = [&results.water.as_written, &results.water.as_made];
    for water in both.into_iter().flatten() {
        add(all, "water", water.working());
    }
    for part in results.parts.iter().flat_map(|part| &part.totals) {
        add(all, "stream", part.working());
    }
    for reached in evaluation.targets.iter().flatten() {
        add(all, "target", reached.working());
    }
}

fn of_batch(evaluation: &Evaluation, all: &mut Lines) {
    if let Ok(scaled) = &evaluation.batch.scaled {
        add(all, "batch", scaled.working());
    }
    if let Some(rounded) = &evaluation.batch.rounded {
        add(all, "rounding", rounded.working());
        for line in &rounded.lines {
            add(all, "rounding", rounded.line_working(line.at));
        }
    }
    let divided = evaluation.divided.iter().chain(&evaluation.divisions);
    for divided in divided.flatten() {
        add(all, "dividing", divided.working());
    }
}

fn of_chocolate(evaluation: &Evaluation, all: &mut Lines) {
    for (_, fill) in &evaluation.fills {
        if let Ok(fill) = fill {
            add(all, "filling", fill.working());
        }
    }
    for (_, sums) in &evaluation.syrups {
        if let Ok(sums) = sums {
            let syrup = &sums.found.syrup;
            add(all, "syrup", syrup.working());
            add(all, "seizing", syrup.seizing_working());
            add(all, "keeping", syrup.keeping.working());
            for needed in sums.wished.iter().flatten() {
                add(all, "liquid", needed.working());
            }
        }
    }
}

fn of_day(evaluation: &Evaluation, all: &mut Lines) {
    if let Some(Ok(planned)) = &evaluation.day {
        for risen in [&planned.run.rises.bulk, &planned.run.rises.proof]
            .into_iter()
            .flatten()
        {
            add(all, "rise", risen.working());
        }
        for rise in planned.run.rises.preferments.iter().flatten() {
            add(all, "night", rise.equivalent_time.working());
        }
    }
}

fn of_heat(heat: &Heat, all: &mut Lines) {
    let results = &heat.results;
    if let Ok(boiling) = &results.boiling {
        add(all, "boiling", boiling.working());
    }
    for (paste, cooling) in results.pastes.iter().zip(&heat.paste_coolings) {
        if let (Ok(cooked), Some(cooled)) = (&paste.cooked, &cooling.cooled) {
            add(all, "paste", cooked.working());
            add(all, "cooling", cooled.slow.working());
        }
    }
    if let Ok(mixing) = &results.mixing {
        add(all, "dough_temperature", mixing.dough.working());
        add(all, "development", mixing.development.working());
        if let Ok(factor) = &mixing.factor {
            add(all, "factor_method", factor.working());
        }
    }
    if let Ok(baking) = &results.baking {
        add(all, "core", baking.core_working());
        if let Ok(programme) = &baking.programme {
            add(all, "programme", programme.working());
        }
        if let Ok(time) = &baking.time {
            add(all, "bake_time", time.working());
        }
    }
    for sums in heat.melts.iter().filter_map(|(_, sums)| sums.as_ref().ok()) {
        add(all, "melting", sums.melted.working());
    }
}

/// The lines as JSON.
pub(super) fn to_json(lines: &[(&'static str, WorkingLine)]) -> Value {
    let letter = |given: &Given| {
        json!({
            "letter": given.letter, "of": given.of, "value": given.value, "unit": given.unit,
        })
    };
    let line = |(of, line): &(&'static str, WorkingLine)| {
        json!({
            "answer": of, "rule": line.rule, "with": line.with.iter().map(letter).collect::<Vec<_>>(),
            "result": letter(&line.result), "source": line.source,
        })
    };
    json!(lines.iter().map(line).collect::<Vec<_>>())
}
