//! What the places are called.

use crate::sheet::Place;

/// What a place is called.
#[must_use]
pub const fn place(place: Place) -> &'static str {
    match place {
        Place::Formula => "Formula",
        Place::Batch => "Batch",
        Place::Heat => "Heat",
        Place::Chocolate => "Chocolate",
        Place::Day => "Day",
    }
}

/// The question a place answers.
#[must_use]
pub const fn place_asks(place: Place) -> &'static str {
    match place {
        Place::Formula => "What is this dough?",
        Place::Batch => "How much of it, in what?",
        Place::Heat => "What temperature, and is it safe?",
        Place::Chocolate => "Will it run, will it melt?",
        Place::Day => "When?",
    }
}
