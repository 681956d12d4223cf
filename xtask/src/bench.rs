//! `cargo xtask bench`: measures the page beside a minimal page, against its budgets.

use crate::arguments::Arguments;
use crate::asset::{self, Asset};
use crate::build::CargoTarget;
use crate::server::Running;
use crate::styles::Styles;
use crate::test::AIM;
use crate::{browser, build, bundle, check, paths, peers, server, step};
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A minimal page: one button that counts.
const BASELINE: CargoTarget = CargoTarget {
    flag: "--example",
    name: "baseline",
};
/// A page that only cools a paste.
const COOLING: CargoTarget = CargoTarget {
    flag: "--example",
    name: "cooling",
};
/// The style sheet of both.
const BASELINE_STYLES: &str = "button { min-width: 3rem; min-height: 3rem; }";

/// Runs the command; whether every budget is met.
pub(crate) fn run(arguments: &[String]) -> Result<bool> {
    let arguments = Arguments::read(arguments, &["--cooling"], &[])?;
    browser::prepare()?;
    let cooling = serve(&build_example(COOLING)?.0)?;
    if arguments.has("--cooling") {
        let mut node = browser::node("bench/run.mjs")?;
        node.env("SOFTCRUMB_COOLING", &cooling.address);
        let passed = node.status()?.success();
        return Ok(worksheet("--time")? && time_scipy()? && passed);
    }
    browser::prepare_bench()?;
    let assets = build::build()?;
    let (baseline_folder, baseline_assets) = build_example(BASELINE)?;
    let small = print_transfer_sizes(&assets, &baseline_assets);
    let (page, baseline) = (serve(&paths::dist())?, serve(&baseline_folder)?);
    println!();
    let mut node = browser::node("bench/run.mjs")?;
    node.env("SOFTCRUMB_ADDRESS", &page.address)
        .env("SOFTCRUMB_BASELINE", &baseline.address)
        .env("SOFTCRUMB_COOLING", &cooling.address);
    let fast = node.status()?.success();
    let timed = worksheet("--time")?;
    println!("\nLinks and their square codes");
    let (linked, scipy) = (worksheet("--links")?, time_scipy()?);
    Ok(small && fast && timed && linked && scipy)
}

/// Serves a built page on any free port.
fn serve(folder: &Path) -> Result<Running> {
    server::start(folder, "/", server::listen(0)?)
}

/// Runs the worksheet with an option; it fails when it is over its budget.
fn worksheet(option: &str) -> Result<bool> {
    let worksheet = ["--quiet", "--release", "--example", "worksheet"];
    let mut command = check::cargo();
    command.arg("run").args(worksheet).args(["--", option]);
    Ok(command.status()?.success())
}

/// Builds a page from an example; returns its folder and its files.
fn build_example(target: CargoTarget) -> Result<(PathBuf, Vec<Asset>)> {
    let folder = paths::target().join(target.name);
    let styles = Styles {
        first: BASELINE_STYLES.to_owned(),
        later: String::new(),
    };
    let sources = build::sources(&build::compile(target)?, styles)?;
    let assets = step::step(&format!("Compressing {}", target.name), || {
        bundle::write(sources, &folder)
    })?;
    Ok((folder, assets))
}

/// Times scipy on the cooling that the worksheet times; whether it succeeded.
fn time_scipy() -> Result<bool> {
    let worksheet = paths::target().join("release/examples/worksheet");
    let worksheet = worksheet.with_extension(std::env::consts::EXE_EXTENSION);
    let status = Command::new(peers::prepare()?)
        .current_dir(paths::root().join("tests/peers"))
        .env("SOFTCRUMB_WORKSHEET", worksheet)
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .arg("time_cooling.py")
        .status()?;
    Ok(status.success())
}

/// Prints bytes over the network, file by file, and their sum; whether that reaches the aim.
fn print_transfer_sizes(assets: &[Asset], baseline: &[Asset]) -> bool {
    println!("\nBytes over the network");
    asset::print_sizes(assets);
    let (initial, all) = asset::transfer_sizes(assets);
    let (minimal, _) = asset::transfer_sizes(baseline);
    let verdict = if initial <= AIM { "ok" } else { "OVER" };
    println!(
        "{:>9} {initial:>9}  before the page works, at most {AIM}: {verdict}; the minimal page {minimal}",
        ""
    );
    println!("{:>9} {all:>9}  with everything that loads later", "");
    initial <= AIM
}
