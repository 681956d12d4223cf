//! The theme: light or dark on the page, whatever the device is set to.

use leptos::prelude::*;

/// Sets the page to "light" or "dark"; `None` leaves it to the device.
pub fn set(theme: Option<&'static str>) {
    let Some(root) = document().document_element() else {
        return;
    };
    // The browser refuses only names that are no attribute's.
    let _refused = match theme {
        Some(theme) => root.set_attribute("data-theme", theme),
        None => root.remove_attribute("data-theme"),
    };
}
