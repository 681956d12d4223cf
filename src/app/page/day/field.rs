//! The settings of a day's plan as data with fields.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{FieldData, FieldError};
use crate::engine::plan::PlanError;
use crate::sheet::day::DaySettings;
use crate::text::read::ReadError;

impl FieldData for DaySettings {
    type Source = Day;
    type Error = PlanError;

    fn source() -> Day {
        Day::from_context()
    }

    fn read(day: Day, get: &dyn Fn(&Self) -> String) -> String {
        day.settings.with(get)
    }

    /// Rejects limits of the fridge that are in no order.
    fn change(
        day: Day,
        _: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<PlanError>> {
        let mut settings = day.settings.get_untracked();
        set(&mut settings)?;
        settings.in_fridge().map_err(FieldError::Rejected)?;
        day.change_settings(|saved| *saved = settings);
        Ok(())
    }
}
