//! What is seen: at once what is on the screen, in the frame after what is not.

use std::sync::Arc;

use leptos::html::Section;
use leptos::prelude::*;

use super::app_state::figures;
use super::{AppState, memo};
use crate::app::browser::visibility;
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

impl AppState {
    /// The state for what stands in a card, which need not follow at once while it is off the
    /// screen; and the mark by which the card is known.
    pub fn card_scope(self) -> (Self, NodeRef<Section>) {
        // Until the browser has looked, a card counts as seen.
        let is_seen = RwSignal::new(true);
        let card = NodeRef::<Section>::new();
        card.on_load(move |card| visibility::watch(&card, is_seen));
        let (now, deferred) = (self.displayed, self.deferred);
        let displayed = memo(move || {
            if is_seen.get() {
                now.get()
            } else {
                deferred.get()
            }
        });
        let own = Self {
            displayed,
            figures: figures(displayed),
            is_visible: Some(is_seen),
            ..self
        };
        (own, card)
    }

    /// Has the card that something is typed into follow at once, wherever it stands.
    pub fn show_now(self) {
        if let Some(is_visible) = self.is_visible
            && !is_visible.get_untracked()
        {
            is_visible.set(true);
        }
    }
}
