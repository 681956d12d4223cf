//! Cooling held against the rules: passes or not, limit by limit.

use crate::engine::heat::{CooledRange, RuleSet, StageResult};
use crate::text::{Advice, format, format_options::FormatOptions, language::text, name, tr};

/// Whether a cooling passes at the slow end, and by what it misses.
#[must_use]
pub fn verdict(cooled: &CooledRange, rules: RuleSet, options: FormatOptions) -> Advice {
    let whose = name::rules_of(rules);
    let stages = &cooled.slow.stages;
    let slow = stages.iter().find(|stage| !stage.passes);
    let source = slow
        .or(stages.last())
        .map_or("", |stage| text(stage.stage.source));
    match slow {
        None => Advice {
            means: tr!("It cools fast enough for {whose}.", whose = whose).into(),
            to_do: cold_after(cooled, options).into(),
            source: source.into(),
        },
        Some(slow) => Advice {
            means: tr!("It cools too slowly for {whose}.", whose = whose).into(),
            to_do: stage(slow, options).into(),
            source: source.into(),
        },
    }
}

/// "The middle is down to 5 °C after 40 min to 1 h, most likely 50 min. Keep it covered."
fn cold_after(cooled: &CooledRange, options: FormatOptions) -> String {
    let stages = cooled.slow.stages.iter();
    let coldest =
        stages.min_by(|one, other| one.stage.to.celsius().total_cmp(&other.stage.to.celsius()));
    let [Some(quick), Some(likely), Some(slow)] = cooled.cold() else {
        return String::new();
    };
    let Some(coldest) = coldest else {
        return String::new();
    };
    let first = format::temperature(coldest.stage.to, options);
    let [quick, likely, slow] = [quick, likely, slow].map(|time| format::minutes(time, options));
    if quick == slow {
        return tr!(
            "The middle is down to {first} after {likely}. Keep it covered.",
            first = first,
            likely = likely
        );
    }
    tr!(
        "The middle is down to {first} after {quick} to {slow}, most likely {likely}. Keep it covered.",
        first = first,
        quick = quick,
        slow = slow,
        likely = likely
    )
}

/// One stage of the rules, how it went.
#[must_use]
pub fn stage(result: &StageResult, options: FormatOptions) -> String {
    let (from, to) = (
        format::temperature(result.stage.from, options),
        format::temperature(result.stage.to, options),
    );
    let within = format::minutes(result.stage.within, options);
    match result.took {
        Some(took) => tr!(
            "From {from} to {to} takes {value}; {within} is allowed.",
            from = from,
            to = to,
            value = format::minutes(took, options),
            within = within
        ),
        None => tr!(
            "From {from} it never comes down to {to}; {within} is allowed.",
            from = from,
            to = to,
            within = within
        ),
    }
}

/// One stage of the rules with its verdict: "Passes, United States: from 57 °C to 21 °C takes …".
#[must_use]
pub fn stage_verdict(result: &StageResult, options: FormatOptions) -> String {
    let verdict = if result.passes {
        tr!("Passes")
    } else {
        tr!("Fails")
    };
    let whose = name::rule_set(result.stage.by);
    tr!(
        "{verdict}, {whose}: {stage}",
        verdict = verdict,
        whose = whose,
        stage = lower(&stage(result, options))
    )
}

fn lower(sentence: &str) -> String {
    let mut characters = sentence.chars();
    let first: String = characters
        .next()
        .into_iter()
        .flat_map(char::to_lowercase)
        .collect();
    format!("{first}{}", characters.as_str())
}
