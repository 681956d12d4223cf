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
