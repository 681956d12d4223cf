//! The baseline: a minimal page with one button that counts. The bench measures our page beside it.

/// Draws the button.
#[cfg(target_arch = "wasm32")]
fn main() {
    use leptos::prelude::*;
    mount_to_body(|| {
        let count = RwSignal::new(0_u32);
        view! {
            <main>
                <h1>"Baseline"</h1>
                <button on:click=move |_| count.update(|n| *n = n.wrapping_add(1))>{count}</button>
            </main>
        }
    });
    if let Some(splash) = document().get_element_by_id("waiting") {
        splash.remove();
    }
}

/// Other machines have no page to draw.
#[cfg(not(target_arch = "wasm32"))]
fn main() {
    eprintln!("This page runs in a browser: cargo xtask bench");
}
