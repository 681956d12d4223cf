//! One thing that can be done for a dough's temperature.

use crate::engine::heat::{DoughRemedy, DoughStep};
use crate::engine::quantity::{Minutes, Temperature};
use crate::text::{format, format_options::FormatOptions, tr};

/// What to do, to be put into a sentence: "mix about 4 min longer". `standing` names what can
/// stand out.
#[must_use]
pub fn step(step: DoughStep, standing: &str, options: FormatOptions) -> String {
    let degrees = |at| format::temperature(at, options);
    match step {
        DoughStep::WarmLiquid { to } => {
            tr!("warm the milk or water to {value}", value = degrees(to))
        }
        DoughStep::ChillLiquid { to } => {
            tr!("use the milk or water at {value}", value = degrees(to))
        }
        DoughStep::StandOut { minutes } => {
            // As the setting takes it: whole minutes, rounded up.
            let whole = Minutes::from_minutes(libm::ceil(minutes.minutes())).unwrap_or(minutes);
            tr!(
                "take {standing} out of the fridge {about} before",
                standing = standing,
                about = format::minutes(whole, options)
            )
        }
        DoughStep::MixLonger { minutes } => {
            tr!(
                "mix about {value} longer",
                value = format::minutes(minutes, options)
            )
        }
        DoughStep::MixShorter { minutes } => {
            tr!(
                "mix about {value} less",
                value = format::minutes(minutes, options)
            )
        }
        DoughStep::WarmBowl { to } => tr!("warm the bowl to {value}", value = degrees(to)),
        DoughStep::WarmFlour { to } => tr!("warm the flour to {value}", value = degrees(to)),
        DoughStep::Ice { ice } => {
            tr!(
                "put in {value} of the water as ice",
                value = format::mass(ice, options)
            )
        }
        DoughStep::ChillFlour { to } => tr!("chill the flour to {value}", value = degrees(to)),
        DoughStep::ChillBowl { to } => tr!("chill the bowl to {value}", value = degrees(to)),
    }
}

/// One thing to do as a sentence's beginning, to be put on a button: "Put in 85 g of the water as
/// ice".
#[must_use]
pub fn step_alone(one: DoughStep, options: FormatOptions) -> String {
    super::super::chart::capitalized(&step(one, "", options))
}

/// All that a remedy asks for: "mix about 2 min longer, and warm the bowl to 40 °C".
#[must_use]
pub fn steps(remedy: &DoughRemedy, standing: &str, options: FormatOptions) -> String {
    let all: Vec<String> = remedy
        .steps()
        .map(|one| step(one, standing, options))
        .collect();
    all.join(tr!(", and "))
}

/// All that a tap sets: the liquid at its best where it comes with that, and the remedy.
#[must_use]
pub fn offered(
    liquid: Option<Temperature>,
    remedy: &DoughRemedy,
    standing: &str,
    options: FormatOptions,
) -> String {
    let liquid = liquid.map(|to| step(DoughStep::ChillLiquid { to }, standing, options));
    let remedy = steps(remedy, standing, options);
    let all: Vec<String> = liquid.into_iter().chain([remedy]).collect();
    super::super::chart::capitalized(&all.join(tr!(", and ")))
}

/// What a tap sets and the dough that it makes: "Take the milk or water at 40 °C → 25 °C".
#[must_use]
pub fn reached(to_do: &str, reaches: Temperature, options: FormatOptions) -> String {
    tr!(
        "{to_do} → {reaches}",
        to_do = to_do,
        reaches = format::temperature(reaches, options)
    )
}

/// What to do and what it reaches, as a sentence of its own.
#[must_use]
pub fn remedy(remedy: &DoughRemedy, standing: &str, options: FormatOptions) -> String {
    let step = super::super::chart::capitalized(&steps(remedy, standing, options));
    let reaches = format::temperature(remedy.reaches, options);
    if remedy.enough {
        tr!(
            "{step}: that brings the dough to {reaches}.",
            step = step,
            reaches = reaches
        )
    } else {
        tr!(
            "{step}: that brings it only to {reaches}.",
            step = step,
            reaches = reaches
        )
    }
}
