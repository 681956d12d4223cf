//! `cargo xtask dist`: builds the page and writes it into one zip archive, for any static host.

use crate::arguments::Arguments;
use crate::step::step;
use crate::{archive, asset, build, paths};
use anyhow::Result;

/// Runs the command.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    Arguments::read(arguments, &[], &[])?;
    asset::print_sizes(&build::build()?);
    let zip = paths::target().join("softcrumb.zip");
    step("Writing the archive", || {
        archive::write(&paths::dist(), &zip)
    })?;
    println!(
        "Unpack {} into any folder of a static host; README.md says how.",
        zip.display()
    );
    Ok(())
}
