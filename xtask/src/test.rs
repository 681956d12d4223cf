//! `cargo xtask test`: every check there is.

use crate::arguments::Arguments;
use crate::packed::{self, Packed};
use crate::part::{self, Part};
use crate::{browser, build, check, peers};
use anyhow::{Result, bail};

/// What a first visit should load at most, bytes over the wire. Not met yet: see "What the page
/// weighs" in DEVELOPERS.md for the profile.
pub(crate) const BUDGET: usize = 160_000;
/// What it may load until then; a change that adds to it fails.
const CEILING: usize = 178_000;

/// The verb; whether all is well. A part that fails does not keep the others from being tried.
pub(crate) fn run(given: &[String]) -> Result<bool> {
    Arguments::read(given, &[], &[])?;
    // The page is compiled beside the checks: its last step keeps only one core busy.
    let ahead = build::begin();
    let mut parts = check::parts();
    parts.push(peers::part());
    if let Some(ahead) = ahead {
        ahead.wait();
    }
    let mut files = Vec::new();
    parts.push(Part::one("the page is built", || {
        files = build::build()?;
        Ok(())
    }));
    // Without a page these two have nothing to look at, and the part above says so.
    if !files.is_empty() {
        parts.push(Part::one("size of the first load", || size(&files)));
        parts.push(browser::part());
    }
    Ok(part::sum_up(&parts))
}

fn size(files: &[Packed]) -> Result<()> {
    build::say_sizes(files);
    let (awaited, all) = packed::wires(files);
    println!(
        "{:>9} {awaited:>9}  before the page works; {BUDGET} are the aim, {CEILING} the most that passes",
        ""
    );
    println!("{:>9} {all:>9}  with everything that loads later", "");
    if awaited > CEILING {
        bail!("{awaited} bytes over the wire are more than {CEILING}");
    }
    Ok(())
}
