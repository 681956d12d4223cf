//! Dates of the calendar, and the days between them.

/// A day of the week.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Weekday {
    /// Monday.
    Monday,
    /// Tuesday.
    Tuesday,
    /// Wednesday.
    Wednesday,
    /// Thursday.
    Thursday,
    /// Friday.
    Friday,
    /// Saturday.
    Saturday,
    /// Sunday.
    Sunday,
}

impl Weekday {
    /// Every day of the week, Monday first (ISO 8601).
    pub const ALL: [Self; 7] = [
        Self::Monday,
        Self::Tuesday,
        Self::Wednesday,
        Self::Thursday,
        Self::Friday,
        Self::Saturday,
        Self::Sunday,
    ];
}

/// A date of the Gregorian calendar from 1970 to 9999, held as days since 1970 began.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date(i64);

impl Date {
    /// The last of December 9999.
    const LAST: i64 = 2_932_896;

    /// Takes days since the first of January 1970, clamped to the years 1970 to 9999.
    #[must_use]
    pub fn from_days(days: i64) -> Self {
        Self(days.clamp(0, Self::LAST))
    }

    /// Takes year, month and day; `None` where the calendar has no such date.
    #[must_use]
    pub fn from_numbers(year: i64, month: i64, day: i64) -> Option<Self> {
        let known =
            (1970..=9999).contains(&year) && (1..=12).contains(&month) && (1..=31).contains(&day);
        let date = known.then(|| Self(days(year, month, day)));
        date.filter(|date| date.numbers() == (year, month, day))
    }

    /// Days since the first of January 1970.
    #[must_use]
    pub const fn days(self) -> i64 {
        self.0
    }

    /// So many days later; earlier where below zero.
    #[must_use]
    pub fn plus(self, days: i64) -> Self {
        Self::from_days(self.0.saturating_add(days))
    }

    /// The day of the week; the first of January 1970 was a Thursday.
    #[must_use]
    pub fn weekday(self) -> Weekday {
        let place = usize::try_from((self.0 + 3).rem_euclid(7)).unwrap_or(0);
        let found = Weekday::ALL.get(place).copied();
        found.unwrap_or(Weekday::Monday)
    }

    /// Year, month, day.
    ///
    /// Years are counted from March, so that the odd day is the last; 400 of them are 146 097 days.
    ///
    /// Source: the rule of leap years of the Gregorian calendar (ISO 8601).
    #[must_use]
    pub const fn numbers(self) -> (i64, i64, i64) {
        // From the first of March of the year 0.
        let days = self.0 + 719_468;
        let era = days.div_euclid(146_097);
        let of_era = days.rem_euclid(146_097);
        let leaps =
            of_era.div_euclid(1460) - of_era.div_euclid(36_524) + of_era.div_euclid(146_096);
        let year_of_era = (of_era - leaps).div_euclid(365);
        let of_year = of_era - days_of_years(year_of_era);
        let from_march = (5 * of_year + 2).div_euclid(153);
        let day = of_year - (153 * from_march + 2).div_euclid(5) + 1;
        let month = if from_march < 10 {
            from_march + 3
        } else {
            from_march - 9
        };
        let year = year_of_era + 400 * era;
        (if month <= 2 { year + 1 } else { year }, month, day)
    }
}

/// Days in the first years of an era of 400.
const fn days_of_years(years: i64) -> i64 {
    365 * years + years.div_euclid(4) - years.div_euclid(100)
}

/// Days since the first of January 1970.
const fn days(year: i64, month: i64, day: i64) -> i64 {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let from_march = if month > 2 { month - 3 } else { month + 9 };
    let of_year = (153 * from_march + 2).div_euclid(5) + day - 1;
    era * 146_097 + days_of_years(year.rem_euclid(400)) + of_year - 719_468
}
