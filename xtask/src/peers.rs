//! Compares the program's results with those of general-purpose Python libraries (`tests/peers`).

use crate::check_report::{self, CheckReport};
use crate::{install_deps, paths, step};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Runs the comparison.
pub(crate) fn check() -> CheckReport {
    match prepare() {
        Ok(python) => CheckReport::counted(
            "peers",
            Command::new(python).current_dir(paths::root()).args([
                "-m",
                "pytest",
                "-q",
                "-p",
                "no:cacheprovider",
                "tests/peers",
                "--ignore=tests/peers/venv",
            ]),
            check_report::read_pytest,
        ),
        Err(error) => CheckReport::single("peers", || Err(error)),
    }
}

/// Creates the virtual environment, again when the list of libraries has changed; returns its
/// Python.
pub(crate) fn prepare() -> Result<PathBuf> {
    let folder = paths::root().join("tests/peers");
    let venv = folder.join("venv");
    let requirements = folder.join("requirements.txt");
    let list =
        fs::read_to_string(&requirements).context("tests/peers/requirements.txt cannot be read")?;
    let stamp = venv.join("installed.txt");
    let python = venv.join(if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    });
    if fs::read_to_string(&stamp).is_ok_and(|installed| installed == list) {
        return Ok(python);
    }
    step::step("Installing Python libraries (a minute or two)", || {
        create(&venv)?;
        let pip = [
            "-m",
            "pip",
            "install",
            "--quiet",
            "--disable-pip-version-check",
            "-r",
        ];
        step::run(Command::new(&python).args(pip).arg(&requirements))
    })?;
    fs::write(stamp, list)?;
    Ok(python)
}

fn create(venv: &Path) -> Result<()> {
    let elsewhere = "install Python 3.10 or later from python.org";
    if !install_deps::is_available("python3") {
        install_deps::require("Python", &["python3", "python3-venv"], elsewhere)?;
    }
    let mut command = Command::new("python3");
    command.args(["-m", "venv", "--clear"]).arg(venv);
    // Debian packages venv separately.
    if step::run(&mut command).is_err() {
        install_deps::require("Python's venv", &["python3-venv"], elsewhere)?;
        step::run(&mut command)?;
    }
    Ok(())
}
