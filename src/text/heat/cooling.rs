//! Cooling held against the rules: passes or not, and what makes it pass.

use crate::engine::heat::{Cooled, CoolingAdvice, CoolingRemedy, Laid, RuleSet, StageResult};
use crate::text::{Advice, format, format_options::FormatOptions, name, tr};

/// Whether a cooling passes, and by what it misses.
#[must_use]
pub fn verdict(cooled: &Cooled, rules: RuleSet, options: FormatOptions) -> Advice {
    let whose = name::rules_of(rules);
    let slow = cooled.stages.iter().find(|stage| !stage.passes);
    let source = slow
        .or(cooled.stages.last())
        .map_or("", |stage| stage.stage.source);
    match slow {
        None => Advice {
            means: tr!("It cools fast enough for {whose}.", whose = whose).into(),
            to_do: said_of_last(cooled, options).into(),
            source: source.into(),
        },
        Some(slow) => Advice {
            means: tr!("It cools too slowly for {whose}.", whose = whose).into(),
            to_do: stage(slow, options).into(),
            source: source.into(),
        },
    }
}

fn said_of_last(cooled: &Cooled, options: FormatOptions) -> String {
    let coldest = cooled
        .stages
        .iter()
        .min_by(|one, other| one.stage.to.celsius().total_cmp(&other.stage.to.celsius()));
    coldest
        .and_then(|stage| Some((stage.stage.to, stage.ended?)))
        .map_or_else(String::new, |(to, ended)| {
            tr!(
                "The middle is down to {first} after {second}. Keep it covered.",
                first = format::temperature(to, options),
                second = format::minutes(ended, options)
            )
        })
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
    format!("{verdict}, {whose}: {}", lower(&stage(result, options)))
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

/// Its longest time on the bench.
#[must_use]
pub fn bench_at_most(advice: &CoolingAdvice, options: FormatOptions) -> String {
    match advice.bench_at_most {
        Some(minutes) if minutes.minutes() >= 1.0 => tr!(
            "Move it to the fridge within {value}.",
            value = format::minutes(minutes, options)
        ),
        Some(_) => tr!("Put it into the fridge at once.").to_owned(),
        None => {
            tr!("As thick as this, not even the fridge from the start is fast enough.").to_owned()
        }
    }
}

/// One thing that makes it pass, with the time it then takes.
#[must_use]
pub fn cooling_remedy(remedy: &CoolingRemedy, options: FormatOptions) -> String {
    match remedy {
        CoolingRemedy::Spread { laid, cooled } => spread(laid, cooled, options),
        CoolingRemedy::FlatInIce {
            thick,
            minutes,
            cooled,
        } => tr!(
            "Fill it into closed bags, pressed flat to {first}, and lay them in ice water for {second}, then \
             into the fridge{third}",
            first = format::thickness(*thick, options),
            second = format::minutes(*minutes, options),
            third = then(cooled, options)
        ),
        CoolingRemedy::IceBath { minutes, cooled } => tr!(
            "Stand it in ice water for {first}, then the fridge{second}",
            first = format::minutes(*minutes, options),
            second = then(cooled, options)
        ),
        CoolingRemedy::SmallerBowls { bowls, cooled } => tr!(
            "Share it out between {first} bowls, straight into the fridge{second}",
            first = format::count(*bowls, options),
            second = then(cooled, options)
        ),
    }
}

fn spread(laid: &Laid, cooled: &Cooled, options: FormatOptions) -> String {
    let [thick, long, wide] =
        [laid.thick, laid.long, laid.wide].map(|length| format::thickness(length, options));
    let then = then(cooled, options);
    if laid.trays == 1 {
        return tr!(
            "Spread it on a tray in a layer of {thick}, about {long} by {wide}, straight into the \
             fridge{then}",
            thick = thick,
            long = long,
            wide = wide,
            then = then
        );
    }
    let trays = format::count(laid.trays, options);
    tr!(
        "Spread it on {trays} trays in a layer of {thick}, on each about {long} by {wide}, \
         straight into the fridge{then}",
        trays = trays,
        thick = thick,
        long = long,
        wide = wide,
        then = then
    )
}

/// ": 5 °C after 2 h 10 min."
fn then(cooled: &Cooled, options: FormatOptions) -> String {
    let last = cooled
        .stages
        .iter()
        .filter_map(|stage| Some((stage.stage.to, stage.ended?)))
        .min_by(|(one, _), (other, _)| one.celsius().total_cmp(&other.celsius()));
    match last {
        Some((to, ended)) => tr!(
            ": {first} in the middle after {second}.",
            first = format::temperature(to, options),
            second = format::minutes(ended, options)
        ),
        None => ".".to_owned(),
    }
}
