//! What the log has taught, and the evidence for each figure.

use super::rise::best_temperature;
use crate::engine::learn::{DoubtedRate, Evidence, Learnt, LearntFactor, Observation};
use crate::engine::numerics::saturating_u32;
use crate::engine::quantity::WarmingRate;
use crate::engine::working::WorkingLine;
use crate::text::{
    chart::{listed, stopped},
    format,
    format_options::FormatOptions,
    tr,
};

/// How many bakes a figure rests on, and how many were left out as outliers.
#[must_use]
pub fn evidence(evidence: &Evidence, options: FormatOptions) -> String {
    let count = |number: u32| format::count(number, options);
    let kept = match evidence.bakes() {
        1 => tr!("Based on 1 bake").to_owned(),
        many => tr!("Based on {value} bakes", value = count(u32::from(many))),
    };
    let aside = saturating_u32(evidence.left_aside().count());
    match aside {
        0 => stopped(&kept),
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

/// What was measured in one bake, in a sentence.
#[must_use]
pub fn observations(noted: &Observation, options: FormatOptions) -> String {
    let mut wording = Vec::new();
    if let Some(dough) = noted.dough {
        wording.push(tr!(
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
            wording.push(tr!(
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
            wording.push(format!("{name} {}", format::share(lost, options)));
        }
    }
    wording.extend(of_the_kitchen(noted, options));
    match listed(&wording) {
        Some(wording) => stopped(&wording),
        None => tr!("Nothing was measured.").to_owned(),
    }
}

/// What was measured of a paste or preferment on its way.
fn of_the_kitchen(noted: &Observation, options: FormatOptions) -> Vec<String> {
    let mut wording = Vec::new();
    if let Some(cooling) = noted.cooling {
        wording.push(tr!(
            "{name} {first}, {second} expected",
            name = tr!("cooled to"),
            first = format::temperature(cooling.found, options),
            second = format::temperature(cooling.expected, options)
        ));
    }
    if let Some(steam) = noted.steam {
        wording.push(tr!(
            "{name} {first}, {second} expected",
            name = tr!("steam of a paste"),
            first = format::mass(steam.weighed.before.less(steam.weighed.after), options),
            second = format::mass(steam.expected, options)
        ));
    }
    wording
}

/// A figure that was learnt.
#[derive(Clone, Debug, PartialEq)]
pub struct LearntFigure {
    /// Its name.
    pub name: &'static str,
    /// Its value.
    pub value: String,
    /// Its evidence.
    pub rests: String,
    /// Its working.
    pub working: Vec<WorkingLine>,
}

/// Every figure that was learnt.
#[must_use]
pub fn learnt_figures(learnt: &Learnt, options: FormatOptions) -> Vec<LearntFigure> {
    let mut found = Vec::new();
    if let Some(friction) = &learnt.friction {
        found.push(LearntFigure {
            name: tr!("The mixer warms the dough by"),
            value: format::warming_rate(friction.rate, options),
            rests: evidence(&friction.rests, options),
            working: friction.working(),
        });
    }
    let shares = [
        (tr!("Stays in bowls and on hands"), &learnt.residue),
        (tr!("The oven takes"), &learnt.oven_loss),
    ];
    for (name, share) in shares {
        if let Some(share) = share {
            found.push(LearntFigure {
                name,
                value: format::share(share.share, options),
                rests: evidence(&share.rests, options),
                working: share.working(),
            });
        }
    }
    found.extend(learnt_factors(learnt, options));
    found.extend(
        learnt
            .doubted
            .as_ref()
            .map(|doubted| left_out(doubted, options)),
    );
    found
}

/// That a friction was learnt which plans do not go by yet.
#[must_use]
pub fn friction_offer(learnt: WarmingRate, now: WarmingRate, options: FormatOptions) -> String {
    tr!(
        "Your bakes say that the mixer warms by {learnt}; plans still go by the kitchen’s {now}.",
        learnt = format::warming_rate(learnt, options),
        now = format::warming_rate(now, options)
    )
}

/// A friction that is not believed, and why.
fn left_out(doubted: &DoubtedRate, options: FormatOptions) -> LearntFigure {
    LearntFigure {
        name: tr!("The mixer warms the dough by"),
        value: tr!("left out").to_owned(),
        rests: tr!(
            "By what was measured, mixing did not warm the dough, which cannot be: the kitchen’s own \
             figure stays. {rests}",
            rests = evidence(&doubted.rests, options)
        ),
        working: doubted.working(),
    }
}

/// Those that are factors on what is expected.
fn learnt_factors(learnt: &Learnt, options: FormatOptions) -> Vec<LearntFigure> {
    let mut found = Vec::new();
    let factors = [
        (tr!("Bulk rise against what is expected"), &learnt.bulk),
        (tr!("Proof against what is expected"), &learnt.proof),
        (tr!("Bake against what is expected"), &learnt.bake),
        (
            tr!("Steam of a paste against what is printed"),
            &learnt.steam,
        ),
        (
            tr!("Heat to the air against what is printed"),
            &learnt.transfer,
        ),
    ];
    for (name, factor) in factors {
        if let Some(factor) = factor {
            found.push(LearntFigure {
                name,
                value: format::factor(factor.factor, options),
                rests: evidence(&factor.rests, options),
                working: factor.working(),
            });
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
        value = best_temperature(options)
    )
}

/// The factor by which the plan lengthens or shortens the bake, and its evidence.
#[must_use]
pub fn oven(bake: &LearntFactor, options: FormatOptions) -> String {
    let (times, rests) = (
        format::factor(bake.factor, options),
        evidence(&bake.rests, options),
    );
    tr!(
        "The plan has the bake {times} as long as the programme, as your oven bakes. {rests}",
        times = times,
        rests = rests
    )
}
