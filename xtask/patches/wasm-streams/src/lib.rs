//! An empty crate in place of `wasm-streams`, which converts byte streams to and from a server.
//!
//! Leptos depends on it, and the linker cannot remove what it exports to the browser: 5 KB
//! compressed. This page talks to no server and never calls it; a call would panic.

use futures_util::stream::{Empty, Stream};
use wasm_bindgen::JsValue;

/// A readable stream of bytes.
#[derive(Debug)]
pub struct ReadableStream {
    raw: web_sys::ReadableStream,
}

impl ReadableStream {
    /// Wraps the browser's stream.
    pub fn from_raw(raw: web_sys::ReadableStream) -> Self {
        Self { raw }
    }

    /// Panics: nothing is sent to a server.
    pub fn from_stream<S>(_stream: S) -> Self
    where
        S: Stream<Item = Result<JsValue, JsValue>> + 'static,
    {
        panic!("this page has no server to send to")
    }

    /// Gives the browser's stream.
    pub fn into_raw(self) -> web_sys::ReadableStream {
        self.raw
    }

    /// Panics: nothing is read from a server.
    pub fn into_stream(self) -> Empty<Result<JsValue, JsValue>> {
        panic!("this page has no server to read from")
    }
}
