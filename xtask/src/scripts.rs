//! Scripts as they are served: without comments, blank lines and indents.

/// Removes lines that are comments, blank lines and indents. Every other line end stays, so that
/// statements end where they did. A script must hold no text of several lines.
pub(crate) fn without_comments(script: &str) -> String {
    let lines: Vec<&str> = script
        .lines()
        .map(str::trim)
        .filter(|line| !line.is_empty() && !line.starts_with("//"))
        .collect();
    lines.join("\n")
}

#[cfg(test)]
mod tests {
    use super::without_comments;

    #[test]
    fn what_runs_stays_line_by_line() {
        let script = "// Says it.\nfunction say(what) {\n  // Once.\n\n  return `${what} // not a comment`;\n}\n";
        assert_eq!(
            without_comments(script),
            "function say(what) {\nreturn `${what} // not a comment`;\n}"
        );
    }
}
