//! What a formula asks of heat, as something numbers are typed into.

use super::field_box::{Field, Held, told};
use crate::app::state::{AppState, use_app_state};
use crate::engine::kitchen::HeatSettings;
use crate::text::read::ReadError;

/// A number of what is asked of heat.
pub type Wish = Field<HeatSettings>;

impl Held for HeatSettings {
    type Through = AppState;

    fn through() -> AppState {
        use_app_state()
    }

    fn now(state: AppState, look: &dyn Fn(&Self) -> String) -> String {
        state.with(|sheet| look(&sheet.heat))
    }

    fn saved(state: AppState, look: &dyn Fn(&Self) -> String) -> Option<String> {
        state
            .is_trial()
            .then(|| state.with_saved(|sheet| look(&sheet.heat)))
    }

    fn change(
        state: AppState,
        from: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), String> {
        let mut sheet = state.sheet();
        set(&mut sheet.heat).map_err(told(state))?;
        state.put(sheet, Some(from));
        Ok(())
    }
}
