//! Files: one saved to the device, one read from it.

use crate::engine::numerics::float_from_usize;
use js_sys::Array;
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlInputElement, Url};

/// Why a file was not read or saved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FileError {
    /// It is larger than allowed.
    TooLarge {
        /// Its size in bytes.
        bytes: f64,
        /// The most bytes allowed.
        most: f64,
    },
    /// The browser refused.
    Refused,
}

/// Saves a text to the device under a name.
///
/// # Errors
/// [`FileError::Refused`] where the browser will not.
pub fn save(name: &str, kind: &str, text: &str) -> Result<(), FileError> {
    save_or(name, kind, text).map_err(|_| FileError::Refused)
}

/// Saves bytes to the device under a name.
///
/// # Errors
/// [`FileError::Refused`] where the browser will not.
pub fn save_bytes(name: &str, kind: &str, bytes: &[u8]) -> Result<(), FileError> {
    let bytes = js_sys::Uint8Array::from(bytes);
    let how = BlobPropertyBag::new();
    how.set_type(kind);
    Blob::new_with_u8_array_sequence_and_options(&Array::of1(&bytes), &how)
        .and_then(|blob| offer(name, &blob))
        .map_err(|_| FileError::Refused)
}

fn save_or(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let how = BlobPropertyBag::new();
    how.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&text.into()), &how)?;
    offer(name, &blob)
}

fn offer(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    // By then the browser has read the file.
    set_timeout(
        move || drop(Url::revoke_object_url(&address)),
        std::time::Duration::from_secs(30),
    );
    Ok(())
}

/// The file chosen in an input, if any; the input is emptied so that the same file can be chosen
/// again.
pub fn chosen(input: &HtmlInputElement) -> Option<File> {
    let file = input.files()?.get(0);
    input.set_value("");
    file
}

/// Reads a file of at most `most` bytes as text.
///
/// # Errors
/// [`FileError`] when it is larger, or cannot be read.
pub async fn text(file: File, most: usize) -> Result<String, FileError> {
    let (bytes, most) = (file.size(), float_from_usize(most));
    if bytes > most {
        return Err(FileError::TooLarge { bytes, most });
    }
    let text = JsFuture::from(file.text())
        .await
        .map_err(|_| FileError::Refused)?;
    text.as_string().ok_or(FileError::Refused)
}
