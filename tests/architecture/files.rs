//! Reads the project's files for the tests of this folder.

use std::fs;
use std::path::Path;

/// A file: its path below the project, with `/`, and its text.
pub(crate) struct Read {
    pub(crate) path: String,
    pub(crate) text: String,
}

/// All files below `folder` whose name ends in one of `ends`; panics if there are none.
pub(crate) fn below(folder: &str, ends: &[&str]) -> Vec<Read> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    walk(root, &root.join(folder), ends, &mut found);
    assert!(!found.is_empty(), "no file found below {folder}");
    found
}

fn walk(root: &Path, folder: &Path, ends: &[&str], found: &mut Vec<Read>) {
    let Ok(entries) = fs::read_dir(folder) else {
        return;
    };
    for entry in entries {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_str().unwrap().to_owned();
        if path.is_dir() {
            if !["node_modules", "venv", "target", "shots"].contains(&name.as_str()) {
                walk(root, &path, ends, found);
            }
        } else if ends.iter().any(|end| name.ends_with(end)) {
            let below_root = path.strip_prefix(root).unwrap().to_str().unwrap();
            found.push(Read {
                path: below_root.replace('\\', "/"),
                text: fs::read_to_string(&path).unwrap(),
            });
        }
    }
}

/// The text without `//` comments.
pub(crate) fn code(text: &str) -> String {
    text.lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .collect::<Vec<_>>()
        .join("\n")
}
