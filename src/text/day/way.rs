//! The way from the start to the table: how the figures of a plan came about, line by line, and what
//! the dough's yeast, sugar and salt make of a known rise.

use crate::engine::formula::Formula;
use crate::engine::plan::{Step, Timed};
use crate::engine::quantity::Factor;
use crate::engine::rise::YeastActivity;
use crate::engine::working::{Line, given};
use crate::results::day::Planned;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// From the first step to the table: how long each step on that way lasts, and their sum.
#[must_use]
pub fn way_working(planned: &Planned, formula: &Formula) -> Vec<Line> {
    let way = way(planned, formula);
    if way.is_empty() {
        return Vec::new();
    }
    let sum = way.iter().map(|(_, minutes)| minutes).sum();
    let letters = (1..=way.len()).map(|number| format!("s{number}"));
    let rule = letters.clone().collect::<Vec<_>>().join(" + ");
    let with = letters.zip(way);
    vec![Line {
        rule: rule.into(),
        with: with
            .map(|(letter, (called, minutes))| given(letter, called, minutes, tr!("min")))
            .collect(),
        gives: given("t", tr!("from the start to the table"), sum, tr!("min")),
        source: tr!("by definition").into(),
    }]
}

/// The steps on the way from the one that begins first to the table, and what waits between them:
/// what it is called, and for how many minutes.
fn way(planned: &Planned, formula: &Formula) -> Vec<(String, f64)> {
    let steps = planned.plan.steps().iter();
    let all: Vec<(&Step, &Timed)> = steps.zip(&planned.solved.steps).collect();
    let begins = |place: &usize| all.get(*place).map(|(_, timed)| timed.begins);
    let mut way = Vec::new();
    let mut at = (0..all.len()).min_by_key(begins);
    while let Some((place, (step, timed))) = at.and_then(|place| Some((place, all.get(place)?))) {
        let lasts = timed.ends.since(timed.begins).minutes();
        way.push((name::step(step, formula), lasts));
        // What waits for it, and begins first.
        let waits_for_it = |next: &usize| {
            let step = all.get(*next).map(|(step, _)| step);
            step.is_some_and(|step| step.after.contains(&place))
        };
        at = (0..all.len()).filter(waits_for_it).min_by_key(begins);
        let next = at.and_then(|next| begins(&next));
        let waits = next.map_or(0.0, |next| next.since(timed.ends).minutes());
        if waits > 0.0 {
            way.push((tr!("it waits").to_owned(), waits));
        }
    }
    way
}

/// How the rises came about: the bulk rise, and what the dough's contents make of it.
#[must_use]
pub fn rises_working(planned: &Planned) -> Vec<Line> {
    let bulk = planned.rising.bulk.as_ref();
    let mut lines = bulk.map(|risen| risen.working()).unwrap_or_default();
    if let Some((now, then)) = &planned.doughs {
        lines.extend(now.working(then, planned.known.yeast_activity));
    }
    lines
}

/// What is told of a dough that is not the one of the known rises; nothing where it is as fast.
#[must_use]
pub fn yeast_activity(
    (now, then): (&YeastActivity, &YeastActivity),
    times: Factor,
    options: FormatOptions,
) -> Option<String> {
    let times = times.number();
    let by = |times: f64| format::plain(times, 2, options.numbers);
    if (times - 1.0).abs() < 0.005 {
        return None;
    }
    let shares = [
        (then.yeast, now.yeast),
        (then.sugar, now.sugar),
        (then.salt, now.salt),
    ];
    let [yeast, sugar, salt] = shares.map(|(old, new)| {
        let (old, new) = (format::share(old, options), format::share(new, options));
        (old != new).then_some((old, new))
    });
    let mut said = vec![if times > 1.0 {
        let by = by(times);
        tr!(
            "This dough rises {by} times as fast as the one the known rises are of.",
            by = by
        )
    } else {
        let by = by(1.0 / times);
        tr!(
            "This dough takes {by} times as long as the one the known rises are of.",
            by = by
        )
    }];
    said.extend(yeast.map(|(old, new)| {
        tr!(
            "It has {new} of yeast, as fresh, instead of {old}.",
            new = new,
            old = old
        )
    }));
    said.extend(sugar.map(|(old, new)| {
        tr!(
            "It has {new} of sugar instead of {old}.",
            new = new,
            old = old
        )
    }));
    said.extend(salt.map(|(old, new)| {
        tr!(
            "It has {new} of salt instead of {old}.",
            new = new,
            old = old
        )
    }));
    Some(said.join(" "))
}

/// How long the dough takes to rise in one piece, most likely.
#[must_use]
pub fn bulk(planned: &Planned, options: FormatOptions) -> String {
    match &planned.rising.bulk {
        Ok(risen) => format::minutes(risen.due, options),
        Err(_) => tr!("not known").to_owned(),
    }
}

/// A bake of another formula is under way.
#[must_use]
pub fn other_bake(name: &str) -> String {
    tr!(
        "A bake of “{name}” is under way. One at a time can be followed at the bench.",
        name = name
    )
}
