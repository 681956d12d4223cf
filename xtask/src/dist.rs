//! `cargo xtask dist`: the built page in one zip, for any static host.

use crate::arguments::Arguments;
use crate::step::step;
use crate::{archive, build, house};
use anyhow::Result;

/// The verb.
pub(crate) fn run(given: &[String]) -> Result<()> {
    Arguments::read(given, &[], &[])?;
    let files = build::build()?;
    build::say_sizes(&files);
    let zip = house::target().join("softcrumb.zip");
    step("Packing the zip", || archive::write(&house::dist(), &zip))?;
    println!(
        "Unpack {} into any folder of a static host; README.md says how.",
        zip.display()
    );
    Ok(())
}
