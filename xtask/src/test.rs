//! `cargo xtask test`: every check there is.

use crate::arguments::Arguments;
use crate::packed::Packed;
use crate::part::{self, Part};
use crate::{browser, build, check, peers};
use anyhow::{Result, bail};

/// The most a first visit may load, bytes over the wire.
pub(crate) const BUDGET: usize = 160_000;

/// The verb; whether all is well. A part that fails does not keep the others from being tried.
pub(crate) fn run(given: &[String]) -> Result<bool> {
    Arguments::read(given, &[], &[])?;
    let mut parts = check::parts();
    parts.push(peers::part());
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
    let all: usize = files.iter().map(|file| file.wire).sum();
    println!(
        "{:>9} {all:>9}  of {BUDGET} that all files together may have",
        ""
    );
    if all > BUDGET {
        bail!("{all} bytes over the wire are more than {BUDGET}");
    }
    Ok(())
}
