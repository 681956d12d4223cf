//! What is shared: the saved formula without the parts left out of its link.

use leptos::prelude::*;

use crate::app::browser::address;
use crate::app::state::AppState;
use crate::sheet::Sheet;
use crate::storage::interchange::LinkPart;
use crate::storage::link::LinkError;
use crate::storage::{Fragment, link};

/// What is shared, and which parts are left out.
#[derive(Clone, Copy)]
pub struct ShareContent {
    state: AppState,
    /// Parts left out of link and code; the stored formula does not change.
    pub left_out: RwSignal<Vec<LinkPart>>,
}

impl ShareContent {
    /// Shares everything.
    pub fn all(state: AppState) -> Self {
        Self {
            state,
            left_out: RwSignal::new(Vec::new()),
        }
    }

    /// What the open dialog shares.
    pub fn from_context() -> Self {
        expect_context::<Self>()
    }

    /// The saved formula.
    pub fn saved(self) -> Sheet {
        self.state.with_saved(Clone::clone)
    }

    /// The saved formula without the parts left out.
    pub fn sheet(self) -> Sheet {
        let saved = self.saved();
        self.left_out.with(|parts| {
            parts
                .iter()
                .fold(saved, |sheet, part| part.left_out_of(&sheet))
        })
    }

    /// Leaves a part out, or restores it.
    pub fn toggle(self, part: LinkPart) {
        self.left_out.update(|parts| {
            if parts.contains(&part) {
                parts.retain(|one| *one != part);
            } else {
                parts.push(part);
            }
        });
    }
}

/// The link of a sheet, with the address of the page.
///
/// # Errors
/// [`LinkError::TooLong`].
pub fn full_link(sheet: &Sheet) -> Result<String, LinkError> {
    let text = link::write(sheet)?;
    Ok(format!(
        "{}{}",
        address::page(),
        Fragment::SharedFormula(text).write()
    ))
}
