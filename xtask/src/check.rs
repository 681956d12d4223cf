//! `cargo xtask check`: format, lints of host and page, docs, and the tests that need no browser.

use crate::arguments::Arguments;
use crate::check_report::{self, CheckReport};
use crate::paths;
use anyhow::Result;
use std::process::Command;

/// Runs the command; whether all checks passed.
pub(crate) fn run(arguments: &[String]) -> Result<bool> {
    Arguments::read(arguments, &[], &[])?;
    Ok(check_report::summarize(&checks()))
}

/// Lints of the page and of the two minimal pages that the bench measures beside it.
const PAGE_LINTS: [&str; 7] = [
    "clippy",
    "--lib",
    "--example",
    "baseline",
    "--example",
    "cooling",
    "--target-dir",
];

/// Runs the quick checks.
pub(crate) fn checks() -> Vec<CheckReport> {
    let page = paths::target().join("app");
    vec![
        CheckReport::command("format", cargo().args(["fmt", "--all", "--check"])),
        CheckReport::command(
            "lints of the host build",
            cargo().args([
                "clippy",
                "--workspace",
                "--all-targets",
                "--",
                "-D",
                "warnings",
            ]),
        ),
        CheckReport::command(
            "lints of the page",
            cargo()
                .args(PAGE_LINTS)
                .arg(page)
                .env("RUSTFLAGS", "--cfg app_on_host -D warnings"),
        ),
        CheckReport::command(
            "docs",
            cargo()
                .args(["doc", "--lib", "--no-deps"])
                .env("RUSTDOCFLAGS", "-D warnings"),
        ),
        CheckReport::counted(
            "tests without a browser",
            cargo().args(["test", "--workspace", "--no-fail-fast"]),
            check_report::read_cargo_test,
        ),
    ]
}

/// Cargo, in this project.
pub(crate) fn cargo() -> Command {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(paths::root());
    cargo
}
