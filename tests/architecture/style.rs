//! Rules for every file: a first line that says its job, at most 300 lines, a name, nothing unfinished.

use crate::files::{Read, below};

/// The longest a file may be, in lines.
const LONGEST: usize = 300;

fn ours() -> Vec<Read> {
    let mut files = below("src", &[".rs", ".js"]);
    files.extend(below("xtask", &[".rs"]));
    files.extend(below("tests", &[".rs", ".mjs"]));
    files
}

#[test]
fn every_file_says_its_job_in_its_first_line() {
    for file in ours() {
        let first = file.text.lines().next().unwrap_or_default();
        assert!(
            first.starts_with("//! ") && first.len() > 8,
            "{} begins: {first}",
            file.path
        );
    }
}

#[test]
fn no_file_is_longer_than_300_lines() {
    let mut files = ours();
    files.extend(below("style", &[".css", ".svg"]));
    let long: Vec<String> = files
        .iter()
        .filter(|file| file.text.lines().count() > LONGEST)
        .map(|file| format!("{}: {} lines", file.path, file.text.lines().count()))
        .collect();
    assert!(long.is_empty(), "{}", long.join("\n"));
}

#[test]
fn no_file_has_an_empty_name_such_as_utils() {
    for file in ours() {
        let name = file.path.rsplit('/').next().unwrap();
        for empty in [
            "utils.", "util.", "helpers.", "helper.", "common.", "types.", "manager.", "misc.",
        ] {
            assert!(!name.starts_with(empty), "{}", file.path);
        }
    }
}

#[test]
fn nothing_is_unfinished_or_skipped() {
    let words = [
        concat!("dbg", "!("),
        concat!("todo", "!("),
        concat!("unimplemented", "!("),
        concat!("#[ign", "ore"),
        concat!("#[should_", "panic"),
        concat!("TO", "DO"),
        concat!("FIX", "ME"),
        concat!("test", ".skip("),
        concat!("test", ".only("),
    ];
    for file in ours() {
        for word in words {
            assert!(!file.text.contains(word), "{} holds {word}", file.path);
        }
    }
}
