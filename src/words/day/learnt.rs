//! What bakes taught, and what each figure rests on.

use super::rise::best;
use crate::engine::learn::{Learnt, Noted, Rests};
use crate::words::{
    manner::Manner,
    picture::{begun, listed},
    say, write,
};

/// How many bakes a figure rests on, and how many were left aside.
#[must_use]
pub fn rests_on(rests: &Rests, manner: Manner) -> String {
    let count = |number: u32| write::count(number, manner);
    let kept = match rests.bakes() {
        1 => say!("Rests on 1 bake").to_owned(),
        many => say!("Rests on {} bakes", count(u32::from(many))),
    };
    let aside = u32::try_from(rests.left_aside().count()).unwrap_or(u32::MAX);
    match aside {
        0 => format!("{kept}."),
        1 => say!(
            "{kept}; 1 was left aside, as it lies too far from the others.",
            kept
        ),
        many => say!(
            "{kept}; {} were left aside, as they lie too far from the others.",
            kept,
            count(many)
        ),
    }
}

/// What one bake noted, in a sentence; what it did not is left out.
#[must_use]
pub fn noted(noted: &Noted, manner: Manner) -> String {
    let mut said = Vec::new();
    if let Some(dough) = noted.dough {
        said.push(say!("dough at {}", write::temperature(dough, manner)));
    }
    for (name, took) in [
        (say!("bulk rise"), noted.bulk),
        (say!("proof"), noted.proof),
        (say!("bake"), noted.bake),
    ] {
        if let Some(took) = took {
            said.push(say!(
                "{name} {}, {} expected",
                name,
                write::minutes(took.minutes, manner),
                write::minutes(took.expected, manner)
            ));
        }
    }
    for (name, weighed) in [
        (say!("lost before dividing"), noted.bowl),
        (say!("lost in the oven"), noted.oven_loss),
    ] {
        if let Some(lost) = weighed.and_then(|weighed| weighed.lost()) {
            said.push(format!("{name} {}", write::share(lost, manner)));
        }
    }
    match listed(&said) {
        Some(said) => format!("{}.", begun(&said)),
        None => say!("Nothing was measured.").to_owned(),
    }
}

/// Every figure that was learnt: its name, its value, what it rests on.
#[must_use]
pub fn figure(learnt: &Learnt, manner: Manner) -> Vec<(&'static str, String, String)> {
    let mut found = Vec::new();
    if let Some(friction) = &learnt.friction {
        let rate = write::warming_rate(friction.rate, manner);
        found.push((
            say!("The mixer warms the dough by"),
            rate,
            rests_on(&friction.rests, manner),
        ));
    }
    let shares = [
        (say!("Stays in bowls and on hands"), &learnt.residue),
        (say!("The oven takes"), &learnt.oven_loss),
    ];
    for (name, share) in shares {
        if let Some(share) = share {
            let value = write::share(share.share, manner);
            found.push((name, value, rests_on(&share.rests, manner)));
        }
    }
    let factors = [
        (say!("Bulk rise against what is expected"), &learnt.bulk),
        (say!("Proof against what is expected"), &learnt.proof),
        (say!("Bake against what is expected"), &learnt.bake),
    ];
    for (name, factor) in factors {
        if let Some(factor) = factor {
            let value = write::factor(factor.factor, manner);
            found.push((name, value, rests_on(&factor.rests, manner)));
        }
    }
    found
}

/// How far the model of the rise is to be trusted.
#[must_use]
pub fn trust(manner: Manner) -> String {
    say!(
        "Between 15 and 32 °C the speed of a rise is known to about a fifth; near {} it changes \
         little, and in the fridge nobody has measured it well. Note your own rises, and they \
         count instead.",
        best(manner)
    )
}

/// What bakes taught of the oven, where the plan goes by it; nothing where it bakes as expected.
#[must_use]
pub fn oven(learnt: &Learnt, manner: Manner) -> Option<String> {
    let bake = learnt.bake.as_ref()?;
    if (bake.factor.number() - 1.0).abs() < 0.01 {
        return None;
    }
    let (times, rests) = (
        write::factor(bake.factor, manner),
        rests_on(&bake.rests, manner),
    );
    Some(say!(
        "The plan has the bake {times} as long as the programme, as your oven bakes. {rests}",
        times,
        rests
    ))
}
