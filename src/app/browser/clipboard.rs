//! The clipboard: a text put into it.

use leptos::prelude::*;
use wasm_bindgen_futures::JsFuture;

/// Why nothing was copied: the browser refuses, or has no clipboard here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotCopied;

/// Copies a text.
///
/// # Errors
/// [`NotCopied`] where the browser refuses.
pub async fn copy(text: String) -> Result<(), NotCopied> {
    let clipboard = window().navigator().clipboard();
    if clipboard.is_undefined() {
        return Err(NotCopied);
    }
    match JsFuture::from(clipboard.write_text(&text)).await {
        Ok(_) => Ok(()),
        Err(_) => Err(NotCopied),
    }
}
