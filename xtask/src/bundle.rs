//! Writes the page's files: hashed names, checksums, the HTML, the service worker's list.

use crate::asset::{self, Asset};
use crate::bind::Bound;
use crate::headers::POLICY;
use crate::scripts::without_comments;
use crate::split::{Chunk, ENTRIES};
use crate::styles::Styles;
use crate::template::fill;
use crate::{language, loader};
use anyhow::{Context, Result};
use std::fmt::Write as _;
use std::fs;
use std::path::Path;

/// Where `index.html` holds the first screen.
const FIRST_SCREEN: &str = "<!-- first screen -->";

/// The sources of a page.
pub(crate) struct Sources {
    /// Scripts and binaries.
    pub(crate) bound: Bound,
    /// The translations: language tag, and catalogue as the page reads it.
    pub(crate) catalogues: Vec<(String, String)>,
    /// The joined style sheets.
    pub(crate) styles: Styles,
    /// The template of `index.html`.
    pub(crate) html: String,
    /// The HTML of the first screen.
    pub(crate) first_screen: String,
    /// The script that says for whom the first screen is.
    pub(crate) first_visit: String,
    /// The template of the script that starts the page.
    pub(crate) boot: String,
    /// The template of the service worker.
    pub(crate) worker: String,
    /// The manifest, with the icons' names as in `style/icons`.
    pub(crate) manifest: String,
    /// Icons: name and bytes.
    pub(crate) icons: Vec<(String, Vec<u8>)>,
}

/// Writes the page into `folder`, replacing its content; returns its files.
///
/// It writes into a folder beside it first and swaps the two: a page that is being served is
/// complete at any moment, and is unchanged when writing fails.
pub(crate) fn write(sources: Sources, folder: &Path) -> Result<Vec<Asset>> {
    let next = folder.with_extension("next");
    let assets = write_into(sources, &next)?;
    let last = folder.with_extension("last");
    remove(&last)?;
    if folder.exists() {
        fs::rename(folder, &last)
            .with_context(|| format!("{} cannot be moved away", folder.display()))?;
    }
    fs::rename(&next, folder)
        .with_context(|| format!("{} cannot be replaced", folder.display()))?;
    remove(&last)?;
    Ok(assets)
}

/// Removes a folder, where there is one.
fn remove(folder: &Path) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder)
            .with_context(|| format!("{} cannot be removed", folder.display()))?;
    }
    Ok(())
}

fn write_into(sources: Sources, folder: &Path) -> Result<Vec<Asset>> {
    let mut page = Page::new(folder)?;
    page.snippets(sources.bound.snippets)?;
    let wasm_bytes = sources.bound.wasm.len().to_string();
    let wasm = page.hashed("softcrumb.wasm", sources.bound.wasm)?;
    let styles = page.hashed("app.css", sources.styles.first.into_bytes())?;
    let later_styles = page.hashed("later.css", sources.styles.later.into_bytes())?;
    let script = page.scripts(
        &sources.bound.script,
        sources.bound.chunks,
        &sources.bound.entries,
        &later_styles,
    )?;
    let boot = page.boot(
        &sources.boot,
        &script.0,
        (&wasm, &wasm_bytes),
        &sources.catalogues,
    )?;
    let first_visit = page.hashed("first_visit.js", sources.first_visit.into_bytes())?;
    let languages = page.languages(sources.catalogues)?;
    let (manifest, icon) = page.manifest(sources.manifest, sources.icons)?;
    let values = [
        ("policy", POLICY),
        ("styles", &styles.0),
        ("styles_integrity", &styles.1),
        ("script", &script.0),
        ("script_integrity", &script.1),
        ("languages", &languages),
        ("first_visit", &first_visit.0),
        ("first_visit_integrity", &first_visit.1),
        ("boot", &boot.0),
        ("boot_integrity", &boot.1),
        ("wasm", &wasm.0),
        ("manifest", &manifest),
        ("icon", &icon),
    ];
    // Last, so that nothing in it is taken for a placeholder.
    let html = fill(&sources.html, &values)?.replace(FIRST_SCREEN, &sources.first_screen);
    page.plain("index.html", html.into_bytes())?;
    page.worker(&sources.worker)?;
    Ok(page.assets)
}

/// The page while it is being written.
struct Page<'a> {
    folder: &'a Path,
    assets: Vec<Asset>,
}

impl<'a> Page<'a> {
    /// Starts with an empty folder.
    fn new(folder: &'a Path) -> Result<Self> {
        remove(folder)?;
        Ok(Self {
            folder,
            assets: Vec::new(),
        })
    }

