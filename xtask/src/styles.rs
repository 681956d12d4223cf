//! Joins the style sheets into the two that the page loads: that of the first screen, and that of
//! what loads later.

use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};

/// The page's style sheets.
pub(crate) struct Styles {
    /// That of the first screen.
    pub(crate) first: String,
    /// That of what loads later, and comes with the first of it.
    pub(crate) later: String,
}

/// Joins the files below `style` in the order of the cascade: tokens, base, parts, places; later
/// parts, later places, print.
pub(crate) fn join(style: &Path) -> Result<Styles> {
    let later = style.join("later");
    let mut first = vec![style.join("tokens.css"), style.join("base.css")];
    first.extend(parts_and_pages(style));
    let mut rest = parts_and_pages(&later);
    rest.push(later.join("print.css"));
    Ok(Styles {
        first: joined(&first)?,
        later: joined(&rest)?,
    })
}

fn joined(files: &[PathBuf]) -> Result<String> {
    let mut joined = String::new();
    for file in files.iter().filter(|file| file.is_file()) {
        let text = fs::read_to_string(file)
            .with_context(|| format!("{} cannot be read", file.display()))?;
        joined.push_str(&expand_dark(&without_comments(&text)));
        joined.push('\n');
    }
    Ok(joined)
}

fn parts_and_pages(folder: &Path) -> Vec<PathBuf> {
    let mut files = sheets_in(&folder.join("part"));
    files.extend(sheets_in(&folder.join("page")));
    files
}

/// Expands `@dark { … }` into two rules: one for a dark device, one for users who chose dark.
fn expand_dark(text: &str) -> String {
    let Some((before, rest)) = text.split_once("@dark {") else {
        return text.to_owned();
    };
    let (list, after) = rest.split_once('}').unwrap_or((rest, ""));
    let device = format!(
        "@media (prefers-color-scheme: dark) {{\n:root:not([data-theme=\"light\"]) {{{list}}}\n}}"
    );
    format!("{before}{device}\n:root[data-theme=\"dark\"] {{{list}}}{after}")
}

fn sheets_in(folder: &Path) -> Vec<PathBuf> {
    let Ok(entries) = fs::read_dir(folder) else {
        return Vec::new();
    };
    let mut found: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).collect();
    found.retain(|path| path.extension().is_some_and(|end| end == "css"));
    found.sort();
    found
}

/// Removes comments, blank lines and indents.
fn without_comments(text: &str) -> String {
    let mut code = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("/*") {
        code.push_str(before);
        rest = after.split_once("*/").map_or("", |(_comment, after)| after);
    }
    code.push_str(rest);
    let lines: Vec<&str> = code
        .lines()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .collect();
    lines.join("\n")
}

#[cfg(test)]
mod tests {
    use super::{expand_dark, without_comments};

    #[test]
    fn the_dark_list_goes_into_both_rules_and_the_rest_is_unchanged() {
        assert_eq!(expand_dark("a { b: c; }"), "a { b: c; }");
        assert_eq!(
            expand_dark("a { b: c; }\n@dark {\n--ink: #fff;\n}\nd { e: f; }"),
            "a { b: c; }\n@media (prefers-color-scheme: dark) {\n:root:not([data-theme=\"light\"]) \
             {\n--ink: #fff;\n}\n}\n:root[data-theme=\"dark\"] {\n--ink: #fff;\n}\nd { e: f; }"
        );
    }

    #[test]
    fn comments_blank_lines_and_indents_are_removed() {
        assert_eq!(
            without_comments("/* a */\nb { c: d; }\n\n  /* e\nf */ g {}\n"),
            "b { c: d; }\ng {}"
        );
    }
}
