//! A step of a chore: said before it begins, timed when it ends.

use anyhow::{Context, Result, bail};
use std::process::Command;
use std::time::Instant;

/// Says `what`, does it, and says how long it took.
pub(crate) fn step<T>(what: &str, work: impl FnOnce() -> Result<T>) -> Result<T> {
    eprintln!("· {what} …");
    let begun = Instant::now();
    let done = work()?;
    eprintln!("  done in {:.1} s", begun.elapsed().as_secs_f64());
    Ok(done)
}

/// Runs a command to its end; a failure names the command.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let named = name(command);
    let status = command
        .status()
        .with_context(|| format!("could not start `{named}`"))?;
    if !status.success() {
        bail!("`{named}` ended with {status}");
    }
    Ok(())
}

/// A command as one would type it.
pub(crate) fn name(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy().into_owned()];
    words.extend(
        command
            .get_args()
            .map(|word| word.to_string_lossy().into_owned()),
    );
    words.join(" ")
}
