//! Clock: a time of day, as a clock on the wall shows it.

/// Hours and minutes since midnight.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Clock(u16);

impl Clock {
    /// Minutes in a day.
    pub const DAY: u16 = 1440;

    /// Takes minutes since midnight; `None` for a day's worth or more.
    #[must_use]
    pub fn from_minutes(minutes: u16) -> Option<Self> {
        (minutes < Self::DAY).then_some(Self(minutes))
    }

    /// Takes hours and minutes; `None` where no clock shows them.
    #[must_use]
    pub fn from_hour(hour: u16, minute: u16) -> Option<Self> {
        let known = hour < 24 && minute < 60;
        known.then(|| Self(hour * 60 + minute))
    }

    /// As this project's own defaults have it; midnight where no clock shows it.
    pub(crate) const fn known(hour: u16, minute: u16) -> Self {
        if hour < 24 && minute < 60 {
            Self(hour * 60 + minute)
        } else {
            Self(0)
        }
    }

    /// Minutes since midnight.
    #[must_use]
    pub const fn minutes(self) -> u16 {
        self.0
    }

    /// The hour.
    #[must_use]
    pub const fn hour(self) -> u16 {
        self.0.div_euclid(60)
    }

    /// The minute of the hour.
    #[must_use]
    pub const fn minute(self) -> u16 {
        self.0.rem_euclid(60)
    }
}
