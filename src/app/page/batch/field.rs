//! The batch as data with fields.

use crate::app::part::{FieldData, FieldError};
use crate::app::state::{AppState, use_app_state};
use crate::engine::batch::BatchError;
use crate::results::batch::scale;
use crate::sheet::Batch;
use crate::text::read::ReadError;

impl FieldData for Batch {
    type Source = AppState;
    type Error = BatchError;

    fn source() -> AppState {
        use_app_state()
    }

    fn read(state: AppState, get: &dyn Fn(&Self) -> String) -> String {
        state.with(|sheet| get(&sheet.batch))
    }

    fn read_saved(state: AppState, get: &dyn Fn(&Self) -> String) -> Option<String> {
        state
            .is_trial()
            .then(|| state.with_saved(|sheet| get(&sheet.batch)))
    }

    /// Rejects a batch that cannot be scaled.
    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<BatchError>> {
        let mut sheet = state.sheet();
        set(&mut sheet.batch)?;
        scale(&sheet).map_err(FieldError::Rejected)?;
        state.put(sheet, Some(from));
        Ok(())
    }
}
