//! The cooling curve in words.

use crate::engine::heat::{Cooled, Probe, Exposure};
use crate::engine::quantity::Minutes;
use crate::text::{heat, format_options::FormatOptions, tr, format};

use super::sentence::listed;

/// The cooling curve in words: where it is, how warm the middle gets, and each limit.
#[must_use]
pub fn cooling_curve(cooled: &Cooled, stays: &[Exposure], manner: FormatOptions) -> String {
    let mut sentences = Vec::new();
    let places: Vec<String> = stays
        .iter()
        .map(|stay| {
            tr!("{first} at {second}",
                first = format::minutes(stay.minutes, manner),
                second = format::temperature(stay.air.temperature, manner))
        })
        .collect();
    if let Some(places) = listed(&places) {
        sentences.push(tr!("It stands {places}.", places = places));
    }
    let hours = [0.0, 1.0, 2.0, 4.0, 6.0];
    let steps: Vec<String> = hours
        .iter()
        .filter_map(|hours| {
            let time = Minutes::from_hours(*hours).ok()?;
            let warm = cooled.curve.at(time, Probe::Centre)?;
            let at = if *hours > 0.0 {
                tr!("after {value}", value = format::minutes(time, manner))
            } else {
                tr!("at first").to_owned()
            };
            Some(format!("{} {at}", format::temperature(warm, manner)))
        })
        .collect();
    if let Some(steps) = listed(&steps) {
        sentences.push(tr!("The middle is at {steps}.", steps = steps));
    }
    let stages = cooled.stages.iter();
    sentences.extend(stages.map(|stage| heat::stage_verdict(stage, manner)));
    sentences.join(" ")
}
