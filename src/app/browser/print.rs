//! Printing.

use leptos::prelude::*;

/// Opens the browser's own print dialog.
pub fn now() {
    // The call fails only where the browser cannot print.
    let _refused = window().print();
}
