//! `cargo xtask test`: runs all checks.

use crate::arguments::Arguments;
use crate::asset::{self, Asset};
use crate::check_report::{self, CheckReport};
use crate::{browser, build, check, peers};
use anyhow::{Result, bail};

/// The aim for what a first visit loads, bytes over the network. Not reached yet: "Size and speed"
/// in DEVELOPERS.md has the profile.
pub(crate) const AIM: usize = 140_000;
/// The most that passes, so that no change adds to it.
const LIMIT: usize = 165_500;

/// Runs the command; whether all checks passed. A failed check does not stop the others.
pub(crate) fn run(arguments: &[String]) -> Result<bool> {
    Arguments::read(arguments, &[], &[])?;
    // The page compiles beside the checks: its last step uses one core only.
    let compilation = build::start_in_background();
    let mut reports = check::checks();
    reports.push(peers::check());
    if let Some(compilation) = compilation {
        compilation.wait();
    }
    let mut assets = Vec::new();
    reports.push(CheckReport::single("build of the page", || {
        assets = build::build()?;
        Ok(())
    }));
    // Without a page these have nothing to test, and the report above has failed.
    if !assets.is_empty() {
        reports.push(CheckReport::single("size of the first load", || {
            size(&assets)
        }));
        reports.push(browser::check());
    }
    Ok(check_report::summarize(&reports))
}

fn size(assets: &[Asset]) -> Result<()> {
    asset::print_sizes(assets);
    let (initial, all) = asset::transfer_sizes(assets);
    println!(
        "{:>9} {initial:>9}  before the page works; the aim is {AIM}, at most {LIMIT} pass",
        ""
    );
    println!("{:>9} {all:>9}  with everything that loads later", "");
    if initial > LIMIT {
        bail!("{initial} bytes over the network are more than {LIMIT}");
    }
    Ok(())
}
