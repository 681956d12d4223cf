//! The least page this set-up can make: one button that counts. The bench measures ours beside it.

/// Draws the button.
#[cfg(target_arch = "wasm32")]
fn main() {
    use leptos::prelude::*;
    mount_to_body(|| {
        let count = RwSignal::new(0_u32);
        view! {
            <main>
                <h1>"Floor"</h1>
                <button on:click=move |_| count.update(|n| *n = n.wrapping_add(1))>{count}</button>
            </main>
        }
    });
    if let Some(word) = document().get_element_by_id("waiting") {
        word.remove();
    }
}

/// On any other machine there is no page to draw.
#[cfg(not(target_arch = "wasm32"))]
fn main() {
    eprintln!("This page runs in a browser: cargo xtask bench");
}
