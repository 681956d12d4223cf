//! The page's entry point. On a host that compiles the page: writes the first screen, for the build.
//! On any other machine: says how to see the page.

#[cfg(target_arch = "wasm32")]
fn main() {
    softcrumb::app::start();
}

#[cfg(all(not(target_arch = "wasm32"), app_on_host))]
#[allow(clippy::print_stdout, reason = "the build reads it")]
fn main() {
    println!("{}", softcrumb::app::first_screen());
}

#[cfg(not(any(target_arch = "wasm32", app_on_host)))]
fn main() {
    eprintln!("Softcrumb runs in a browser. Start it with: cargo xtask serve");
}
