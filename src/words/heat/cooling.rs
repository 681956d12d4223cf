//! Cooling held against the rules: passes or not, and what makes it pass.

use crate::engine::heat::{Cooled, CoolingAdvice, CoolingRemedy, Laid, RuleSet, StageResult};
use crate::words::{Advice, manner::Manner, name, say, write};

/// Whether a cooling passes, and by what it misses.
#[must_use]
pub fn verdict(cooled: &Cooled, rules: RuleSet, manner: Manner) -> Advice {
    let whose = name::rules_of(rules);
    let slow = cooled.stages.iter().find(|stage| !stage.passes);
    let source = slow
        .or(cooled.stages.last())
        .map_or("", |stage| stage.stage.source);
    match slow {
        None => Advice {
            means: say!("It cools fast enough for {whose}.", whose).into(),
            to_do: said_of_last(cooled, manner).into(),
            source: source.into(),
        },
        Some(slow) => Advice {
            means: say!("It cools too slowly for {whose}.", whose).into(),
            to_do: stage(slow, manner).into(),
            source: source.into(),
        },
    }
}

fn said_of_last(cooled: &Cooled, manner: Manner) -> String {
    let coldest = cooled
        .stages
        .iter()
        .min_by(|one, other| one.stage.to.celsius().total_cmp(&other.stage.to.celsius()));
    coldest
        .and_then(|stage| Some((stage.stage.to, stage.ended?)))
        .map_or_else(String::new, |(to, ended)| {
            say!(
                "The middle is down to {} after {}. Keep it covered.",
                write::temperature(to, manner),
                write::minutes(ended, manner)
            )
        })
}

/// One stage of the rules, how it went.
#[must_use]
pub fn stage(result: &StageResult, manner: Manner) -> String {
    let (from, to) = (
        write::temperature(result.stage.from, manner),
        write::temperature(result.stage.to, manner),
    );
    let within = write::minutes(result.stage.within, manner);
    match result.took {
        Some(took) => say!(
            "From {from} to {to} takes {}; {within} is allowed.",
            from,
            to,
            write::minutes(took, manner),
            within
        ),
        None => say!(
            "From {from} it never comes down to {to}; {within} is allowed.",
            from,
            to,
            within
        ),
    }
}

/// One stage of the rules with its verdict: "Passes, United States: from 57 °C to 21 °C takes …".
#[must_use]
pub fn stage_verdict(result: &StageResult, manner: Manner) -> String {
    let verdict = if result.passes {
        say!("Passes")
    } else {
        say!("Fails")
    };
    let whose = name::rule_set(result.stage.by);
    format!("{verdict}, {whose}: {}", lower(&stage(result, manner)))
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

/// How long it may stay on the bench.
#[must_use]
pub fn bench_at_most(advice: &CoolingAdvice, manner: Manner) -> String {
    match advice.bench_at_most {
        Some(minutes) if minutes.minutes() >= 1.0 => say!(
            "Move it to the fridge within {}.",
            write::minutes(minutes, manner)
        ),
        Some(_) => say!("Put it into the fridge at once.").to_owned(),
        None => {
            say!("As thick as this, not even the fridge from the start is fast enough.").to_owned()
        }
    }
}

/// One thing that makes it pass, with the time it then takes.
#[must_use]
pub fn cooling_remedy(remedy: &CoolingRemedy, manner: Manner) -> String {
    match remedy {
        CoolingRemedy::Spread { laid, cooled } => spread(laid, cooled, manner),
        CoolingRemedy::FlatInIce {
            thick,
            minutes,
            cooled,
        } => say!(
            "Fill it into closed bags, pressed flat to {}, and lay them in ice water for {}, then \
             into the fridge{}",
            write::thickness(*thick, manner),
            write::minutes(*minutes, manner),
            then(cooled, manner)
        ),
        CoolingRemedy::IceBath { minutes, cooled } => say!(
            "Stand it in ice water for {}, then the fridge{}",
            write::minutes(*minutes, manner),
            then(cooled, manner)
        ),
        CoolingRemedy::SmallerBowls { bowls, cooled } => say!(
            "Share it out between {} bowls, straight into the fridge{}",
            write::count(*bowls, manner),
            then(cooled, manner)
        ),
    }
}

fn spread(laid: &Laid, cooled: &Cooled, manner: Manner) -> String {
    let [thick, long, wide] =
        [laid.thick, laid.long, laid.wide].map(|length| write::thickness(length, manner));
    let then = then(cooled, manner);
    if laid.trays == 1 {
        return say!(
            "Spread it on a tray in a layer of {thick}, about {long} by {wide}, straight into the \
             fridge{then}",
            thick,
            long,
            wide,
            then
        );
    }
    let trays = write::count(laid.trays, manner);
    say!(
        "Spread it on {trays} trays in a layer of {thick}, on each about {long} by {wide}, \
         straight into the fridge{then}",
        trays,
        thick,
        long,
        wide,
        then
    )
}

/// ": 5 °C after 2 h 10 min."
fn then(cooled: &Cooled, manner: Manner) -> String {
    let last = cooled
        .stages
        .iter()
        .filter_map(|stage| Some((stage.stage.to, stage.ended?)))
        .min_by(|(one, _), (other, _)| one.celsius().total_cmp(&other.celsius()));
    match last {
        Some((to, ended)) => say!(
            ": {} in the middle after {}.",
            write::temperature(to, manner),
            write::minutes(ended, manner)
        ),
        None => ".".to_owned(),
    }
}
