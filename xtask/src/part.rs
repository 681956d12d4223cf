//! A part of the checks: what it found, counted truthfully, and how long it took.

use crate::step;
use anyhow::{Context, Result};
use std::io::{BufRead as _, BufReader};
use std::process::{Command, Stdio};
use std::time::Instant;

/// What came of a part.
pub(crate) struct Part {
    name: String,
    passed: u32,
    failed: u32,
    seconds: f64,
    note: String,
}

/// How a runner's lines tell passed and failed; lines that tell neither give none.
pub(crate) type Reader = fn(&str) -> Option<(u32, u32)>;

impl Part {
    /// A command that either succeeds or does not: one check.
    pub(crate) fn check(name: &str, command: &mut Command) -> Self {
        Self::one(name, || step::run(command))
    }

    /// Work that either succeeds or does not: one check.
    pub(crate) fn one(name: &str, work: impl FnOnce() -> Result<()>) -> Self {
        Self::timed(name, || work().map(|()| (1, 0)))
    }

    /// A runner of many tests, counted by what it prints.
    pub(crate) fn counted(name: &str, command: &mut Command, reader: Reader) -> Self {
        Self::timed(name, || count(command, reader))
    }

    /// Work that could not be begun, which is a failure too.
    pub(crate) fn timed(name: &str, work: impl FnOnce() -> Result<(u32, u32)>) -> Self {
        println!("\n== {name}");
        let begun = Instant::now();
        let (passed, failed, note) = match work() {
            Ok((passed, failed)) => (passed, failed, String::new()),
            Err(trouble) => (0, 1, format!("{trouble:#}")),
        };
        let part = Self {
            name: name.to_owned(),
            passed,
            failed,
            seconds: begun.elapsed().as_secs_f64(),
            note,
        };
        println!("{}", part.line());
        part
    }

    fn line(&self) -> String {
        let note = if self.note.is_empty() {
            String::new()
        } else {
            format!("\n    {}", self.note)
        };
        format!(
            "{:<34} {:>5} passed {:>4} failed {:>7.1} s{note}",
            self.name, self.passed, self.failed, self.seconds
        )
    }
}

/// Runs a command, shows its lines as they come, and adds up what they tell.
/// A runner that ends badly without a failed test, or that ran none at all, counts as one failure.
fn count(command: &mut Command, reader: Reader) -> Result<(u32, u32)> {
    let named = step::name(command);
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .with_context(|| format!("could not start `{named}`"))?;
    let (mut passed, mut failed) = (0, 0);
    if let Some(out) = child.stdout.take() {
        for line in BufReader::new(out).lines() {
            let line = line?;
            println!("{line}");
            if let Some((good, bad)) = reader(&line) {
                passed += good;
                failed += bad;
            }
        }
    }
    let ended_well = child.wait()?.success();
    let silent = failed == 0 && (!ended_well || passed == 0);
    Ok((passed, if silent { 1 } else { failed }))
}

/// Says all parts once more, then the sum on a line alone; whether nothing failed.
pub(crate) fn sum_up(parts: &[Part]) -> bool {
    println!("\n== All parts");
    for part in parts {
        println!("{}", part.line());
    }
    let passed: u32 = parts.iter().map(|part| part.passed).sum();
    let failed: u32 = parts.iter().map(|part| part.failed).sum();
    println!("{passed} passed, {failed} failed");
    failed == 0
}

/// `test result: ok. 12 passed; 0 failed; …`
pub(crate) fn cargo_s(line: &str) -> Option<(u32, u32)> {
    let counts = line.trim().strip_prefix("test result: ")?;
    Some((before(counts, " passed")?, before(counts, " failed")?))
}

/// `==== 3 failed, 21 passed, 1 warning in 4.32s ====`, or the same without the marks.
/// A test that breaks down or is skipped has not passed: both count as failed.
pub(crate) fn pytest_s(line: &str) -> Option<(u32, u32)> {
    let line = line.trim_matches(|letter| letter == '=' || letter == ' ');
    if !(line.ends_with('s') || line.ends_with(')')) || !line.contains(" in ") {
        return None;
    }
    let of = |word: &str| before(line, word);
    let (passed, failed, broken, skipped) =
        (of(" passed"), of(" failed"), of(" error"), of(" skipped"));
    if [passed, failed, broken, skipped]
        .iter()
        .all(Option::is_none)
    {
        return None;
    }
    let bad = failed.unwrap_or(0) + broken.unwrap_or(0) + skipped.unwrap_or(0);
    Some((passed.unwrap_or(0), bad))
}

/// `14 passed, 0 failed`
pub(crate) fn ours(line: &str) -> Option<(u32, u32)> {
    let (passed, failed) = line.strip_suffix(" failed")?.split_once(" passed, ")?;
    Some((passed.parse().ok()?, failed.parse().ok()?))
}

/// The number that stands right before a word.
fn before(line: &str, word: &str) -> Option<u32> {
    let (ahead, _behind) = line.split_once(word)?;
    ahead
        .rsplit(|letter: char| !letter.is_ascii_digit())
        .next()?
        .parse()
        .ok()
}

#[cfg(test)]
mod tests {
    use super::{cargo_s, count, ours, pytest_s};
    use std::process::Command;

    #[test]
    fn the_lines_of_each_runner_are_read() {
        assert_eq!(
            cargo_s(
                "test result: FAILED. 6 passed; 4 failed; 0 ignored; 0 measured; 2 filtered out"
            ),
            Some((6, 4))
        );
        assert_eq!(cargo_s("test reading ... ok"), None);
        assert_eq!(pytest_s("21 passed in 4.32s"), Some((21, 0)));
        assert_eq!(
            pytest_s("==== 3 failed, 21 passed, 1 warning in 64.00s (0:01:04) ===="),
            Some((21, 3))
        );
        assert_eq!(pytest_s("2 errors in 0.10s"), Some((0, 2)));
        assert_eq!(pytest_s("4 passed, 1 skipped in 0.10s"), Some((4, 1)));
        assert_eq!(pytest_s("tests/peers/one.py .... [100%]"), None);
        assert_eq!(ours("14 passed, 1 failed"), Some((14, 1)));
    }

    #[test]
    fn a_runner_that_breaks_down_or_runs_nothing_has_failed() {
        let mut breaks = Command::new("sh");
        breaks.args(["-c", "echo '3 passed, 0 failed'; exit 1"]);
        assert_eq!(count(&mut breaks, ours).unwrap(), (3, 1));
        let mut idle = Command::new("sh");
        idle.args(["-c", "true"]);
        assert_eq!(count(&mut idle, ours).unwrap(), (0, 1));
        assert!(count(&mut Command::new("no-such-runner"), ours).is_err());
    }
}
