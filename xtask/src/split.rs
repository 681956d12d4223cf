//! Splits the compiled page at its entry points: a main module, and chunks that load on demand.

use anyhow::{Context, Result, anyhow};
use std::collections::HashMap;
use std::fs;
use std::path::{Path, PathBuf};
use wasm_encoder::{Module, RawSection};
use wasm_split_cli_support::{Options, transform};
use wasmparser::{Parser, Payload};

/// The module from which the binary imports the functions that load chunks.
pub(crate) const ENTRIES: &str = "./chunks.js";
/// The compiled page, split.
pub(crate) struct SplitPage {
    /// The main module, without bindings yet.
    pub(crate) main: PathBuf,
    /// Its entries: what loads on demand.
    pub(crate) entries: Vec<String>,
    /// The chunks.
    pub(crate) chunks: Vec<Chunk>,
}

/// A chunk: what one entry needs alone, or several share.
pub(crate) struct Chunk {
    /// Its name.
    pub(crate) name: String,
    /// Its bytes.
    pub(crate) bytes: Vec<u8>,
    /// The entries that need it.
    pub(crate) needed_by: Vec<String>,
}

/// Splits the module at `compiled`; `SOFTCRUMB_SPLIT=1` prints the chunk of each function, and why.
pub(crate) fn split(compiled: &Path) -> Result<SplitPage> {
    let module =
        fs::read(compiled).with_context(|| format!("{} cannot be read", compiled.display()))?;
    let folder = compiled.with_extension("split");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let main = folder.join("main.wasm");
    let mut options = Options::new(&module);
    options.output_dir = &folder;
    options.main_out_path = &main;
    options.link_name = ENTRIES;
    options.verbose = std::env::var_os("SOFTCRUMB_SPLIT").is_some();
    let output = transform(options)
        .map_err(|error| anyhow!("{error:#}"))
        .context("the compiled page could not be split")?;
    let mut entries: Vec<String> = output.prefetch_map.keys().cloned().collect();
    entries.sort();
    let chunks = output
        .split_modules
        .iter()
        .map(|path| chunk(path, &entries, &output.prefetch_map))
        .collect::<Result<Vec<_>>>()?;
    Ok(SplitPage {
        main,
        // A chunk without content is needed by none.
        chunks: chunks
            .into_iter()
            .filter(|chunk| !chunk.needed_by.is_empty())
            .collect(),
        entries,
    })
}

/// The chunk at `path`; `needed` has the chunks of each entry.
fn chunk(path: &Path, entries: &[String], needed: &HashMap<String, Vec<String>>) -> Result<Chunk> {
    let name = path.file_stem().context("a chunk without a name")?;
    let name = name.to_string_lossy().into_owned();
    let needs = |entry: &&String| {
        let needed = needed.get(*entry);
        needed.is_some_and(|needed| needed.contains(&name))
    };
    Ok(Chunk {
        needed_by: entries.iter().filter(needs).cloned().collect(),
        bytes: without_custom_sections(&fs::read(path)?)?,
        name,
    })
}

/// The module without custom sections: function names and producers.
fn without_custom_sections(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(bytes) {
        let payload = payload.context("a chunk is not a WebAssembly module")?;
        if matches!(payload, Payload::CustomSection(_)) {
            continue;
        }
        if let Some((id, range)) = payload.as_section() {
            let data = bytes.get(range).context("a chunk is truncated")?;
            module.section(&RawSection { id, data });
        }
    }
    Ok(module.finish())
}