    /// Writes a file under its own name.
    fn plain(&mut self, path: &str, bytes: Vec<u8>) -> Result<()> {
        self.assets.push(asset::write(self.folder, path, bytes)?);
        Ok(())
    }

    /// Writes a file under a name with its content hash; returns that name and the checksum.
    fn hashed(&mut self, name: &str, bytes: Vec<u8>) -> Result<(String, String)> {
        let name = asset::hashed_name(name, &bytes);
        let integrity = asset::integrity(&bytes);
        self.plain(&name, bytes)?;
        Ok((name, integrity))
    }

    /// Writes the script that starts the page with its `script`, its binary (name, checksum; bytes)
    /// and the texts in each language; returns name and checksum.
    fn boot(
        &mut self,
        template: &str,
        script: &str,
        (wasm, bytes): (&(String, String), &str),
        catalogues: &[(String, String)],
    ) -> Result<(String, String)> {
        let values = [
            ("script", script),
            ("wasm", &wasm.0),
            ("wasm_integrity", &wasm.1),
            ("wasm_bytes", bytes),
            ("texts", &language::boot_texts(catalogues)),
        ];
        self.hashed("boot.js", fill(template, &values)?.into_bytes())
    }

    /// Writes the libraries' scripts under the names by which the main script imports them.
    fn snippets(&mut self, files: Vec<(String, String)>) -> Result<()> {
        for (path, text) in files {
            self.plain(&path, text.into_bytes())?;
        }
        Ok(())
    }

    /// Writes the chunks, the script that loads them and the main script; returns name and checksum
    /// of the last.
    fn scripts(
        &mut self,
        script: &str,
        chunks: Vec<Chunk>,
        entries: &[String],
        styles: &(String, String),
    ) -> Result<(String, String)> {
        let script = without_comments(script);
        if entries.is_empty() {
            let script = format!("{script}\nexport function begin() {{}}\n");
            return self.hashed("softcrumb.js", script.into_bytes());
        }
        let files = loader::files(chunks, entries)?;
        let chunks_script = without_comments(&loader::chunks_script(&files, entries)?);
        for file in files {
            let _named_in_the_script = self.hashed(&file.file_name(), file.bytes)?;
        }
        let loader = self.hashed("chunks.js", chunks_script.into_bytes())?;
        let script = loader::with_later(&script, ENTRIES, entries, [&loader, styles])?;
        self.hashed("softcrumb.js", without_comments(&script).into_bytes())
    }

    /// Writes the catalogues; returns a line of the HTML for each, with its path.
    fn languages(&mut self, catalogues: Vec<(String, String)>) -> Result<String> {
        let mut lines = Vec::new();
        for (tag, catalogue) in catalogues {
            let (path, _integrity) = self.hashed(&format!("{tag}.txt"), catalogue.into_bytes())?;
            lines.push(format!(
                "<meta name=\"language-{tag}\" content=\"./{path}\">"
            ));
        }
        Ok(lines.join("\n"))
    }

    /// Writes the icons, and the manifest with their names filled in; returns the names of the
    /// manifest and of the SVG icon.
    fn manifest(
        &mut self,
        text: String,
        icons: Vec<(String, Vec<u8>)>,
    ) -> Result<(String, String)> {
        let (mut text, mut svg) = (text, String::new());
        for (name, bytes) in icons {
            let (path, _integrity) = self.hashed(&name, bytes)?;
            text = text.replace(&format!("\"{name}\""), &format!("\"{path}\""));
            if name == "icon.svg" {
                svg = path;
            }
        }
        Ok((self.hashed("app.webmanifest", text.into_bytes())?.0, svg))
    }

    /// Writes the service worker with the list of all other files.
    fn worker(&mut self, text: &str) -> Result<()> {
        let (version, list) = self.list()?;
        let worker = fill(text, &[("version", &version), ("files", &list)])?;
        self.plain("service_worker.js", worker.into_bytes())
    }

    /// The version, a hash of all files, and the worker's list: address and checksum of each.
    fn list(&self) -> Result<(String, String)> {
        let mut list = String::new();
        for asset in &self.assets {
            let address = if asset.path == "index.html" {
                ""
            } else {
                asset.path.as_str()
            };
            writeln!(
                list,
                "  [\"./{address}\", \"{}\"],",
                asset::integrity(&asset.bytes)
            )?;
        }
        Ok((
            asset::content_hash(list.as_bytes()),
            list.trim().trim_end_matches(',').to_owned(),
        ))
    }
}
