//! Card scope: the state for the content of a card, which may be updated a frame later.

use leptos::html::Section;
use leptos::prelude::*;

use super::displayed::figures;
use super::{AppState, memo};
use crate::app::browser::visibility;

impl AppState {
    /// The state for the content of a card, which is updated a frame later while it is off the
    /// screen; and the reference to the card's element.
    pub fn card_scope(self) -> (Self, NodeRef<Section>) {
        // Until the browser reports it, a card counts as visible.
        let is_seen = RwSignal::new(true);
        let card = NodeRef::<Section>::new();
        card.on_load(move |card| visibility::watch(&card, is_seen));
        (self.at_once_while(is_seen), card)
    }

    /// The state for the content of a card, which is updated a frame later while none of its boxes is
    /// typed into; and whether one was entered.
    pub fn entered_scope(self) -> (Self, RwSignal<bool>) {
        let is_entered = RwSignal::new(false);
        (self.at_once_while(is_entered), is_entered)
    }

    fn at_once_while(self, is_now: RwSignal<bool>) -> Self {
        let (now, deferred) = (self.displayed, self.deferred);
        let displayed = memo(move || {
            if is_now.get() {
                now.get()
            } else {
                deferred.get()
            }
        });
        Self {
            displayed,
            figures: figures(displayed, self.options),
            is_now: Some(is_now),
            ..self
        }
    }

    /// The state one frame later, for what lies below what is typed and comes and goes with it.
    pub fn a_frame_later(self) -> Self {
        let deferred = self.deferred;
        let displayed = memo(move || deferred.get());
        Self {
            displayed,
            figures: figures(displayed, self.options),
            ..self
        }
    }

    /// Updates the card that is typed into at once.
    pub fn show_now(self) {
        if let Some(is_now) = self.is_now
            && !is_now.get_untracked()
        {
            is_now.set(true);
        }
    }
}
