//! Builds the page again whenever a source file changes.

use crate::{build, paths};
use std::fs;
use std::path::Path;
use std::thread::sleep;
use std::time::{Duration, SystemTime};

/// Checks twice a second; after a failed build it prints why and waits for the next change.
pub(crate) fn rebuild_forever() {
    let mut known = state();
    loop {
        sleep(Duration::from_millis(500));
        let found = state();
        if found == known {
            continue;
        }
        known = found;
        match build::build() {
            Ok(_) => println!(
                "Built. Reload the page; where it says that a newer release is ready, open that."
            ),
            Err(error) => eprintln!(
                "Build failed: {error:#}\nThe last good page is still served. The next change starts a new build."
            ),
        }
    }
}

/// The latest change of a file, and the number of files, which tells of removed ones.
fn state() -> (Option<SystemTime>, usize) {
    let mut state = (None, 0);
    for path in ["src", "style", "index.html", "Cargo.toml"] {
        add(&paths::root().join(path), &mut state);
    }
    state
}

fn add(path: &Path, state: &mut (Option<SystemTime>, usize)) {
    if let Ok(entries) = fs::read_dir(path) {
        for entry in entries.flatten() {
            add(&entry.path(), state);
        }
    } else if let Ok(metadata) = fs::metadata(path) {
        state.0 = state.0.max(metadata.modified().ok());
        state.1 += 1;
    }
}
