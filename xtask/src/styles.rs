//! Joins the style sheets into the one the page loads.

use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};

/// The order is the cascade: values, ground, parts, places, paper. What does not exist is left out.
pub(crate) fn join(style: &Path) -> Result<String> {
    let mut files = vec![style.join("tokens.css"), style.join("base.css")];
    files.extend(sheets_in(&style.join("part")));
    files.extend(sheets_in(&style.join("page")));
    files.push(style.join("print.css"));
    let mut joined = String::new();
    for file in files.iter().filter(|file| file.is_file()) {
        let text = fs::read_to_string(file)
            .with_context(|| format!("{} cannot be read", file.display()))?;
        joined.push_str(&without_comments(&text));
        joined.push('\n');
    }
    Ok(joined)
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

/// Comments are for us; the phone need not fetch them. Blank lines and indents go with them.
fn without_comments(text: &str) -> String {
    let mut kept = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once("/*") {
        kept.push_str(before);
        rest = after.split_once("*/").map_or("", |(_comment, after)| after);
    }
    kept.push_str(rest);
    let lines: Vec<&str> = kept
        .lines()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .collect();
    lines.join("\n")
}

#[cfg(test)]
mod tests {
    use super::without_comments;

    #[test]
    fn comments_and_blank_lines_stay_at_home() {
        assert_eq!(
            without_comments("/* a */\nb { c: d; }\n\n  /* e\nf */ g {}\n"),
            "b { c: d; }\ng {}"
        );
    }
}
