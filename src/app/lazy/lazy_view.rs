//! Slot: where a piece appears as soon as it is there; words where it does not come.

use std::future::Future;
use std::pin::{Pin, pin};
use std::task::{Context, Poll, Waker};

use leptos::prelude::*;
use leptos::wasm_split::SplitLoaderError;
use wasm_bindgen_futures::spawn_local;

use crate::app::part::Button;
use crate::text::{notice, tr};

/// What an entry gives: the view, or that it could not be loaded.
pub type Piece = Result<AnyView, SplitLoaderError>;

/// What the slot knows of its piece.
#[derive(Clone, Copy, PartialEq)]
enum LoadState {
    /// It is loading, or has not been asked for.
    NotYet,
    /// It is there.
    Here,
    /// It did not come.
    Lost,
}

/// A piece, drawn at once where it has been loaded before, else as soon as it has come.
///
/// `arrived` is called where it had to be waited for.
pub fn later(
    load: fn() -> Pin<Box<dyn Future<Output = bool>>>,
    draw: Box<dyn Fn() -> Option<AnyView> + Send>,
    arrived: fn(),
) -> AnyView {
    let came = RwSignal::new(LoadState::NotYet);
    let ask = move || {
        spawn_local(async move {
            let is_here = load().await;
            // Whoever asked may have gone elsewhere meanwhile.
            let gone = came.try_set(if is_here {
                LoadState::Here
            } else {
                LoadState::Lost
            });
            if is_here && gone.is_none() {
                arrived();
            }
        });
    };
    let again = move |()| {
        came.set(LoadState::NotYet);
    };
    let inside = move || {
        if came.get() == LoadState::Lost {
            return view! {
                <div class="notice" role="alert">
                    <p>{notice::not_loaded()}</p>
                    <Button says=tr!("Try again") tapped=again />
                </div>
            }
            .into_any();
        }
        if let Some(view) = draw() {
            return view;
        }
        ask();
        view! { <p class="quiet coming" role="status">{notice::loading()}</p> }.into_any()
    };
    inside.into_any()
}

/// What comes without waiting.
pub fn at_once<T>(asked: impl Future<Output = T>) -> Option<T> {
    match pin!(asked).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(given) => Some(given),
        Poll::Pending => None,
    }
}
