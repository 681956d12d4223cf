//! What bakes taught, and what each figure rests on.

use super::rise::best;
use crate::engine::learn::{Evidence, Learnt, Observation};
use crate::text::{
    chart::{begun, listed},
    format,
    format_options::FormatOptions,
    tr,
};

/// How many bakes a figure rests on, and how many were left aside.
#[must_use]
pub fn rests_on(rests: &Evidence, options: FormatOptions) -> String {
    let count = |number: u32| format::count(number, options);
    let kept = match rests.bakes() {
        1 => tr!("Rests on 1 bake").to_owned(),
        many => tr!("Rests on {value} bakes", value = count(u32::from(many))),
    };
    let aside = u32::try_from(rests.left_aside().count()).unwrap_or(u32::MAX);
    match aside {
        0 => format!("{kept}."),
        1 => tr!(
            "{kept}; 1 was left aside, as it lies too far from the others.",
            kept = kept
        ),
        many => tr!(
            "{kept}; {value} were left aside, as they lie too far from the others.",
            kept = kept,
            value = count(many)
        ),
    }
}

/// What one bake noted, in a sentence; what it did not is left out.
#[must_use]
pub fn noted(noted: &Observation, options: FormatOptions) -> String {
    let mut said = Vec::new();
    if let Some(dough) = noted.dough {
        said.push(tr!(
            "dough at {value}",
            value = format::temperature(dough, options)
        ));
    }
    for (name, took) in [
        (tr!("bulk rise"), noted.bulk),
        (tr!("proof"), noted.proof),
        (tr!("bake"), noted.bake),
    ] {
        if let Some(took) = took {
            said.push(tr!(
                "{name} {first}, {second} expected",
                name = name,
                first = format::minutes(took.minutes, options),
                second = format::minutes(took.expected, options)
            ));
        }
    }
    for (name, weighed) in [
        (tr!("lost before dividing"), noted.bowl),
        (tr!("lost in the oven"), noted.oven_loss),
    ] {
        if let Some(lost) = weighed.and_then(|weighed| weighed.lost()) {
            said.push(format!("{name} {}", format::share(lost, options)));
        }
    }
    match listed(&said) {
        Some(said) => format!("{}.", begun(&said)),
        None => tr!("Nothing was measured.").to_owned(),
    }
}

/// Every figure that was learnt: its name, its value, what it rests on.
#[must_use]
pub fn figure(learnt: &Learnt, options: FormatOptions) -> Vec<(&'static str, String, String)> {
    let mut found = Vec::new();
    if let Some(friction) = &learnt.friction {
        let rate = format::warming_rate(friction.rate, options);
        found.push((
            tr!("The mixer warms the dough by"),
            rate,
            rests_on(&friction.rests, options),
        ));
    }
    let shares = [
        (tr!("Stays in bowls and on hands"), &learnt.residue),
        (tr!("The oven takes"), &learnt.oven_loss),
    ];
    for (name, share) in shares {
        if let Some(share) = share {
            let value = format::share(share.share, options);
            found.push((name, value, rests_on(&share.rests, options)));
        }
    }
    let factors = [
        (tr!("Bulk rise against what is expected"), &learnt.bulk),
        (tr!("Proof against what is expected"), &learnt.proof),
        (tr!("Bake against what is expected"), &learnt.bake),
    ];
    for (name, factor) in factors {
        if let Some(factor) = factor {
            let value = format::factor(factor.factor, options);
            found.push((name, value, rests_on(&factor.rests, options)));
        }
    }
    found
}

/// How far the model of the rise is to be trusted.
#[must_use]
pub fn trust(options: FormatOptions) -> String {
    tr!(
        "Between 15 and 32 °C the speed of a rise is known to about a fifth; near {value} it changes \
         little, and in the fridge nobody has measured it well. Note your own rises, and they \
         count instead.",
        value = best(options)
    )
}

/// What bakes taught of the oven, where the plan goes by it; nothing where it bakes as expected.
#[must_use]
pub fn oven(learnt: &Learnt, options: FormatOptions) -> Option<String> {
    let bake = learnt.bake.as_ref()?;
    if (bake.factor.number() - 1.0).abs() < 0.01 {
        return None;
    }
    let (times, rests) = (
        format::factor(bake.factor, options),
        rests_on(&bake.rests, options),
    );
    Some(tr!(
        "The plan has the bake {times} as long as the programme, as your oven bakes. {rests}",
        times = times,
        rests = rests
    ))
}
