//! Later: what the browser loads when it is first opened, so that a first visit is light.
//!
//! Each piece is an entry in `pieces`. The build cuts the binary there: what only a piece needs
//! goes along with it, into a file of its own.

mod pieces;
mod slot;

pub use slot::Piece;

use leptos::prelude::*;

use super::browser::focus;
use super::page::HEADING;
use super::state::Opened;
use crate::sheet::Place;
use slot::later;

/// A place that is loaded when it is opened; none where it is there from the start.
pub fn place(place: Place) -> Option<AnyView> {
    let arrived = || focus::move_to(HEADING);
    match place {
        Place::Formula => None,
        Place::Batch => Some(later(
            || Box::pin(pieces::load_batch()),
            || Box::pin(pieces::batch()),
            arrived,
        )),
        Place::Chocolate => Some(later(
            || Box::pin(pieces::load_chocolate()),
            || Box::pin(pieces::chocolate()),
            arrived,
        )),
    }
}

/// The key figures of such a place.
pub fn keys(place: Place) -> Option<AnyView> {
    match place {
        Place::Formula => None,
        Place::Batch => Some(later(
            || Box::pin(pieces::load_batch_keys()),
            || Box::pin(pieces::batch_keys()),
            || (),
        )),
        Place::Chocolate => Some(later(
            || Box::pin(pieces::load_chocolate_keys()),
            || Box::pin(pieces::chocolate_keys()),
            || (),
        )),
    }
}

/// What stands open over the page.
pub fn over(opened: Opened) -> AnyView {
    later(
        || Box::pin(pieces::load_over()),
        move || Box::pin(pieces::over(opened.clone())),
        || (),
    )
}
