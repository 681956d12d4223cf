//! What is handed out: the formula as it is kept, less what was left out of its link.

use leptos::prelude::*;

use crate::app::browser::address;
use crate::app::state::AppState;
use crate::sheet::Sheet;
use crate::storage::interchange::LinkPart;
use crate::storage::link::LinkError;
use crate::storage::{Fragment, link};

/// What is handed out, and what is left out of it.
#[derive(Clone, Copy)]
pub struct Handed {
    state: AppState,
    /// What is left out of link and code; the formula itself keeps it.
    pub left_out: RwSignal<Vec<LinkPart>>,
}

impl Handed {
    /// Everything is handed out.
    pub fn whole(state: AppState) -> Self {
        Self {
            state,
            left_out: RwSignal::new(Vec::new()),
        }
    }

    /// What this dialog hands out.
    pub fn here() -> Self {
        expect_context::<Self>()
    }

    /// The formula as it is kept.
    pub fn saved(self) -> Sheet {
        self.state.with_saved(Clone::clone)
    }

    /// The same without what is left out.
    pub fn sheet(self) -> Sheet {
        let saved = self.saved();
        self.left_out.with(|parts| {
            parts
                .iter()
                .fold(saved, |sheet, part| part.left_out_of(&sheet))
        })
    }

    /// Leaves a part out, or takes it in again.
    pub fn turn(self, part: LinkPart) {
        self.left_out.update(|parts| {
            if parts.contains(&part) {
                parts.retain(|one| *one != part);
            } else {
                parts.push(part);
            }
        });
    }
}

/// The whole link of a sheet.
///
/// # Errors
/// [`LinkError::TooLong`].
pub fn whole_link(sheet: &Sheet) -> Result<String, LinkError> {
    let text = link::write(sheet)?;
    Ok(format!(
        "{}{}",
        address::page(),
        Fragment::SharedFormula(text).write()
    ))
}
