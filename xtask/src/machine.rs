//! The machine the chores run on, as far as finding a compiler needs to know it.

use std::path::Path;
use std::process::{Command, Stdio};
use std::thread::sleep;
use std::time::{Duration, Instant};

/// What can be asked of a machine. A test puts a pretended one in its place.
pub(crate) trait Machine {
    /// What a program prints, when it is there and ends well.
    fn says(&self, program: &str, words: &[&str]) -> Option<String>;
    /// Names of what lies in a folder; none when there is no such folder.
    fn lists(&self, folder: &Path) -> Vec<String>;
    /// Runs a program in sight of the user, for so long at most; whether it ended well.
    fn brings(&self, program: &str, words: &[&str], at_most: Duration) -> bool;
}

/// This machine.
pub(crate) struct Here;

impl Machine for Here {
    fn says(&self, program: &str, words: &[&str]) -> Option<String> {
        let said = Command::new(program)
            .args(words)
            .stderr(Stdio::null())
            .output()
            .ok()?;
        said.status
            .success()
            .then(|| String::from_utf8_lossy(&said.stdout).trim().to_owned())
    }

    fn lists(&self, folder: &Path) -> Vec<String> {
        let Ok(entries) = std::fs::read_dir(folder) else {
            return Vec::new();
        };
        entries
            .flatten()
            .map(|entry| entry.file_name().to_string_lossy().into_owned())
            .collect()
    }

    fn brings(&self, program: &str, words: &[&str], at_most: Duration) -> bool {
        eprintln!("· {program} {} …", words.join(" "));
        let started = Command::new(program)
            .args(words)
            .env("DEBIAN_FRONTEND", "noninteractive")
            .stdout(Stdio::null())
            .spawn();
        let Ok(mut child) = started else { return false };
        let begun = Instant::now();
        while begun.elapsed() < at_most {
            match child.try_wait() {
                Ok(Some(status)) => return status.success(),
                Ok(None) => sleep(Duration::from_millis(100)),
                Err(_) => return false,
            }
        }
        eprintln!("  no end after {} s: given up", at_most.as_secs());
        let _gone = child.kill();
        let _ended = child.wait();
        false
    }
}
