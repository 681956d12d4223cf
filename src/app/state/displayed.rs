//! The displayed sheets: current at once where something is typed or looked at, a frame later elsewhere.

use std::sync::Arc;

use leptos::prelude::*;

use super::memo;
use crate::app::browser::clock;
use crate::results::formula;
use crate::sheet::Sheet;
use crate::text::{DoughFigures, FormatOptions};

/// The sheets that the page shows.
#[derive(Clone)]
pub(super) struct Displayed {
    /// The current sheet: that of the trial, if there is one.
    pub(super) current: Arc<Sheet>,
    /// The saved sheet.
    pub(super) saved: Arc<Sheet>,
    /// Whether a trial is on.
    pub(super) is_trial: bool,
}

/// Compares pointers: a sheet is replaced only where it differs.
impl PartialEq for Displayed {
    fn eq(&self, other: &Self) -> bool {
        self.is_trial == other.is_trial
            && Arc::ptr_eq(&self.current, &other.current)
            && Arc::ptr_eq(&self.saved, &other.saved)
    }
}

/// The displayed sheets of the frame before.
pub(super) fn follow_after_frame(displayed: Memo<Displayed>) -> RwSignal<Displayed> {
    let deferred = RwSignal::new(displayed.get_untracked());
    let is_asked = StoredValue::new(false);
    Effect::new(move |_| {
        displayed.track();
        if is_asked.get_value() {
            return;
        }
        is_asked.set_value(true);
        // The first frame shows what is looked at; the rest is for the second. A key that comes in
        // between goes first, because it does not wait for a frame.
        clock::after_frame(move || {
            is_asked.set_value(false);
            deferred.set(displayed.get_untracked());
        });
    });
    deferred
}

/// The figures of what is displayed, written out: one value, so that each view follows one signal.
pub(super) fn figures(
    displayed: Memo<Displayed>,
    options: Memo<FormatOptions>,
) -> Memo<DoughFigures> {
    memo(move || {
        let options = options.get();
        displayed.with(|displayed| {
            let now = formula::figures(&displayed.current);
            let saved = displayed
                .is_trial
                .then(|| formula::figures(&displayed.saved));
            DoughFigures::of(&now, saved.as_ref(), options)
        })
    })
}
