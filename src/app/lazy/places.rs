//! The places and their key figures, each loaded when it is first opened.

use leptos::prelude::*;

use super::chunks::{batch, chocolate, day, heat};
use crate::app::browser::focus;
use crate::app::page::HEADING;
use crate::sheet::Place;

/// A place that is loaded when it is opened; none for Formula, which is there from the start.
pub fn place(place: Place) -> Option<AnyView> {
    let arrived = || focus::move_to(HEADING);
    match place {
        Place::Formula => None,
        Place::Batch => Some(batch::place(arrived)),
        Place::Heat => Some(heat::place(arrived)),
        Place::Chocolate => Some(chocolate::place(arrived)),
        Place::Day => Some(day::place(arrived)),
    }
}

/// The key figures of such a place.
pub fn key_figures(place: Place) -> Option<AnyView> {
    match place {
        Place::Formula => None,
        Place::Batch => Some(batch::key_figures()),
        Place::Heat => Some(heat::key_figures()),
        Place::Chocolate => Some(chocolate::key_figures()),
        Place::Day => Some(day::key_figures()),
    }
}
