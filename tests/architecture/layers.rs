//! Layers: engine ← sheet ← storage ← results ← text ← app. A module names its own layer and those to the left.

use crate::files::{below, code};

const LAYERS: [&str; 6] = ["engine", "sheet", "storage", "results", "text", "app"];

/// Every layer that a source text names through `crate::`, grouped or not.
fn named(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for piece in code(text).split("crate::").skip(1) {
        match piece.strip_prefix('{') {
            Some(group) => found.extend(firsts_of_group(group)),
            None => found.push(word(piece)),
        }
    }
    found.retain(|name| LAYERS.contains(&name.as_str()));
    found
}

/// `a::b, c::{d, e}, f}` → a, c, f.
fn firsts_of_group(group: &str) -> Vec<String> {
    let mut depth = 0_u32;
    let mut firsts = vec![word(group)];
    for (at, letter) in group.char_indices() {
        match letter {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => firsts.push(word(group.split_at(at + 1).1)),
            _ => {}
        }
    }
    firsts
}

fn word(text: &str) -> String {
    text.trim_start()
        .chars()
        .take_while(|letter| letter.is_alphanumeric() || *letter == '_')
        .collect()
}

#[test]
fn no_module_names_a_layer_above_its_own() {
    let mut upward = Vec::new();
    let mut looked_at = 0;
    for (rank, layer) in LAYERS.iter().enumerate() {
        for file in below(&format!("src/{layer}"), &[".rs"]) {
            for name in named(&file.text) {
                looked_at += 1;
                if LAYERS.iter().position(|known| *known == name).unwrap() > rank {
                    upward.push(format!("{} names {name}", file.path));
                }
            }
        }
    }
    assert!(upward.is_empty(), "{}", upward.join("\n"));
    assert!(looked_at > 20, "only {looked_at} names were read");
}

#[test]
fn names_are_found_in_groups_and_in_paths() {
    let text = "use crate::engine::heat;\nuse crate::{sheet::{a, engine}, text};\n// crate::app\nlet x = crate::app::start();";
    assert_eq!(named(text), ["engine", "sheet", "text", "app"]);
}

/// Only the page names the browser's libraries.
#[test]
fn only_the_page_names_the_browsers_libraries() {
    for layer in ["engine", "sheet", "storage", "results", "text"] {
        for file in below(&format!("src/{layer}"), &[".rs"]) {
            for library in ["leptos", "web_sys", "js_sys", "wasm_bindgen", "gloo"] {
                assert!(
                    !code(&file.text).contains(library),
                    "{} names {library}",
                    file.path
                );
            }
        }
    }
}
