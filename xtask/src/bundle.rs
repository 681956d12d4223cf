//! Puts the built page together: names, sums, the shell, and the service worker's list.

use crate::bind::Bound;
use crate::crumbs;
use crate::cut::{LOADER, SCRIPT};
use crate::headers::POLICY;
use crate::language;
use crate::packed::{self, Packed};
use anyhow::{Context, Result, bail};
use std::fmt::Write as _;
use std::fs;
use std::path::Path;

/// The texts a page is made of.
pub(crate) struct Pieces {
    /// What binding gave.
    pub(crate) bound: Bound,
    /// The languages beside English: tag, and catalogue as the page reads it.
    pub(crate) languages: Vec<(String, String)>,
    /// The joined style sheets.
    pub(crate) styles: String,
    /// The shell, `index.html` at the top of the project.
    pub(crate) shell: String,
    /// The script that starts the page.
    pub(crate) boot: String,
    /// The service worker.
    pub(crate) worker: String,
    /// The manifest, with the icons' names as they lie in `style/icons`.
    pub(crate) manifest: String,
    /// Icons: name and bytes.
    pub(crate) icons: Vec<(String, Vec<u8>)>,
}

/// Writes the page into `folder`, in place of what was there; gives its files.
///
/// It is written beside it first: a page that is being served is whole at any moment, and stays
/// where this one cannot be written.
pub(crate) fn write(pieces: Pieces, folder: &Path) -> Result<Vec<Packed>> {
    let next = folder.with_extension("next");
    let files = write_into(pieces, &next)?;
    let last = folder.with_extension("last");
    empty(&last)?;
    if folder.exists() {
        fs::rename(folder, &last)
            .with_context(|| format!("{} cannot be put aside", folder.display()))?;
    }
    fs::rename(&next, folder)
        .with_context(|| format!("{} cannot be put in place", folder.display()))?;
    empty(&last)?;
    Ok(files)
}

/// Takes a folder away, where there is one.
fn empty(folder: &Path) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder)
            .with_context(|| format!("{} cannot be emptied", folder.display()))?;
    }
    Ok(())
}

fn write_into(pieces: Pieces, folder: &Path) -> Result<Vec<Packed>> {
    let mut page = Page::begin(folder)?;
    page.brought(pieces.bound.brought)?;
    let wasm = page.hashed("softcrumb.wasm", pieces.bound.wasm)?;
    let loader = match pieces.bound.loader {
        Some(loader) => Some(page.pieces(loader, pieces.bound.pieces)?),
        None => None,
    };
    let (script, loader) = page.scripts(pieces.bound.script, loader)?;
    let boot = fill(
        &pieces.boot,
        &[
            ("script", &script.0),
            ("wasm", &wasm.0),
            ("wasm_sum", &wasm.1),
            ("words", &language::first_words(&pieces.languages)),
        ],
    )?;
    let boot = page.hashed("boot.js", boot.into_bytes())?;
    let styles = page.hashed("app.css", pieces.styles.into_bytes())?;
    let languages = page.languages(pieces.languages)?;
    let (manifest, icon) = page.manifest(pieces.manifest, pieces.icons)?;
    let values = [
        ("policy", POLICY),
        ("styles", &styles.0),
        ("styles_sum", &styles.1),
        ("script", &script.0),
        ("script_sum", &script.1),
        ("loader", &loader),
        ("languages", &languages),
        ("boot", &boot.0),
        ("boot_sum", &boot.1),
        ("wasm", &wasm.0),
        ("manifest", &manifest),
        ("icon", &icon),
    ];
    let shell = fill(&pieces.shell, &values)?;
    page.plain("index.html", shell.into_bytes())?;
    page.worker(&pieces.worker)?;
    Ok(page.files)
}

struct Page<'a> {
    folder: &'a Path,
    files: Vec<Packed>,
}

impl<'a> Page<'a> {
    /// Begins with an empty folder.
    fn begin(folder: &'a Path) -> Result<Self> {
        empty(folder)?;
        Ok(Self {
            folder,
            files: Vec::new(),
        })
    }

    fn plain(&mut self, path: &str, bytes: Vec<u8>) -> Result<()> {
        self.files.push(packed::write(self.folder, path, bytes)?);
        Ok(())
    }

    /// Writes what binding brings along, under the names it is asked for by.
    fn brought(&mut self, files: Vec<(String, String)>) -> Result<()> {
        for (path, text) in files {
            self.plain(&path, text.into_bytes())?;
        }
        Ok(())
    }

    /// Name with the content in it, and sum.
    fn hashed(&mut self, name: &str, bytes: Vec<u8>) -> Result<(String, String)> {
        let given = (packed::hashed_name(name, &bytes), packed::sum(&bytes));
        self.plain(&given.0, bytes)?;
        Ok(given)
    }

