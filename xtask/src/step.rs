//! Runs one step of a command: prints its name first and its time afterwards.

use anyhow::{Context, Result, bail};
use std::process::Command;
use std::time::Instant;

/// Prints `name`, does the work, prints how long it took.
pub(crate) fn step<T>(name: &str, work: impl FnOnce() -> Result<T>) -> Result<T> {
    eprintln!("· {name} …");
    let started = Instant::now();
    let result = work()?;
    eprintln!("  done in {:.1} s", started.elapsed().as_secs_f64());
    Ok(result)
}

/// Runs a program to its end; the error names the command line.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let line = command_line(command);
    let status = command
        .status()
        .with_context(|| format!("could not start `{line}`"))?;
    if !status.success() {
        bail!("`{line}` ended with {status}");
    }
    Ok(())
}

/// The command as typed in a shell.
pub(crate) fn command_line(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy().into_owned()];
    words.extend(
        command
            .get_args()
            .map(|word| word.to_string_lossy().into_owned()),
    );
    words.join(" ")
}
