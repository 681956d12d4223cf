//! The cooling curve in words.

use crate::engine::heat::{Cooled, Place, Stay};
use crate::engine::quantity::Minutes;
use crate::words::{heat, manner::Manner, say, write};

use super::sentence::listed;

/// The cooling curve in words: where it is, how warm the middle gets, and each limit.
#[must_use]
pub fn cooling_curve(cooled: &Cooled, stays: &[Stay], manner: Manner) -> String {
    let mut sentences = Vec::new();
    let places: Vec<String> = stays
        .iter()
        .map(|stay| {
            say!(
                "{} at {}",
                write::minutes(stay.minutes, manner),
                write::temperature(stay.air.temperature, manner)
            )
        })
        .collect();
    if let Some(places) = listed(&places) {
        sentences.push(say!("It stands {places}.", places));
    }
    let hours = [0.0, 1.0, 2.0, 4.0, 6.0];
    let steps: Vec<String> = hours
        .iter()
        .filter_map(|hours| {
            let time = Minutes::from_hours(*hours).ok()?;
            let warm = cooled.curve.at(time, Place::Centre)?;
            let at = if *hours > 0.0 {
                say!("after {}", write::minutes(time, manner))
            } else {
                say!("at first").to_owned()
            };
            Some(format!("{} {at}", write::temperature(warm, manner)))
        })
        .collect();
    if let Some(steps) = listed(&steps) {
        sentences.push(say!("The middle is at {steps}.", steps));
    }
    let stages = cooled.stages.iter();
    sentences.extend(stages.map(|stage| heat::stage_verdict(stage, manner)));
    sentences.join(" ")
}
