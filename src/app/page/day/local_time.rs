//! The time and the zone of this device.

use crate::app::browser::clock;
use crate::engine::quantity::Instant;
use crate::sheet::Moment;
use crate::sheet::civil::Zone;

/// Now.
pub fn clock_now() -> Moment {
    Moment::from_milliseconds(clock::milliseconds()).unwrap_or_default()
}

/// The zone of this device at one moment, however long ago.
pub fn zone_at(at: Instant) -> Zone {
    Zone::fixed(clock::minutes_ahead(
        Moment::from_instant(at).milliseconds(),
    ))
}

/// The zone of this device, for some weeks around now.
pub fn zone_here(now: Instant) -> Zone {
    Zone::around(now, |at| {
        clock::minutes_ahead(Moment::from_instant(at).milliseconds())
    })
}
