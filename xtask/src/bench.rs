//! `cargo xtask bench`: the page beside the least page there can be, against its budgets.

use crate::arguments::Arguments;
use crate::build::Unit;
use crate::packed::Packed;
use crate::test::BUDGET;
use crate::{browser, build, bundle, check, house, server, step};
use anyhow::Result;

/// The least page.
const FLOOR: Unit = Unit {
    sort: "--example",
    name: "floor",
};
/// Its whole style sheet.
const FLOOR_STYLES: &str = "button { min-width: 3rem; min-height: 3rem; }";

/// The verb; whether every budget is kept.
pub(crate) fn run(given: &[String]) -> Result<bool> {
    Arguments::read(given, &[], &[])?;
    browser::prepare()?;
    let ours = build::build()?;
    let folder = house::target().join("floor");
    let pieces = build::pieces(&build::compile(FLOOR)?, FLOOR_STYLES.to_owned())?;
    let floor = step::step("Packing the least page", || bundle::write(pieces, &folder))?;
    let light = say_bytes(&ours, &floor);
    let (here, there) = (
        server::start(&house::dist(), "/", server::listen(0)?)?,
        server::start(&folder, "/", server::listen(0)?)?,
    );
    println!();
    let mut node = browser::node("bench/run.mjs")?;
    node.env("SOFTCRUMB_ADDRESS", &here.address)
        .env("SOFTCRUMB_FLOOR", &there.address);
    let quick = node.status()?.success();
    // The worksheet times itself, and fails over its budget.
    let worksheet = check::cargo()
        .args([
            "run",
            "--quiet",
            "--release",
            "--example",
            "worksheet",
            "--",
            "--time",
        ])
        .status()?
        .success();
    Ok(light && quick && worksheet)
}

/// Bytes over the wire, file by file, and their sum beside the budget.
fn say_bytes(ours: &[Packed], floor: &[Packed]) -> bool {
    println!("\nBytes over the wire");
    build::say_sizes(ours);
    let sum = |files: &[Packed]| files.iter().map(|file| file.wire).sum::<usize>();
    let (all, least) = (sum(ours), sum(floor));
    let kept = if all <= BUDGET { "ok" } else { "OVER" };
    println!(
        "{:>9} {all:>9}  in all, at most {BUDGET}: {kept}; the least page {least}",
        ""
    );
    all <= BUDGET
}
