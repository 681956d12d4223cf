//! `cargo xtask bench`: the page beside the least page there can be, against its budgets.

use crate::arguments::Arguments;
use crate::build::Unit;
use crate::packed::{self, Packed};
use crate::test::BUDGET;
use crate::{browser, build, bundle, check, house, peers, server, step};
use anyhow::Result;
use std::path::PathBuf;
use std::process::Command;

/// The least page.
const FLOOR: Unit = Unit {
    sort: "--example",
    name: "floor",
};
/// A page that does nothing but cool a heap of paste.
const COOLING: Unit = Unit {
    sort: "--example",
    name: "cooling",
};
/// Their whole style sheet.
const FLOOR_STYLES: &str = "button { min-width: 3rem; min-height: 3rem; }";

/// The verb; whether every budget is kept.
pub(crate) fn run(given: &[String]) -> Result<bool> {
    Arguments::read(given, &[], &[])?;
    browser::prepare()?;
    let ours = build::build()?;
    let (floor_folder, floor) = beside(FLOOR)?;
    let (cooling_folder, _) = beside(COOLING)?;
    let light = say_bytes(&ours, &floor);
    let (here, there, cooling) = (
        server::start(&house::dist(), "/", server::listen(0)?)?,
        server::start(&floor_folder, "/", server::listen(0)?)?,
        server::start(&cooling_folder, "/", server::listen(0)?)?,
    );
    println!();
    let mut node = browser::node("bench/run.mjs")?;
    node.env("SOFTCRUMB_ADDRESS", &here.address)
        .env("SOFTCRUMB_FLOOR", &there.address)
        .env("SOFTCRUMB_COOLING", &cooling.address);
    let quick = node.status()?.success();
    // The worksheet times itself, and fails over its budget.
    let worksheet = ["--quiet", "--release", "--example", "worksheet"];
    let timed = check::cargo()
        .arg("run")
        .args(worksheet)
        .args(["--", "--time"])
        .status()?
        .success();
    let scipy = beside_scipy()?;
    Ok(light && quick && timed && scipy)
}

/// Builds a small page of its own; gives its folder and its files.
fn beside(unit: Unit) -> Result<(PathBuf, Vec<Packed>)> {
    let folder = house::target().join(unit.name);
    let pieces = build::pieces(&build::compile(unit)?, FLOOR_STYLES.to_owned())?;
    let files = step::step(&format!("Packing {}", unit.name), || {
        bundle::write(pieces, &folder)
    })?;
    Ok((folder, files))
}

/// Has scipy follow the cooling that the worksheet times; whether it could.
fn beside_scipy() -> Result<bool> {
    let worksheet = house::target().join("release/examples/worksheet");
    let worksheet = worksheet.with_extension(std::env::consts::EXE_EXTENSION);
    let status = Command::new(peers::prepare()?)
        .current_dir(house::root().join("tests/peers"))
        .env("SOFTCRUMB_WORKSHEET", worksheet)
        .env("PYTHONDONTWRITEBYTECODE", "1")
        .arg("time_cooling.py")
        .status()?;
    Ok(status.success())
}

/// Bytes over the wire, file by file, and their sum beside the budget.
fn say_bytes(ours: &[Packed], floor: &[Packed]) -> bool {
    println!("\nBytes over the wire");
    build::say_sizes(ours);
    let ((awaited, all), (least, _)) = (packed::wires(ours), packed::wires(floor));
    let kept = if awaited <= BUDGET { "ok" } else { "OVER" };
    println!(
        "{:>9} {awaited:>9}  before the page works, at most {BUDGET}: {kept}; the least page {least}",
        ""
    );
    println!("{:>9} {all:>9}  with everything that loads later", "");
    awaited <= BUDGET
}
