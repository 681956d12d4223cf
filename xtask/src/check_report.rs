//! What a check found: how many tests passed and failed, and how long it took.

use crate::step;
use anyhow::{Context, Result};
use std::io::{BufRead as _, BufReader};
use std::process::{Command, Stdio};
use std::time::Instant;

/// The result of a check.
pub(crate) struct CheckReport {
    name: String,
    passed: u32,
    failed: u32,
    seconds: f64,
    error: String,
}

/// Reads the numbers of passed and failed tests from a line of a test runner; most lines have none.
pub(crate) type LineReader = fn(&str) -> Option<(u32, u32)>;

impl CheckReport {
    /// Runs a program: one test, which passes when the program succeeds.
    pub(crate) fn command(name: &str, command: &mut Command) -> Self {
        Self::single(name, || step::run(command))
    }

    /// Does some work: one test, which passes when the work succeeds.
    pub(crate) fn single(name: &str, work: impl FnOnce() -> Result<()>) -> Self {
        Self::timed(name, || work().map(|()| (1, 0)))
    }

    /// Runs a test runner and adds up the numbers it prints.
    pub(crate) fn counted(name: &str, command: &mut Command, reader: LineReader) -> Self {
        Self::timed(name, || count(command, reader))
    }

    /// Prints the name, does the work, prints the result. An error counts as one failed test.
    fn timed(name: &str, work: impl FnOnce() -> Result<(u32, u32)>) -> Self {
        println!("\n== {name}");
        let started = Instant::now();
        let (passed, failed, error) = match work() {
            Ok((passed, failed)) => (passed, failed, String::new()),
            Err(error) => (0, 1, format!("\n    {error:#}")),
        };
        let report = Self {
            name: name.to_owned(),
            passed,
            failed,
            seconds: started.elapsed().as_secs_f64(),
            error,
        };
        println!("{}", report.line());
        report
    }

    fn line(&self) -> String {
        format!(
            "{:<34} {:>5} passed {:>4} failed {:>7.1} s{}",
            self.name, self.passed, self.failed, self.seconds, self.error
        )
    }
}

/// Runs a test runner, prints its lines, and adds up their numbers. A runner that fails without a
/// failed test, or that ran no test, counts as one failure.
fn count(command: &mut Command, reader: LineReader) -> Result<(u32, u32)> {
    let line = step::command_line(command);
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .with_context(|| format!("could not start `{line}`"))?;
    let (mut passed, mut failed) = (0, 0);
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).lines() {
            let line = line?;
            println!("{line}");
            if let Some((more_passed, more_failed)) = reader(&line) {
                passed += more_passed;
                failed += more_failed;
            }
        }
    }
    let succeeded = child.wait()?.success();
    let is_uncounted_failure = failed == 0 && (!succeeded || passed == 0);
    Ok((passed, if is_uncounted_failure { 1 } else { failed }))
}

/// Prints all reports, then their sum on a line of its own; whether nothing failed.
pub(crate) fn summarize(reports: &[CheckReport]) -> bool {
    println!("\n== All checks");
    for report in reports {
        println!("{}", report.line());
    }
    let passed: u32 = reports.iter().map(|report| report.passed).sum();
    let failed: u32 = reports.iter().map(|report| report.failed).sum();
    println!("{passed} passed, {failed} failed");
    failed == 0
}

/// Reads `test result: ok. 12 passed; 0 failed; …`.
pub(crate) fn read_cargo_test(line: &str) -> Option<(u32, u32)> {
    let counts = line.trim().strip_prefix("test result: ")?;
    Some((
        number_before(counts, " passed")?,
        number_before(counts, " failed")?,
    ))
}

/// Reads `==== 3 failed, 21 passed, 1 warning in 4.32s ====`, or the same without the marks.
/// Errors and skipped tests count as failed.
pub(crate) fn read_pytest(line: &str) -> Option<(u32, u32)> {
    let line = line.trim_matches(|letter| letter == '=' || letter == ' ');
    if !(line.ends_with('s') || line.ends_with(')')) || !line.contains(" in ") {
        return None;
    }
    let passed = number_before(line, " passed");
    let failures = [" failed", " error", " skipped"].map(|word| number_before(line, word));
    if passed.is_none() && failures.iter().all(Option::is_none) {
        return None;
    }
    Some((passed.unwrap_or(0), failures.into_iter().flatten().sum()))
}

/// Reads `14 passed, 0 failed`.
pub(crate) fn read_closing_line(line: &str) -> Option<(u32, u32)> {
    let (passed, failed) = line.strip_suffix(" failed")?.split_once(" passed, ")?;
    Some((passed.parse().ok()?, failed.parse().ok()?))
}

/// The number right before a word.
fn number_before(line: &str, word: &str) -> Option<u32> {
    let (before, _) = line.split_once(word)?;
    before
        .rsplit(|letter: char| !letter.is_ascii_digit())
        .next()?
        .parse()
        .ok()
}

#[cfg(test)]
mod tests {
    use super::{count, read_cargo_test, read_closing_line, read_pytest};
    use std::process::Command;

    #[test]
    fn the_lines_of_each_runner_are_read() {
        assert_eq!(
            read_cargo_test(
                "test result: FAILED. 6 passed; 4 failed; 0 ignored; 0 measured; 2 filtered out"
            ),
            Some((6, 4))
        );
        assert_eq!(read_cargo_test("test reading ... ok"), None);
        assert_eq!(read_pytest("21 passed in 4.32s"), Some((21, 0)));
        assert_eq!(
            read_pytest("==== 3 failed, 21 passed, 1 warning in 64.00s (0:01:04) ===="),
            Some((21, 3))
        );
        assert_eq!(read_pytest("2 errors in 0.10s"), Some((0, 2)));
        assert_eq!(read_pytest("4 passed, 1 skipped in 0.10s"), Some((4, 1)));
        assert_eq!(read_pytest("tests/peers/one.py .... [100%]"), None);
        assert_eq!(read_closing_line("14 passed, 1 failed"), Some((14, 1)));
    }

    #[test]
    fn a_runner_that_fails_or_runs_no_test_counts_as_failed() {
        let mut fails = Command::new("sh");
        fails.args(["-c", "echo '3 passed, 0 failed'; exit 1"]);
        assert_eq!(count(&mut fails, read_closing_line).unwrap(), (3, 1));
        let mut empty = Command::new("sh");
        empty.args(["-c", "true"]);
        assert_eq!(count(&mut empty, read_closing_line).unwrap(), (0, 1));
        assert!(count(&mut Command::new("no-such-runner"), read_closing_line).is_err());
    }
}
