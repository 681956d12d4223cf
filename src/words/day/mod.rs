//! The day told in sentences: rises, nights, what is in the way of a plan, what bakes taught.

mod conflict;
mod learnt;
mod rise;
mod step;

pub use conflict::{change, conflict};
pub use learnt::{figure, rests_on, trust};
pub use rise::{looks, night, rests, rise_range, room_against_anchor, up_at};
pub use step::{Told, before_it, caution_of, told};
