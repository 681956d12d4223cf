//! Builds again whenever a file of the page changes.

use crate::{build, house};
use std::fs;
use std::path::Path;
use std::thread::sleep;
use std::time::{Duration, SystemTime};

/// Looks twice a second; a build that fails says why and waits for the next change.
pub(crate) fn rebuild_for_ever() {
    let mut known = newest();
    loop {
        sleep(Duration::from_millis(500));
        let found = newest();
        if found == known {
            continue;
        }
        known = found;
        match build::build() {
            Ok(_) => println!(
                "Built again. Reload the page; where it says that a newer release is ready, open that."
            ),
            Err(trouble) => {
                eprintln!(
                    "Not built: {trouble:#}\nThe last good page is still served. The next change is tried again."
                );
            }
        }
    }
}

/// The time of the latest change, and how many files there are: one may have gone.
fn newest() -> (Option<SystemTime>, usize) {
    let mut latest = (None, 0);
    for path in ["src", "style", "index.html", "Cargo.toml"] {
        look(&house::root().join(path), &mut latest);
    }
    latest
}

fn look(path: &Path, latest: &mut (Option<SystemTime>, usize)) {
    if let Ok(entries) = fs::read_dir(path) {
        for entry in entries.flatten() {
            look(&entry.path(), latest);
        }
    } else if let Ok(about) = fs::metadata(path) {
        latest.0 = latest.0.max(about.modified().ok());
        latest.1 += 1;
    }
}
