//! The working of a plan and of its rises, line by line.

use crate::engine::formula::Formula;
use crate::engine::working::{WorkingLine, given};
use crate::results::day::{DayResults, PathItem, WhichRise, critical_path};
use crate::text::{format, format_options::FormatOptions, name, tr};

/// The duration of each step and wait on the critical path, and their sum.
#[must_use]
pub fn path_working(results: &DayResults, formula: &Formula) -> Vec<WorkingLine> {
    let path = critical_path(results);
    if path.is_empty() {
        return Vec::new();
    }
    let sum = path.iter().map(|item| item.lasts.minutes()).sum();
    let letters = (1..=path.len()).map(|number| format!("s{number}"));
    let rule = letters.clone().collect::<Vec<_>>().join(" + ");
    let with = letters.zip(&path).map(|(letter, item)| {
        let called = item_name(item, results, formula);
        given(letter, called, item.lasts.minutes(), tr!("min"))
    });
    vec![WorkingLine {
        rule: rule.into(),
        with: with.collect(),
        result: given("t", tr!("from the start to the table"), sum, tr!("min")),
        source: tr!("by definition").into(),
    }]
}

fn item_name(item: &PathItem, results: &DayResults, formula: &Formula) -> String {
    let step = item.step.and_then(|place| results.step(place));
    step.map_or_else(
        || tr!("it waits").to_owned(),
        |(step, _)| name::step(step, formula),
    )
}

/// The working of a rise, and of the dough's yeast activity.
#[must_use]
pub fn rise_working(results: &DayResults, which: WhichRise) -> Vec<WorkingLine> {
    let Ok(risen) = results.run.rises.of(which) else {
        return Vec::new();
    };
    let mut lines = risen.working();
    if let Some(doughs) = &results.run.doughs {
        let activity = results.run.references.yeast_activity;
        lines.extend(doughs.now.working(&doughs.reference, activity));
    }
    lines
}

/// How long the bulk rise takes, most likely, on one line: "52 min", "2 h 50 min".
#[must_use]
pub fn bulk(results: &DayResults, options: FormatOptions) -> String {
    match &results.run.rises.bulk {
        Ok(risen) => format::minutes(risen.due, options),
        Err(_) => "–".to_owned(),
    }
}
