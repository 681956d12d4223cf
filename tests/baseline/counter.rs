//! The baseline: a minimal page with one button that counts, and one box that one figure follows.
//! The bench measures our page beside it.

/// Draws the button, the box and the figure.
#[cfg(any(target_arch = "wasm32", app_on_host))]
fn main() {
    use leptos::prelude::*;
    mount_to_body(|| {
        let count = RwSignal::new(0_u32);
        let weight = RwSignal::new(String::from("500"));
        let share = move || {
            let grams = weight.with(|text| text.parse::<f64>().unwrap_or_default());
            format!("{:.1} %", grams / 5.0)
        };
        view! {
            <main>
                <h1>"Baseline"</h1>
                <button on:click=move |_| count.update(|n| *n = n.wrapping_add(1))>{count}</button>
                <label for="weight">"Flour, weight"</label>
                <input
                    id="weight"
                    inputmode="decimal"
                    prop:value=weight
                    on:input:target=move |event| weight.set(event.target().value())
                />
                <p>{share}</p>
            </main>
        }
    });
    if let Some(splash) = document().get_element_by_id("waiting") {
        splash.remove();
    }
}

/// Other machines have no page to draw.
#[cfg(not(any(target_arch = "wasm32", app_on_host)))]
fn main() {
    eprintln!("This page runs in a browser: cargo xtask bench");
}
