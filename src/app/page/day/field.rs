//! What a plan goes by, as something numbers are typed into.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Field, Held, told};
use crate::sheet::day::DaySettings;
use crate::text::read::ReadError;

/// A number that a plan goes by.
pub type DayField = Field<DaySettings>;

impl Held for DaySettings {
    type Through = Day;

    fn through() -> Day {
        Day::here()
    }

    fn now(day: Day, look: &dyn Fn(&Self) -> String) -> String {
        day.settings.with(look)
    }

    /// No trial touches it.
    fn saved(_: Day, _: &dyn Fn(&Self) -> String) -> Option<String> {
        None
    }

    /// Limits of the fridge that are in no order are not taken.
    fn change(
        day: Day,
        _: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), String> {
        let mut settings = day.settings.get_untracked();
        set(&mut settings).map_err(told(day.state))?;
        settings.in_fridge().map_err(told(day.state))?;
        day.wish(|saved| *saved = settings);
        Ok(())
    }
}
