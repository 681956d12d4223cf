//! One thing that can be done for a dough's temperature.

use crate::engine::heat::{DoughRemedy, DoughStep};
use crate::text::{format, format_options::FormatOptions, tr};

/// What to do, to be put into a sentence: "mix about 4 min longer". `standing` names what can
/// stand out.
#[must_use]
pub fn step(step: DoughStep, standing: &str, options: FormatOptions) -> String {
    let degrees = |at| format::temperature(at, options);
    match step {
        DoughStep::StandOut { minutes } => {
            let about = format::about_minutes(minutes, options);
            tr!(
                "let {standing} stand out for {about} first",
                standing = standing,
                about = about
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

/// What to do and what it reaches, as a sentence of its own.
#[must_use]
pub fn remedy(remedy: &DoughRemedy, standing: &str, options: FormatOptions) -> String {
    let step = super::super::chart::capitalized(&step(remedy.step, standing, options));
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
