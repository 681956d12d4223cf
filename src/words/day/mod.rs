//! The day told in sentences: rises, nights, what is in the way of a plan, what bakes taught.

mod bench;
mod conflict;
mod learnt;
mod loads;
mod rise;
mod step;

pub use bench::{dough_off, timer, weighed_off};
pub use conflict::{change, conflict};
pub use learnt::{figure, noted, rests_on, trust};
pub use loads::{class_loads, loads, programme_differs};
pub use rise::{looks, night, rests, rise_range, room_against_anchor, up_at};
pub use step::{Told, before_it, caution_of, told};
