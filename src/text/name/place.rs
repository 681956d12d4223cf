//! Display names of the places.

use crate::sheet::Place;
use crate::text::tr;

/// Name of a place.
#[must_use]
pub fn place(place: Place) -> &'static str {
    match place {
        Place::Formula => tr!("Formula"),
        Place::Batch => tr!("Batch"),
        Place::Heat => tr!("Heat"),
        Place::Chocolate => tr!("Chocolate"),
        Place::Day => tr!("Day"),
    }
}

/// The question a place answers.
#[must_use]
pub fn place_asks(place: Place) -> &'static str {
    match place {
        Place::Formula => tr!("What is this dough?"),
        Place::Batch => tr!("How much of it, in what?"),
        Place::Heat => tr!("What temperature, and is it safe?"),
        Place::Chocolate => tr!("Will it run, will it melt?"),
        Place::Day => tr!("When?"),
    }
}
