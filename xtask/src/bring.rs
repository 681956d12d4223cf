//! Brings programs that the checks need, where it may; else says how.

use crate::machine::{Here, Machine};
use anyhow::{Result, bail};
use std::time::Duration;

/// Whether a program answers when asked for its version.
pub(crate) fn answers(program: &str) -> bool {
    Here.says(program, &["--version"]).is_some()
}

/// Installs Debian's `packages` when run by root there; `what` is what for, `else_do` what another machine's owner can do.
pub(crate) fn install(what: &str, packages: &[&str], else_do: &str) -> Result<()> {
    let root = Here.says("id", &["-u"]).as_deref() == Some("0");
    let minutes_10 = Duration::from_secs(600);
    let hand = format!(
        "apt-get install --no-install-recommends {}",
        packages.join(" ")
    );
    if !root || !answers("apt-get") {
        bail!("{what} is missing here. On Debian, as root: `{hand}`. Elsewhere: {else_do}");
    }
    Here.brings("apt-get", &["update", "-qq"], minutes_10);
    let mut words = vec!["install", "-y", "-qq", "--no-install-recommends"];
    words.extend(packages);
    if !Here.brings("apt-get", &words, minutes_10) {
        bail!("{what} could not be brought. Try it by hand: `{hand}`");
    }
    Ok(())
}
