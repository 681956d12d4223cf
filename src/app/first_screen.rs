//! First screen: the page as a first visit shows it, written out by the build on the host.

use any_spawner::Executor;
use leptos::prelude::*;

use super::shell::AppRoot;
use super::state::{AppState, Drawing};
use crate::sheet::Language;
use crate::text::example::examples;

/// Returns the HTML of the first screen with the first example; empty where there is no example.
///
/// It has no handlers: it is shown until the page is drawn.
#[must_use]
pub fn first_screen() -> String {
    let Some((id, first)) = examples().into_iter().next() else {
        return String::new();
    };
    // Effects are for the browser: they are dropped here.
    let _set_before = Executor::init_custom_executor(Nowhere);
    let draw = || {
        let state = AppState::new(first);
        state
            .settings
            .update(|settings| settings.language = Some(Language::English));
        state.drawing.set(Drawing::WHOLE);
        state.open_id.set(Some(id));
        provide_context(state);
        AppRoot().to_html()
    };
    // Nothing follows a change here.
    Owner::new().with(|| untrack(draw))
}

/// An executor that runs nothing.
struct Nowhere;

impl any_spawner::CustomExecutor for Nowhere {
    fn spawn(&self, _task: any_spawner::PinnedFuture<()>) {}

    fn spawn_local(&self, _task: any_spawner::PinnedLocalFuture<()>) {}

    fn poll_local(&self) {}
}
