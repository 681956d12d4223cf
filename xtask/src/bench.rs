//! `cargo xtask bench`: the page beside the least page there can be, against its budgets.

use crate::arguments::Arguments;
use crate::build::Unit;
use crate::packed::{self, Packed};
use crate::server::Serving;
use crate::test::BUDGET;
use crate::{browser, build, bundle, check, house, peers, server, step};
use anyhow::Result;
use std::path::{Path, PathBuf};
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
    let arguments = Arguments::read(given, &["--cooling"], &[])?;
    browser::prepare()?;
    let cooling = served(&beside(COOLING)?.0)?;
    if arguments.has("--cooling") {
        let mut node = browser::node("bench/run.mjs")?;
        node.env("SOFTCRUMB_COOLING", &cooling.address);
        let quick = node.status()?.success();
        return Ok(worksheet("--time")? && beside_scipy()? && quick);
    }
    let ours = build::build()?;
    let (floor_folder, floor) = beside(FLOOR)?;
    let light = say_bytes(&ours, &floor);
    let (here, there) = (served(&house::dist())?, served(&floor_folder)?);
    println!();
    let mut node = browser::node("bench/run.mjs")?;
    node.env("SOFTCRUMB_ADDRESS", &here.address)
        .env("SOFTCRUMB_FLOOR", &there.address)
        .env("SOFTCRUMB_COOLING", &cooling.address);
    let quick = node.status()?.success();
    let timed = worksheet("--time")?;
    println!("\nLinks and their square codes");
    let (linked, scipy) = (worksheet("--links")?, beside_scipy()?);
    Ok(light && quick && timed && linked && scipy)
}

/// Serves a built page on any port that is free.
fn served(folder: &Path) -> Result<Serving> {
    server::start(folder, "/", server::listen(0)?)
}

/// Has the worksheet say something of itself; timing itself, it fails over its budget.
fn worksheet(what: &str) -> Result<bool> {
    let worksheet = ["--quiet", "--release", "--example", "worksheet"];
    let mut command = check::cargo();
    command.arg("run").args(worksheet).args(["--", what]);
    Ok(command.status()?.success())
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
