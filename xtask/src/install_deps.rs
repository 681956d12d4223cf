//! Runs programs that may be missing, and installs Debian's packages for them.

use anyhow::{Result, bail};
use std::process::{Command, Stdio};

/// Runs a program; returns its output, when it is there and succeeds. Tests pass a mock.
pub(crate) type Run<'a> = &'a dyn Fn(&str, &[&str]) -> Option<String>;

/// Runs a program of this machine.
pub(crate) fn run(program: &str, arguments: &[&str]) -> Option<String> {
    let output = Command::new(program)
        .args(arguments)
        .env("DEBIAN_FRONTEND", "noninteractive")
        .stderr(Stdio::inherit())
        .output()
        .ok()?;
    let printed = String::from_utf8_lossy(&output.stdout).trim().to_owned();
    output.status.success().then_some(printed)
}

/// Whether a program of this machine runs.
pub(crate) fn is_available(program: &str) -> bool {
    run(program, &["--version"]).is_some()
}

/// The command that installs `packages`.
pub(crate) fn apt_command(packages: &[String]) -> String {
    let list = packages.join(" ");
    format!("apt-get install --no-install-recommends {list}")
}

/// Installs `packages`, as root on Debian only; whether that succeeded.
pub(crate) fn apt_install(run: Run<'_>, packages: &[String]) -> bool {
    if run("id", &["-u"]).as_deref() != Some("0") || run("apt-get", &["--version"]).is_none() {
        return false;
    }
    eprintln!("· {} …", apt_command(packages));
    let _updated = run("apt-get", &["update", "-qq"]);
    let mut arguments = vec!["install", "-y", "-qq", "--no-install-recommends"];
    arguments.extend(packages.iter().map(String::as_str));
    run("apt-get", &arguments).is_some()
}

/// Installs `packages`, which hold `what`.
///
/// # Errors
/// Says what to install by hand: on Debian the packages, on other systems `elsewhere`.
pub(crate) fn require(what: &str, packages: &[&str], elsewhere: &str) -> Result<()> {
    let packages: Vec<String> = packages.iter().map(|&name| name.to_owned()).collect();
    if apt_install(&run, &packages) {
        return Ok(());
    }
    bail!(
        "{what} is missing. On Debian, run as root: `{}`. On other systems: {elsewhere}",
        apt_command(&packages)
    );
}
