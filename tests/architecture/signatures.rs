//! No bare number in a public signature of the engine.

use crate::files::{below, code};

/// Public functions of a text, each up to its body.
fn public_functions(text: &str) -> Vec<String> {
    let code = code(text);
    let mut found = Vec::new();
    for start in ["pub fn ", "pub const fn "] {
        for piece in code.split(start).skip(1) {
            let end = piece.find(['{', ';']).unwrap_or(piece.len());
            found.push(piece.split_at(end).0.trim().to_owned());
        }
    }
    found
}

/// Only quantities, numerical methods and working take or give bare numbers.
#[test]
fn public_functions_of_the_engine_take_and_give_quantities() {
    let mut bare = Vec::new();
    for file in below("src/engine", &[".rs"]) {
        let may = [
            "src/engine/quantity/",
            "src/engine/numerics/",
            "src/engine/working/",
        ];
        if may.iter().any(|folder| file.path.starts_with(folder)) {
            continue;
        }
        for function in public_functions(&file.text) {
            if function.contains("f64") || function.contains("f32") {
                bare.push(format!("{}: {function}", file.path));
            }
        }
    }
    assert!(bare.is_empty(), "{}", bare.join("\n"));
}

#[test]
fn signatures_over_several_lines_are_read() {
    let text = "pub fn a(\n    b: f64,\n) -> C {\n    d\n}\npub(crate) fn e(f: f64) {}\n";
    assert_eq!(public_functions(text), ["a(\n    b: f64,\n) -> C"]);
}
