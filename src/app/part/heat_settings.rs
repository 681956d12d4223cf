//! The heat settings of a sheet as data with fields.

use super::field::{FieldData, FieldError};
use crate::app::state::{AppState, use_app_state};
use crate::sheet::HeatSettings;
use crate::text::read::ReadError;

impl FieldData for HeatSettings {
    type Source = AppState;
    type Error = ReadError;

    fn source() -> AppState {
        use_app_state()
    }

    fn read(state: AppState, get: &dyn Fn(&Self) -> String) -> String {
        state.with(|sheet| get(&sheet.heat))
    }

    fn read_saved(state: AppState, get: &dyn Fn(&Self) -> String) -> Option<String> {
        state
            .is_trial()
            .then(|| state.with_saved(|sheet| get(&sheet.heat)))
    }

    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        let mut sheet = state.sheet();
        set(&mut sheet.heat)?;
        state.put(sheet, Some(from));
        Ok(())
    }
}
