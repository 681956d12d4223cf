//! Stands in for the library of this name: streams of bytes to and from a server of the page's own.
//!
//! Leptos brings that library along for every page, and what it exports to the browser cannot be
//! left out by the linker: 5 KB packed. This page asks no server, so none of it is ever called;
//! a call would stop the page at once and loudly.

use futures_util::stream::{Empty, Stream};
use wasm_bindgen::JsValue;

/// A stream of bytes that is read.
#[derive(Debug)]
pub struct ReadableStream {
    raw: web_sys::ReadableStream,
}

impl ReadableStream {
    /// Takes the browser's own.
    pub fn from_raw(raw: web_sys::ReadableStream) -> Self {
        Self { raw }
    }

    /// Would hand a stream to the browser.
    pub fn from_stream<S>(_stream: S) -> Self
    where
        S: Stream<Item = Result<JsValue, JsValue>> + 'static,
    {
        panic!("this page has no server to send to")
    }

    /// Gives the browser's own.
    pub fn into_raw(self) -> web_sys::ReadableStream {
        self.raw
    }

    /// Would read what the browser is sent.
    pub fn into_stream(self) -> Empty<Result<JsValue, JsValue>> {
        panic!("this page has no server to read from")
    }
}