    /// Writes the pieces; gives the script that loads them, with their names and sums put in.
    fn pieces(&mut self, mut loader: String, pieces: Vec<(String, Vec<u8>)>) -> Result<String> {
        let (own, crumbs) = crumbs::sort_out(pieces);
        for (name, bytes) in own {
            let (path, sum) = self.hashed(&name, bytes)?;
            let held = format!(
                "fetch(new URL(\"./{path}\", import.meta.url), {{ integrity: \"{sum}\" }})"
            );
            loader = asking(&loader, &name, &held)?;
        }
        if crumbs.places.is_empty() {
            return Ok(loader);
        }
        for (name, place) in &crumbs.places {
            loader = asking(&loader, name, &crumbs::ask(place))?;
        }
        let (path, sum) = self.hashed("chunk_small.wasm", crumbs.bytes)?;
        loader.push_str(&crumbs::finder(&path, &sum));
        Ok(loader)
    }

    /// Writes the page's script and the one that loads pieces. They name each other, so both
    /// carry the content of both. Gives name and sum of the first, and the second's line in the shell.
    fn scripts(
        &mut self,
        script: String,
        loader: Option<String>,
    ) -> Result<((String, String), String)> {
        let Some(loader) = loader else {
            return Ok((
                self.hashed("softcrumb.js", script.into_bytes())?,
                String::new(),
            ));
        };
        let both = [script.as_bytes(), loader.as_bytes()].concat();
        let (script_path, loader_path) = (
            packed::hashed_name("softcrumb.js", &both),
            packed::hashed_name("pieces.js", &both),
        );
        // Only where a script is asked for: the binary still calls the loader by its first name.
        let from = |name: &str| format!("from \"{name}\"");
        let script = script
            .replace(&from(LOADER), &from(&format!("./{loader_path}")))
            .into_bytes();
        let loader = loader
            .replace(&from(SCRIPT), &from(&format!("./{script_path}")))
            .into_bytes();
        let (script_sum, loader_sum) = (packed::sum(&script), packed::sum(&loader));
        self.plain(&script_path, script)?;
        self.plain(&loader_path, loader)?;
        let line = format!(
            "<link rel=\"modulepreload\" href=\"./{loader_path}\" integrity=\"{loader_sum}\">"
        );
        Ok(((script_path, script_sum), line))
    }

    /// Writes the catalogues; gives a line of the shell for each, which says where it is.
    fn languages(&mut self, languages: Vec<(String, String)>) -> Result<String> {
        let mut lines = Vec::new();
        for (tag, catalogue) in languages {
            let (path, _sum) = self.hashed(&format!("{tag}.txt"), catalogue.into_bytes())?;
            lines.push(format!(
                "<meta name=\"language-{tag}\" content=\"./{path}\">"
            ));
        }
        Ok(lines.join("\n"))
    }

    /// Writes the icons, and the manifest with their names put in; gives its name and the drawn icon's.
    fn manifest(
        &mut self,
        text: String,
        icons: Vec<(String, Vec<u8>)>,
    ) -> Result<(String, String)> {
        let (mut text, mut drawn) = (text, String::new());
        for (name, bytes) in icons {
            let (path, _sum) = self.hashed(&name, bytes)?;
            text = text.replace(&format!("\"{name}\""), &format!("\"{path}\""));
            if name == "icon.svg" {
                drawn = path;
            }
        }
        Ok((self.hashed("app.webmanifest", text.into_bytes())?.0, drawn))
    }

    /// Writes the service worker with the list of all other files.
    fn worker(&mut self, text: &str) -> Result<()> {
        let (version, list) = self.list()?;
        let worker = fill(text, &[("version", &version), ("files", &list)])?;
        self.plain("service_worker.js", worker.into_bytes())
    }

    /// The version, which is the content of all files, and the worker's list: address and sum of each.
    fn list(&self) -> Result<(String, String)> {
        let mut list = String::new();
        for file in &self.files {
            let address = if file.path == "index.html" {
                ""
            } else {
                file.path.as_str()
            };
            writeln!(
                list,
                "  [\"./{address}\", \"{}\"],",
                packed::sum(&file.bytes)
            )?;
        }
        Ok((
            packed::short(list.as_bytes()),
            list.trim().trim_end_matches(',').to_owned(),
        ))
    }
}

/// The script that loads pieces, asking for the piece `name` as it should.
fn asking(loader: &str, name: &str, so: &str) -> Result<String> {
    let asked = format!("fetch(new URL(\"./{name}\", import.meta.url))");
    if !loader.contains(&asked) {
        bail!("the script that loads pieces does not ask for {name}");
    }
    Ok(loader.replace(&asked, so))
}

/// Puts each value in place of its `{{name}}`. A name left over, or one not found, is a mistake.
fn fill(text: &str, values: &[(&str, &str)]) -> Result<String> {
    let mut filled = text.to_owned();
    for (name, value) in values {
        filled = filled.replace(&format!("{{{{{name}}}}}"), value);
    }
    match filled.split_once("{{") {
        Some((_, rest)) => bail!(
            "nothing is known to put in place of {{{{{}",
            rest.chars().take(20).collect::<String>()
        ),
        None => Ok(filled),
    }
}

#[cfg(test)]
mod tests {
    use super::fill;

    #[test]
    fn every_blank_is_filled_or_named() {
        assert_eq!(
            fill("a {{b}} c {{b}}", &[("b", "x"), ("unused", "y")]).unwrap(),
            "a x c x"
        );
        assert!(
            fill("a {{c}}", &[("b", "x")])
                .unwrap_err()
                .to_string()
                .contains("{{c}}")
        );
    }
}
