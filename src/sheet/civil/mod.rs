//! Civil time: the clock on the wall, by a zone's table of offsets; right across a night on which
//! clocks are changed.

mod clock;
mod date;
mod nights;
mod zone;

pub use clock::Clock;
pub use date::{Date, Weekday};
pub use nights::nights;
pub use zone::{Civil, Met, Zone, ahead_of};
