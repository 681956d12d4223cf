//! What is shared: the saved formula without the parts left out of its link.

use leptos::prelude::*;

use crate::app::browser::address;
use crate::app::state::{AppState, WorkspaceStore};
use crate::engine::class::ClassSettings;
use crate::results::batch::class_batch;
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
    /// Whether a class's batch is shared whole, not as what one bench weighs.
    pub whole_class: RwSignal<bool>,
}

impl ShareContent {
    /// Shares everything.
    pub fn all(state: AppState) -> Self {
        Self {
            state,
            left_out: RwSignal::new(Vec::new()),
            whole_class: RwSignal::new(false),
        }
    }

    /// What the open dialog shares.
    pub fn from_context() -> Self {
        expect_context::<Self>()
    }

    /// The class, where the batch is made by it.
    pub fn class(self) -> Option<ClassSettings> {
        let class = WorkspaceStore::from_context().settings.get();
        let wanted = self.state.with_saved(|sheet| sheet.batch.wanted);
        class.is_made_by(wanted).then_some(class)
    }

    /// The saved formula; of a class's batch, what one bench makes.
    pub fn saved(self) -> Sheet {
        let mut sheet = self.state.with_saved(Clone::clone);
        if let Some(class) = self.class().filter(|_| !self.whole_class.get()) {
            sheet.batch = class_batch::of_bench(&sheet, &class);
        }
        sheet
    }

    /// The saved formula for a file: of a class's batch, made once it is what its card weighs.
    pub fn for_file(self) -> Sheet {
        let saved = self.saved();
        if self.class().is_none() {
            return saved;
        }
        let scales = self.state.kitchen.with(|kitchen| kitchen.scales);
        class_batch::weighed_out(&saved, scales)
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
