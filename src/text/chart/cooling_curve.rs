//! The cooling curve in words.

use crate::engine::heat::{Cooled, Probe, VesselStay};
use crate::engine::quantity::Minutes;
use crate::text::{format, format_options::FormatOptions, heat, tr};

use super::sentence::listed;

/// The cooling curve in words: where it is, how warm the middle gets, and each limit.
#[must_use]
pub fn cooling_curve(cooled: &Cooled, stays: &[VesselStay], options: FormatOptions) -> String {
    let mut sentences = Vec::new();
    let places: Vec<String> = stays
        .iter()
        .map(|stay| {
            tr!(
                "{first} at {second}",
                first = format::minutes(stay.minutes, options),
                second = format::temperature(stay.around, options)
            )
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
                tr!("after {value}", value = format::minutes(time, options))
            } else {
                tr!("at first").to_owned()
            };
            Some(tr!(
                "{warm} {at}",
                warm = format::temperature(warm, options),
                at = at
            ))
        })
        .collect();
    if let Some(steps) = listed(&steps) {
        sentences.push(tr!("The middle is at {steps}.", steps = steps));
    }
    let stages = cooled.stages.iter();
    sentences.extend(stages.map(|stage| heat::stage_verdict(stage, options)));
    sentences.join(" ")
}
