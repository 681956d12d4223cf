//! What is seen: at once what is on the screen, in the frame after what is not.

use std::sync::Arc;

use leptos::prelude::*;

use super::memo;
use crate::engine::formula::Figures;
use crate::results::formula;
use crate::sheet::Sheet;

/// The sheets that the page shows.
#[derive(Clone)]
pub(super) struct Displayed {
    /// As it stands: the trial where there is one.
    pub(super) current: Arc<Sheet>,
    /// As it is kept.
    pub(super) saved: Arc<Sheet>,
    /// Whether a trial is on.
    pub(super) is_trial: bool,
}

/// Both are made anew only where they differ.
impl PartialEq for Displayed {
    fn eq(&self, other: &Self) -> bool {
        self.is_trial == other.is_trial
            && Arc::ptr_eq(&self.current, &other.current)
            && Arc::ptr_eq(&self.saved, &other.saved)
    }
}

/// The same in the frame after.
pub(super) fn follow_after_frame(displayed: Memo<Displayed>) -> RwSignal<Displayed> {
    let deferred = RwSignal::new(displayed.get_untracked());
    let is_asked = StoredValue::new(false);
    Effect::new(move |_| {
        displayed.track();
        if is_asked.get_value() {
            return;
        }
        is_asked.set_value(true);
        // The first frame shows what is on the screen; the rest is for the second.
        request_animation_frame(move || {
            request_animation_frame(move || {
                is_asked.set_value(false);
                deferred.set(displayed.get_untracked());
            });
        });
    });
    deferred
}

/// The figures of the dough. In one, so that what shows a figure has one thing to follow.
#[derive(Clone, Debug, PartialEq)]
pub struct DisplayedFigures {
    /// As it stands.
    pub now: Figures,
    /// As it is kept, while a trial is on.
    pub saved: Option<Figures>,
}

/// The figures of what is displayed.
pub(super) fn figures(displayed: Memo<Displayed>) -> Memo<DisplayedFigures> {
    memo(move || {
        displayed.with(|displayed| DisplayedFigures {
            now: formula::figures(&displayed.current),
            saved: displayed
                .is_trial
                .then(|| formula::figures(&displayed.saved)),
        })
    })
}
