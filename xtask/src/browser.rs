//! The browser's tests: brings Chromium and the driver where it may, serves the page, runs them.

use crate::part::{self, Part};
use crate::{bring, house, peers, server, step};
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Where Chrome or Chromium may stand; tests/browser/browser.mjs looks there too.
const PLACES: [&str; 5] = [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/// The part.
pub(crate) fn part() -> Part {
    let ready = || {
        prepare()?;
        let serving = server::start(&house::dist(), "/", server::listen(0)?)?;
        let mut command = node("run.mjs")?;
        command.env("SOFTCRUMB_ADDRESS", serving.address);
        // Printed pages and codes are read by the peers' decoder.
        command.env("SOFTCRUMB_PYTHON", peers::prepare()?);
        Ok(command)
    };
    match ready() {
        Ok(mut command) => Part::counted("browser", &mut command, part::ours),
        Err(trouble) => Part::one("browser", || Err(trouble)),
    }
}

/// A script of tests/browser, told where the page and the server are.
pub(crate) fn node(script: &str) -> Result<Command> {
    let mut command = Command::new("node");
    command.current_dir(folder()).arg(script);
    command.env(
        "SOFTCRUMB_XTASK",
        std::env::current_exe().context("xtask does not know where it is")?,
    );
    command.env("SOFTCRUMB_DIST", house::dist());
    Ok(command)
}

fn folder() -> PathBuf {
    house::root().join("tests/browser")
}

/// Sees to it that Node, the driver and a browser are there.
pub(crate) fn prepare() -> Result<()> {
    if !bring::answers("node") || !bring::answers("npm") {
        bring::install(
            "Node",
            &["nodejs", "npm"],
            "install Node 20 or later from nodejs.org",
        )?;
    }
    let windows = std::env::var_os("ProgramFiles")
        .map(|folder| PathBuf::from(folder).join("Google/Chrome/Application/chrome.exe"));
    let named = std::env::var_os("SOFTCRUMB_BROWSER").is_some();
    let there = PLACES.iter().any(|place| Path::new(place).exists())
        || windows.is_some_and(|place| place.exists());
    if !named && !there {
        bring::install(
            "Chromium",
            &["chromium", "fonts-dejavu-core", "fonts-noto-core"],
            "install Chrome or Chromium, and name it in SOFTCRUMB_BROWSER if it is still not found",
        )?;
    }
    // npm writes this list last: as long as it is newer than ours, all is there.
    let changed = |path: PathBuf| path.metadata().and_then(|about| about.modified()).ok();
    let installed = changed(folder().join("node_modules/.package-lock.json"));
    if installed.is_none() || installed < changed(folder().join("package-lock.json")) {
        step::step("Fetching the browser's driver", || {
            step::run(Command::new("npm").current_dir(folder()).args([
                "ci",
                "--no-audit",
                "--no-fund",
                "--silent",
            ]))
        })?;
    }
    Ok(())
}
