//! The batch, as something numbers are typed into.

use super::results::scale_sheet;
use crate::app::part::{Field, Held, told};
use crate::app::state::State;
use crate::sheet::Batch;
use crate::text::read::ReadError;

/// A number of the batch.
pub type BatchField = Field<Batch>;

impl Held for Batch {
    type Through = State;

    fn through() -> State {
        State::here()
    }

    fn now(state: State, look: &dyn Fn(&Self) -> String) -> String {
        state.with(|sheet| look(&sheet.batch))
    }

    fn kept(state: State, look: &dyn Fn(&Self) -> String) -> Option<String> {
        state
            .is_trial()
            .then(|| state.with_kept(|sheet| look(&sheet.batch)))
    }

    /// What makes a batch impossible is not taken.
    fn change(
        state: State,
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
