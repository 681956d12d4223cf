//! Writes the page's files: hashed names, checksums, the HTML, the service worker's list.

use crate::asset::{self, Asset};
use crate::bind::Bound;
use crate::headers::POLICY;
use crate::scripts::without_comments;
use crate::split::{LOADER, SCRIPT};
use crate::template::fill;
use crate::{language, small_chunks};
use anyhow::{Context, Result, bail};
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
    pub(crate) styles: String,
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
    let loader = match sources.bound.loader {
        Some(loader) => Some(page.chunks(loader, sources.bound.chunks)?),
        None => None,
    };
    let (script, loader) = page.scripts(&sources.bound.script, loader)?;
    let boot = page.boot(
        &sources.boot,
        &script.0,
        (&wasm, &wasm_bytes),
        &sources.catalogues,
    )?;
    let first_visit = page.hashed("first_visit.js", sources.first_visit.into_bytes())?;
    let styles = page.hashed("app.css", sources.styles.into_bytes())?;
    let languages = page.languages(sources.catalogues)?;
    let (manifest, icon) = page.manifest(sources.manifest, sources.icons)?;
    let values = [
        ("policy", POLICY),
        ("styles", &styles.0),
        ("styles_integrity", &styles.1),
        ("script", &script.0),
        ("script_integrity", &script.1),
        ("loader", &loader),
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

    /// Writes the chunks; returns the script that loads them, with names and checksums filled in.
    fn chunks(&mut self, mut loader: String, chunks: Vec<(String, Vec<u8>)>) -> Result<String> {
        let (large, small) = small_chunks::join(chunks);
        for (name, bytes) in large {
            let (path, integrity) = self.hashed(&name, bytes)?;
            let fetch = format!(
                "fetch(new URL(\"./{path}\", import.meta.url), {{ integrity: \"{integrity}\" }})"
            );
            loader = replace_fetch(&loader, &name, &fetch)?;
        }
        if small.ranges.is_empty() {
            return Ok(loader);
        }
        for (name, range) in &small.ranges {
            loader = replace_fetch(&loader, name, &small_chunks::fetch_call(range))?;
        }
        let (path, integrity) = self.hashed("chunk_small.wasm", small.bytes)?;
        loader.push_str(&small_chunks::fetch_function(&path, &integrity));
        Ok(loader)
    }

    /// Writes the main script and the one that loads chunks. They import each other, so both names
    /// carry the hash of both. Returns name and checksum of the first, and the second's line in the
    /// HTML.
    fn scripts(
        &mut self,
        script: &str,
        loader: Option<String>,
    ) -> Result<((String, String), String)> {
        let script = without_comments(script);
        let Some(loader) = loader.as_deref().map(without_comments) else {
            return Ok((
                self.hashed("softcrumb.js", script.into_bytes())?,
                String::new(),
            ));
        };
        let both = [script.as_bytes(), loader.as_bytes()].concat();
        let (script_path, loader_path) = (
            asset::hashed_name("softcrumb.js", &both),
            asset::hashed_name("chunks.js", &both),
        );
        // Only imports change: the binary still uses the first name of the loader's module.
        let from = |name: &str| format!("from \"{name}\"");
        let script = script
            .replace(&from(LOADER), &from(&format!("./{loader_path}")))
            .into_bytes();
        let loader = loader
            .replace(&from(SCRIPT), &from(&format!("./{script_path}")))
            .into_bytes();
        let (script_integrity, loader_integrity) =
            (asset::integrity(&script), asset::integrity(&loader));
        self.plain(&script_path, script)?;
        self.plain(&loader_path, loader)?;
        let line = format!(
            "<link rel=\"modulepreload\" href=\"./{loader_path}\" integrity=\"{loader_integrity}\">"
        );
        Ok(((script_path, script_integrity), line))
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

/// The loader script with `fetch` in place of the call that fetches the chunk `name`.
fn replace_fetch(loader: &str, name: &str, fetch: &str) -> Result<String> {
    let call = format!("fetch(new URL(\"./{name}\", import.meta.url))");
    if !loader.contains(&call) {
        bail!("the script that loads chunks does not fetch {name}");
    }
    Ok(loader.replace(&call, fetch))
}
