//! The browser tests: installs Chromium and its driver where needed, serves the page, runs them.

use crate::check_report::{self, CheckReport};
use crate::{install_deps, paths, peers, server, step};
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Usual paths of Chrome and Chromium; tests/browser/browser.mjs tries the same.
const BROWSERS: [&str; 5] = [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
    "/usr/bin/google-chrome-stable",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/// Runs the browser tests on the built page.
pub(crate) fn check() -> CheckReport {
    let runner = || {
        prepare()?;
        let server = server::start(&paths::dist(), "/", server::listen(0)?)?;
        let mut command = node("run.mjs")?;
        command.env("SOFTCRUMB_ADDRESS", server.address);
        // Its libraries read printed pages and square codes.
        command.env("SOFTCRUMB_PYTHON", peers::prepare()?);
        Ok(command)
    };
    match runner() {
        Ok(mut command) => {
            CheckReport::counted("browser", &mut command, check_report::read_closing_line)
        }
        Err(error) => CheckReport::single("browser", || Err(error)),
    }
}

/// The command that runs a script of tests/browser.
pub(crate) fn node(script: &str) -> Result<Command> {
    let mut command = Command::new("node");
    command.current_dir(folder()).arg(script);
    command.env(
        "SOFTCRUMB_XTASK",
        std::env::current_exe().context("the path of xtask is unknown")?,
    );
    command.env("SOFTCRUMB_DIST", paths::dist());
    Ok(command)
}

fn folder() -> PathBuf {
    paths::root().join("tests/browser")
}

/// Installs Node, the browser and its driver where they are missing.
pub(crate) fn prepare() -> Result<()> {
    if !install_deps::is_available("node") || !install_deps::is_available("npm") {
        install_deps::require(
            "Node",
            &["nodejs", "npm"],
            "install Node 20 or later from nodejs.org",
        )?;
    }
    let windows = std::env::var_os("ProgramFiles")
        .map(|folder| PathBuf::from(folder).join("Google/Chrome/Application/chrome.exe"));
    let is_named = std::env::var_os("SOFTCRUMB_BROWSER").is_some();
    let is_installed = BROWSERS.iter().any(|path| Path::new(path).exists())
        || windows.is_some_and(|path| path.exists());
    if !is_named && !is_installed {
        install_deps::require(
            "Chromium",
            &["chromium", "fonts-dejavu-core", "fonts-noto-core"],
            "install Chrome or Chromium, and set SOFTCRUMB_BROWSER to its path if it is not found",
        )?;
    }
    install_packages("Installing the browser's driver", &folder())
}

/// Installs what only the measurements of `cargo xtask bench` need.
pub(crate) fn prepare_bench() -> Result<()> {
    install_packages("Installing Lighthouse", &folder().join("bench"))
}

/// Installs the packages that the lock file in `folder` names, where one is missing.
fn install_packages(name: &str, folder: &Path) -> Result<()> {
    // npm writes this file last; while it is newer than our lock file, everything is installed.
    let changed = |path: &str| {
        let about = folder.join(path).metadata();
        about.and_then(|about| about.modified()).ok()
    };
    let installed = changed("node_modules/.package-lock.json");
    if installed.is_none() || installed < changed("package-lock.json") {
        step::step(name, || {
            let npm = ["ci", "--no-audit", "--no-fund", "--silent"];
            step::run(Command::new("npm").current_dir(folder).args(npm))
        })?;
    }
    Ok(())
}
