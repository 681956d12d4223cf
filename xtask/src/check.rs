//! `cargo xtask check`: format, lints of host and page, docs, and the tests that need no browser.

use crate::arguments::Arguments;
use crate::house;
use crate::part::{self, Part};
use anyhow::Result;
use std::process::Command;

/// The verb; whether all is well.
pub(crate) fn run(given: &[String]) -> Result<bool> {
    Arguments::read(given, &[], &[])?;
    Ok(part::sum_up(&parts()))
}

/// The quick parts.
pub(crate) fn parts() -> Vec<Part> {
    let app = house::target().join("app");
    vec![
        Part::check("format", cargo().args(["fmt", "--all", "--check"])),
        Part::check(
            "lint, this machine",
            cargo().args([
                "clippy",
                "--workspace",
                "--all-targets",
                "--",
                "-D",
                "warnings",
            ]),
        ),
        Part::check(
            "lint, the page",
            cargo()
                .args(["clippy", "--lib", "--target-dir"])
                .arg(app)
                .env("RUSTFLAGS", "--cfg app_on_host -D warnings"),
        ),
        Part::check(
            "docs",
            cargo()
                .args(["doc", "--lib", "--no-deps"])
                .env("RUSTDOCFLAGS", "-D warnings"),
        ),
        Part::counted(
            "tests of engine, sheet, words, house",
            cargo().args(["test", "--workspace", "--no-fail-fast"]),
            part::cargo_s,
        ),
    ]
}

/// Cargo, in this project.
pub(crate) fn cargo() -> Command {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(house::root());
    cargo
}
