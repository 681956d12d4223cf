//! Reading typed text: text to quantity, or a [`ReadError`].
//!
//! Text is read as people write it: a comma or a point, spaces, grouped thousands, fractions,
//! digits of other scripts, a unit after the number. Nothing typed can make it fail any other
//! way than with a [`ReadError`], whose sentence is in `text::error`.

mod bought;
mod clock;
mod error;
mod heat;
mod number;
mod optional;
mod parsed;
mod quantity;
mod typed;
mod unit_suffix;

pub use bought::{money, room};
pub use clock::{clock, date_and_clock};
pub use error::{Limit, Measure, ReadError};
pub use heat::{altitude, degrees_lost, minutes, pressure, some_minutes, thickness, warming_rate};
pub use optional::optional;
pub use quantity::{count, factor, mass, share, temperature, viscosity};
