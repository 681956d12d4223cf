//! The page's entry point; on any other machine, a word about how to see it.

#[cfg(target_arch = "wasm32")]
fn main() {
    softcrumb::app::start();
}

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    eprintln!("Softcrumb runs in a browser. Start it with: cargo xtask serve");
}
