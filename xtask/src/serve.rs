//! `cargo xtask serve`: builds the page and serves it on this machine.

use crate::arguments::Arguments;
use crate::{build, paths, server, watch};
use anyhow::{Context, Result, bail};
use std::path::PathBuf;
use std::thread;

/// Runs the command.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let arguments = Arguments::read(arguments, &["--watch"], &["--port", "--dir", "--under"])?;
    let port: u16 = arguments
        .value("--port")
        .unwrap_or("8080")
        .parse()
        .context("--port needs a number from 0 to 65535")?;
    let under = arguments.value("--under").unwrap_or("/");
    if !under.starts_with('/') || !under.ends_with('/') {
        bail!("--under needs a path with / at both ends, such as /bread/");
    }
    // The port is checked before the build, so that nobody waits for a page that cannot be served.
    let listener = server::listen(port)?;
    let built = arguments.value("--dir").map(PathBuf::from);
    let folder = match &built {
        Some(folder) => folder.clone(),
        None => {
            build::build()?;
            paths::dist()
        }
    };
    let server = server::start(&folder, under, listener)?;
    println!("Softcrumb is at {}", server.address);
    println!("Ctrl+C ends it.");
    if arguments.has("--watch") && built.is_none() {
        println!("Watching the source: each change starts a build.");
        thread::spawn(watch::rebuild_forever);
    }
    server.wait();
    Ok(())
}
