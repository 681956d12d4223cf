//! One thing that can be done for a dough's temperature.

use crate::engine::heat::{DoughRemedy, DoughStep};
use crate::words::{manner::Manner, say, write};

/// What to do, to be put into a sentence: "mix about 4 min longer". `standing` names what can
/// stand out.
#[must_use]
pub fn step(step: DoughStep, standing: &str, manner: Manner) -> String {
    let degrees = |at| write::temperature(at, manner);
    match step {
        DoughStep::StandOut { minutes } => {
            let about = write::about_minutes(minutes, manner);
            say!(
                "let {standing} stand out for {about} first",
                standing,
                about
            )
        }
        DoughStep::MixLonger { minutes } => {
            say!("mix about {} longer", write::minutes(minutes, manner))
        }
        DoughStep::MixShorter { minutes } => {
            say!("mix about {} less", write::minutes(minutes, manner))
        }
        DoughStep::WarmBowl { to } => say!("warm the bowl to {}", degrees(to)),
        DoughStep::WarmFlour { to } => say!("warm the flour to {}", degrees(to)),
        DoughStep::Ice { ice } => {
            say!("put in {} of the water as ice", write::mass(ice, manner))
        }
        DoughStep::ChillFlour { to } => say!("chill the flour to {}", degrees(to)),
        DoughStep::ChillBowl { to } => say!("chill the bowl to {}", degrees(to)),
    }
}

/// What to do and what it reaches, as a sentence of its own.
#[must_use]
pub fn remedy(remedy: &DoughRemedy, standing: &str, manner: Manner) -> String {
    let step = super::super::picture::begun(&step(remedy.step, standing, manner));
    let reaches = write::temperature(remedy.reaches, manner);
    if remedy.enough {
        say!("{step}: that brings the dough to {reaches}.", step, reaches)
    } else {
        say!("{step}: that brings it only to {reaches}.", step, reaches)
    }
}
