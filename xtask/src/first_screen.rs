//! Draws the first screen of the page on the host, with the components of the page.

use crate::paths;
use crate::step::command_line;
use anyhow::{Context, Result, bail};
use std::process::{Child, Command, Stdio};

/// Marks by which a page is taken over piece by piece; this one is replaced as a whole.
const MARKS: [&str; 2] = ["<!--<() />-->", "<!>"];

/// The drawing, in the background.
pub(crate) struct Drawing {
    child: Child,
    line: String,
}

/// Starts to compile the page for the host and to draw its first screen.
pub(crate) fn start() -> Result<Drawing> {
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo
        .current_dir(paths::root())
        .args(["run", "--quiet", "--bin", "softcrumb", "--target-dir"])
        .arg(paths::target().join("first_screen"))
        .env("RUSTFLAGS", "--cfg app_on_host --cfg erase_components")
        .env_remove("CARGO_ENCODED_RUSTFLAGS")
        .stdout(Stdio::piped());
    let line = command_line(&cargo);
    let child = cargo
        .spawn()
        .with_context(|| format!("could not start `{line}`"))?;
    Ok(Drawing { child, line })
}

impl Drawing {
    /// Waits for the HTML of the first screen.
    pub(crate) fn html(self) -> Result<String> {
        let output = self.child.wait_with_output()?;
        if !output.status.success() {
            bail!("`{}` ended with {}", self.line, output.status);
        }
        let html = String::from_utf8(output.stdout).context("the first screen is not UTF-8")?;
        Ok(without_marks(html.trim()))
    }
}

fn without_marks(html: &str) -> String {
    let plain = MARKS
        .iter()
        .fold(html.to_owned(), |html, mark| html.replace(mark, ""));
    // An empty text is written as a space.
    plain.replace("> </", "></")
}

#[cfg(test)]
mod tests {
    use super::without_marks;

    #[test]
    fn only_marks_go() {
        assert_eq!(
            without_marks("<p>58 g<!></p><!--<() />--><p> <!></p>"),
            "<p>58 g</p><p></p>"
        );
    }
}
