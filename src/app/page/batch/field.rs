//! The batch, as something numbers are typed into.

use super::results::scale_sheet;
use crate::app::part::{Field, Held, told};
use crate::app::state::{AppState, use_app_state};
use crate::sheet::Batch;
use crate::text::read::ReadError;

/// A number of the batch.
pub type BatchField = Field<Batch>;

impl Held for Batch {
    type Through = AppState;

    fn through() -> AppState {
        use_app_state()
    }

    fn now(state: AppState, look: &dyn Fn(&Self) -> String) -> String {
        state.with(|sheet| look(&sheet.batch))
    }

    fn saved(state: AppState, look: &dyn Fn(&Self) -> String) -> Option<String> {
        state
            .is_trial()
            .then(|| state.with_saved(|sheet| look(&sheet.batch)))
    }

    /// What makes a batch impossible is not taken.
    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), String> {
        let mut sheet = state.sheet();
        set(&mut sheet.batch).map_err(told(state))?;
        scale_sheet(&sheet).map_err(told(state))?;
        state.put(sheet, Some(from));
        Ok(())
    }
}
