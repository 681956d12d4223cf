//! The peer checks: our answers beside those of general-purpose Python libraries.

use crate::part::{self, Part};
use crate::{bring, house, step};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The part.
pub(crate) fn part() -> Part {
    match prepare() {
        Ok(python) => Part::counted(
            "peers",
            Command::new(python).current_dir(house::root()).args([
                "-m",
                "pytest",
                "-q",
                "-p",
                "no:cacheprovider",
                "tests/peers",
                "--ignore=tests/peers/venv",
            ]),
            part::pytest_s,
        ),
        Err(trouble) => Part::one("peers", || Err(trouble)),
    }
}

/// Makes the virtual environment, or again when the list of libraries changed; gives its Python.
pub(crate) fn prepare() -> Result<PathBuf> {
    let folder = house::root().join("tests/peers");
    let venv = folder.join("venv");
    let list = fs::read_to_string(folder.join("requirements.txt"))
        .context("tests/peers/requirements.txt cannot be read")?;
    let stamp = venv.join("installed.txt");
    let python = venv.join(if cfg!(windows) {
        "Scripts/python.exe"
    } else {
        "bin/python"
    });
    if fs::read_to_string(&stamp).is_ok_and(|installed| installed == list) {
        return Ok(python);
    }
    step::step(
        "Making a virtual environment for the peers (a minute or two)",
        || {
            make(&venv)?;
            step::run(
                Command::new(&python)
                    .args([
                        "-m",
                        "pip",
                        "install",
                        "--quiet",
                        "--disable-pip-version-check",
                        "-r",
                    ])
                    .arg(folder.join("requirements.txt")),
            )
        },
    )?;
    fs::write(stamp, list)?;
    Ok(python)
}

fn make(venv: &Path) -> Result<()> {
    let advice = "install Python 3.10 or later from python.org";
    if !bring::answers("python3") {
        bring::install("Python", &["python3", "python3-venv"], advice)?;
    }
    let mut command = Command::new("python3");
    command.args(["-m", "venv", "--clear"]).arg(venv);
    // Debian's Python comes without the part that makes environments.
    if step::run(&mut command).is_err() {
        bring::install("Python's venv", &["python3-venv"], advice)?;
        step::run(&mut command)?;
    }
    Ok(())
}
