//! A page that simulates twelve hours of cooling at each tap. The bench times it in a browser.

#[cfg(any(target_arch = "wasm32", app_on_host))]
#[path = "../worksheet/cooling_case.rs"]
#[allow(
    dead_code,
    reason = "the worksheet prints the numbers, the page only computes them"
)]
mod cooling_case;

/// Draws the button; a tap simulates twenty coolings before it returns.
#[cfg(any(target_arch = "wasm32", app_on_host))]
fn main() {
    use leptos::prelude::*;
    use softcrumb::engine::heat::{Probe, simulate};
    use softcrumb::engine::quantity::{Minutes, Temperature};

    const TIMES: u32 = 20;
    let cooled = || {
        let (body, start, stays) = cooling_case::case().ok()?;
        let curve = simulate(&body, start, &stays).ok()?;
        let end = Minutes::from_hours(12.0).ok()?;
        curve.at(end, Probe::Centre).map(Temperature::celsius)
    };
    mount_to_body(move || {
        let result = RwSignal::new(String::new());
        let taps = RwSignal::new(0_u32);
        let cool = move |_| {
            taps.update(|taps| *taps = taps.wrapping_add(1));
            let all: Vec<Option<f64>> = (0..TIMES).map(|_| cooled()).collect();
            result.set(format!("tap {}: {all:?}", taps.get_untracked()));
        };
        view! {
            <main>
                <h1>"Cooling"</h1>
                <button data-times=TIMES on:click=cool>"Cool"</button>
                <p>{result}</p>
            </main>
        }
    });
}

/// Other machines have no page to draw.
#[cfg(not(any(target_arch = "wasm32", app_on_host)))]
fn main() {
    eprintln!("This page runs in a browser: cargo xtask bench");
}
