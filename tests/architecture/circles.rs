//! No two files of the source need each other, directly or through others.

use std::collections::{BTreeMap, BTreeSet};

use crate::files::Read;
use crate::modules::Modules;

/// Circles that still wait to be broken; none may be added.
const OPEN: usize = 0;

type Edges<'f> = BTreeMap<&'f str, BTreeSet<&'f str>>;

/// Groups of files that all reach each other, each in the order of their names.
fn circles<'f>(edges: &Edges<'f>) -> Vec<Vec<&'f str>> {
    let reach: BTreeMap<&str, BTreeSet<&str>> = edges
        .keys()
        .map(|file| (*file, reached(edges, file)))
        .collect();
    let mut found = BTreeSet::new();
    for (file, reached) in &reach {
        if reached.contains(file) {
            let circle = reached.iter().filter(|other| reach[*other].contains(file));
            found.insert(circle.copied().collect());
        }
    }
    found.into_iter().collect()
}

/// Everything that `file` names, and what that names, and so on.
fn reached<'f>(edges: &Edges<'f>, file: &str) -> BTreeSet<&'f str> {
    let mut reached = BTreeSet::new();
    let mut open: Vec<&str> = edges[file].iter().copied().collect();
    while let Some(next) = open.pop() {
        if reached.insert(next) {
            open.extend(&edges[next]);
        }
    }
    reached
}

#[test]
fn no_files_need_each_other_in_a_circle() {
    let modules = Modules::read();
    let edges = modules.edges();
    let named: usize = edges.values().map(BTreeSet::len).sum();
    assert!(named > 1000, "only {named} names were followed");
    let circles = circles(&edges);
    let listed: Vec<String> = circles.iter().map(|files| files.join("\n  ")).collect();
    assert!(
        circles.len() <= OPEN,
        "{} circles:\n{}",
        circles.len(),
        listed.join("\n\n")
    );
}

#[test]
fn a_circle_is_found_through_what_a_folder_gives_on() {
    let file = |path: &str, text: &str| Read {
        path: path.to_owned(),
        text: text.to_owned(),
    };
    let modules = Modules::of(vec![
        file("src/lib.rs", "pub mod a;"),
        file(
            "src/a/mod.rs",
            "mod one; mod two; mod three; pub use one::One; pub use two::Two;",
        ),
        file("src/a/one.rs", "use super::Two; pub struct One(Two);"),
        file(
            "src/a/two.rs",
            "pub struct Two; fn f() { crate::a::three::g() }",
        ),
        file(
            "src/a/three.rs",
            "pub fn g() { let _: super::one::One; } #[cfg(test)] mod tests { use super::super::two::Two; }",
        ),
    ]);
    let edges = modules.edges();
    assert_eq!(
        circles(&edges),
        [["src/a/one.rs", "src/a/three.rs", "src/a/two.rs"]]
    );
}
