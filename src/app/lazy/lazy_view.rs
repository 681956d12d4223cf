//! Lazy view: draws a view of a chunk as soon as that is loaded; offers to try again where it is
//! not.

use std::future::Future;
use std::pin::{Pin, pin};
use std::task::{Context, Poll, Waker};

use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

use crate::app::part::Button;
use crate::text::{notice, tr};

/// Whether a chunk is loaded.
#[derive(Clone, Copy, PartialEq)]
enum LoadState {
    /// It is loading, or has not been asked for.
    Pending,
    /// It is loaded.
    Loaded,
    /// It could not be loaded.
    Failed,
}

/// A view of a chunk, drawn at once where that is loaded, else as soon as it is.
///
/// `arrived` is called where the chunk had to be waited for.
pub fn lazy_view(
    load: fn() -> Pin<Box<dyn Future<Output = bool>>>,
    draw: Box<dyn Fn() -> Option<AnyView> + Send>,
    arrived: fn(),
) -> AnyView {
    let load_state = RwSignal::new(LoadState::Pending);
    let ask = move || {
        spawn_local(async move {
            let is_loaded = load().await;
            // The view may have been removed meanwhile.
            let removed = load_state.try_set(if is_loaded {
                LoadState::Loaded
            } else {
                LoadState::Failed
            });
            if is_loaded && removed.is_none() {
                arrived();
            }
        });
    };
    let again = move |()| {
        load_state.set(LoadState::Pending);
    };
    let inside = move || {
        if load_state.get() == LoadState::Failed {
            return view! {
                <div class="notice" role="alert">
                    <p>{notice::not_loaded()}</p>
                    <Button label=tr!("Try again") on_tap=again />
                </div>
            }
            .into_any();
        }
        // The host draws what is there from the start, and no more.
        if cfg!(target_arch = "wasm32") {
            if let Some(view) = draw() {
                return view;
            }
            ask();
        }
        view! { <p class="quiet loading" role="status">{notice::loading()}</p> }.into_any()
    };
    inside.into_any()
}

/// The value of a future that is ready without waiting.
pub fn now_or_never<T>(future: impl Future<Output = T>) -> Option<T> {
    match pin!(future).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(value) => Some(value),
        Poll::Pending => None,
    }
}
