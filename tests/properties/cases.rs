//! How many cases a long sweep runs: a twentieth of them, or the percentage that is asked for.
//! Other test binaries take this file by its path.

/// The number of cases of a sweep that has `full` cases in all.
///
/// `SOFTCRUMB_CASES` is the percentage to run: 100 runs every case. Without it 5 % are run.
pub(crate) fn cases(full: u32) -> u32 {
    let asked = std::env::var("SOFTCRUMB_CASES").ok();
    let percent = asked.map_or(5, |asked| {
        asked
            .parse()
            .expect("SOFTCRUMB_CASES is a whole percentage")
    });
    full.saturating_mul(percent).div_ceil(100).max(1)
}
