//! Printing.

use leptos::prelude::*;

/// Opens the browser's own print dialog.
pub fn now() {
    // Refused only where the browser has no printing.
    let _refused = window().print();
}
