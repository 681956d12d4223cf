//! `cargo xtask serve`: builds the page and serves it on this machine.

use crate::arguments::Arguments;
use crate::{build, house, server, watch};
use anyhow::{Context, Result, bail};
use std::path::PathBuf;
use std::thread;

/// The verb.
pub(crate) fn run(given: &[String]) -> Result<()> {
    let arguments = Arguments::read(given, &["--watch"], &["--port", "--dir", "--under"])?;
    let port: u16 = arguments
        .value("--port")
        .unwrap_or("8080")
        .parse()
        .context("--port wants a number from 1 to 65535")?;
    let under = arguments.value("--under").unwrap_or("/");
    if !under.starts_with('/') || !under.ends_with('/') {
        bail!("--under wants a path with / at both ends, such as /bread/");
    }
    // Asked before the build, so that nobody waits for a page that cannot be served.
    let listener = server::listen(port)?;
    let built = arguments.value("--dir").map(PathBuf::from);
    let folder = match &built {
        Some(folder) => folder.clone(),
        None => {
            build::build()?;
            house::dist()
        }
    };
    let serving = server::start(&folder, under, listener)?;
    println!("Softcrumb is at {}", serving.address);
    println!("Ctrl+C ends it.");
    if arguments.has("--watch") && built.is_none() {
        println!("Files are watched; each change is built, and said here.");
        thread::spawn(watch::rebuild_for_ever);
    }
    serving.wait();
    Ok(())
}
