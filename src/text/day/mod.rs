//! The day told in sentences: rises, nights, what is in the way of a plan, what bakes taught.

mod bench;
mod conflict;
mod corrections;
mod learnt;
mod loads;
mod log;
mod rise;
mod step;
mod way;

pub use bench::{add_more, dough_off, timer, warmed_by_weights, weighed_off};
pub use conflict::{change, conflict};
pub use corrections::{ice_for, moved, off_time, place_for, rise_off, time_to_target, wait_for};
pub use learnt::{figure, noted, oven, rests_on, trust};
pub use loads::{class_loads, loads, programme_differs};
pub use log::{
    not_a_picture, photo_gone, photo_kept, photo_of, photo_too_large, photos_full, picture_broken,
    taken_in,
};
pub use rise::{looks, night, rests, rise_range, room_against_anchor, up_at};
pub use step::{Told, before_it, caution_of, told};
pub use way::{bulk, other_bake, rises_working, way_working, yeast_activity};
