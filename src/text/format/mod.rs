//! Formatting figures: rounding for display happens here and nowhere else.
//!
//! A figure is printed with the digits it deserves, by the user's format options, with a
//! no-break space before its unit. What is rounded here is never used in a calculation.

mod aligned;
mod bought;
mod boxed;
mod change;
mod clock;
mod figure;
mod heat;
mod quantity;

pub use aligned::in_line;
pub use bought::{
    box_money, box_room, declared, declared_energy, millimetres, money, room, volume,
};
pub use boxed::{
    box_count, box_factor, box_figure, box_mass, box_own_mass, box_parts, box_percentage,
    box_share, box_temperature, box_viscosity,
};
pub use change::{
    from_to, mass_change, mass_difference, mass_range, points_change, range, relative_change,
    share_range, temperature_change, temperature_range,
};
pub use clock::{
    between_clocks, box_clock, box_date_and_clock, clock, clock_at, date, day_and_clock, weekday,
};
pub use figure::{figure, plain, significant};
pub use heat::{
    about_minutes, about_range, about_temperature, altitude, box_altitude, box_degrees,
    box_minutes, box_pressure, box_thickness, box_warming_rate, degrees_off, heat, minutes,
    minutes_range, near_temperature, pressure, rate_symbol, thickness, warming_rate, whole_minutes,
};
pub use quantity::{
    count, division, factor, mass, mass_weighed, of_flour, share, temperature, times, viscosity,
};
