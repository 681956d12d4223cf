//! What the places are called.

use crate::sheet::Place;
use crate::words::say;

/// What a place is called.
#[must_use]
pub fn place(place: Place) -> &'static str {
    match place {
        Place::Formula => say!("Formula"),
        Place::Batch => say!("Batch"),
        Place::Heat => say!("Heat"),
        Place::Chocolate => say!("Chocolate"),
        Place::Day => say!("Day"),
    }
}

/// The question a place answers.
#[must_use]
pub fn place_asks(place: Place) -> &'static str {
    match place {
        Place::Formula => say!("What is this dough?"),
        Place::Batch => say!("How much of it, in what?"),
        Place::Heat => say!("What temperature, and is it safe?"),
        Place::Chocolate => say!("Will it run, will it melt?"),
        Place::Day => say!("When?"),
    }
}
