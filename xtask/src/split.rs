//! Splits the compiled page at its entry points: a main module, and chunks that load on demand.

use anyhow::{Context, Result, anyhow};
use std::fs;
use std::path::{Path, PathBuf};
use wasm_encoder::{Module, RawSection};
use wasm_split_cli_support::{Options, transform};
use wasmparser::{Parser, Payload};

/// The path under which the main script imports the script that loads chunks.
pub(crate) const LOADER: &str = "./chunks.js";
/// The path under which that script imports the main script.
pub(crate) const SCRIPT: &str = "./softcrumb.js";

/// The compiled page, split.
pub(crate) struct SplitPage {
    /// The main module, without bindings yet.
    pub(crate) main: PathBuf,
    /// The script that loads the chunks; it fetches each by `./NAME.wasm`.
    pub(crate) loader: String,
    /// Chunks: name and bytes.
    pub(crate) chunks: Vec<(String, Vec<u8>)>,
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
    options.link_name = LOADER;
    options.main_module = SCRIPT;
    options.verbose = std::env::var_os("SOFTCRUMB_SPLIT").is_some();
    let output = transform(options)
        .map_err(|error| anyhow!("{error:#}"))
        .context("the compiled page could not be split")?;
    let mut chunks = Vec::new();
    for path in output.split_modules {
        let name = path.file_name().context("a chunk without a name")?;
        chunks.push((
            name.to_string_lossy().into_owned(),
            without_custom_sections(&fs::read(&path)?)?,
        ));
    }
    Ok(SplitPage {
        loader: fs::read_to_string(folder.join(LOADER))?,
        main,
        chunks,
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
