//! What is seen: at once what is on the screen, in the frame after what is not.

use std::sync::Arc;

use leptos::html::Section;
use leptos::prelude::*;

use super::app_state::figures;
use super::{State, memo};
use crate::app::browser::visibility;
use crate::sheet::Sheet;

/// The sheets that the page shows.
#[derive(Clone)]
pub(super) struct Displayed {
    /// As it stands: the trial where there is one.
    pub(super) stands: Arc<Sheet>,
    /// As it is kept.
    pub(super) kept: Arc<Sheet>,
    /// Whether a trial is on.
    pub(super) is_trial: bool,
}

/// Both are made anew only where they differ.
impl PartialEq for Displayed {
    fn eq(&self, other: &Self) -> bool {
        self.is_trial == other.is_trial
            && Arc::ptr_eq(&self.stands, &other.stands)
            && Arc::ptr_eq(&self.kept, &other.kept)
    }
}

/// The same in the frame after.
pub(super) fn follow_after_frame(seen: Memo<Displayed>) -> RwSignal<Displayed> {
    let late = RwSignal::new(seen.get_untracked());
    let is_asked = StoredValue::new(false);
    Effect::new(move |_| {
        seen.track();
        if is_asked.get_value() {
            return;
        }
        is_asked.set_value(true);
        // The first frame shows what is on the screen; the rest is for the second.
        request_animation_frame(move || {
            request_animation_frame(move || {
                is_asked.set_value(false);
                late.set(seen.get_untracked());
            });
        });
    });
    late
}

impl State {
    /// The state for what stands in a card, which need not follow at once while it is off the
    /// screen; and the mark by which the card is known.
    pub fn in_card(self) -> (Self, NodeRef<Section>) {
        // Until the browser has looked, a card counts as seen.
        let is_seen = RwSignal::new(true);
        let card = NodeRef::<Section>::new();
        card.on_load(move |card| in_sight::watch(&card, is_seen));
        let (now, late) = (self.seen, self.late);
        let seen = memo(move || if is_seen.get() { now.get() } else { late.get() });
        let own = Self {
            seen,
            figures: figures(seen),
            in_sight: Some(is_seen),
            ..self
        };
        (own, card)
    }

    /// Has the card that something is typed into follow at once, wherever it stands.
    pub fn look_here(self) {
        if let Some(in_sight) = self.in_sight
            && !in_sight.get_untracked()
        {
            in_sight.set(true);
        }
    }
}
