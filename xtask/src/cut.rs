//! Cuts the compiled page at its entries: what loads at once, and pieces that load when opened.

use anyhow::{Context, Result, anyhow};
use std::fs;
use std::path::{Path, PathBuf};
use wasm_encoder::{Module, RawSection};
use wasm_split_cli_support::{Options, transform};
use wasmparser::{Parser, Payload};

/// The name by which the page's script asks for the script that loads pieces.
pub(crate) const LOADER: &str = "./pieces.js";
/// The name by which that script asks for the page's.
pub(crate) const SCRIPT: &str = "./softcrumb.js";

/// The compiled page in pieces.
pub(crate) struct Cut {
    /// What loads at once, not bound yet.
    pub(crate) main: PathBuf,
    /// The script that loads the pieces; it names each `./piece.wasm`.
    pub(crate) loader: String,
    /// Pieces: name and bytes.
    pub(crate) pieces: Vec<(String, Vec<u8>)>,
}

/// Cuts the binary at `compiled`; the pieces are written beside it.
pub(crate) fn cut(compiled: &Path) -> Result<Cut> {
    let whole =
        fs::read(compiled).with_context(|| format!("{} cannot be read", compiled.display()))?;
    let folder = compiled.with_extension("cut");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let main = folder.join("main.wasm");
    let mut options = Options::new(&whole);
    options.output_dir = &folder;
    options.main_out_path = &main;
    options.link_name = LOADER;
    options.main_module = SCRIPT;
    options.verbose = std::env::var_os("SOFTCRUMB_CUT").is_some();
    let made = transform(options)
        .map_err(|trouble| anyhow!("{trouble:#}"))
        .context("the compiled page could not be cut into pieces")?;
    let mut pieces = Vec::new();
    for path in made.split_modules {
        let name = path.file_name().context("a piece without a name")?;
        pieces.push((
            name.to_string_lossy().into_owned(),
            without_names(&fs::read(&path)?)?,
        ));
    }
    Ok(Cut {
        loader: fs::read_to_string(folder.join(LOADER))?,
        main,
        pieces,
    })
}

/// A binary without the sections that only a reader of it would want: names and producers.
fn without_names(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(bytes) {
        let payload = payload.context("a piece is not a binary")?;
        if matches!(payload, Payload::CustomSection(_)) {
            continue;
        }
        if let Some((id, range)) = payload.as_section() {
            let data = bytes.get(range).context("a piece is cut short")?;
            module.section(&RawSection { id, data });
        }
    }
    Ok(module.finish())
}
