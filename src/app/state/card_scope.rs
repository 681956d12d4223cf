//! Card scope: the state that a card gives to what is drawn in it, which may follow a frame later.

use leptos::html::Section;
use leptos::prelude::*;

use super::displayed::figures;
use super::{AppState, memo};
use crate::app::browser::visibility;

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
