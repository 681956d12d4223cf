//! Generates the bindings: the script that loads the binary, and the binary without its metadata.

use crate::import_names::shorten;
use crate::split::{Chunk, SplitPage};
use anyhow::{Context, Result, bail};
use wasm_bindgen_cli_support::Bindgen;

/// The page's scripts and binaries.
pub(crate) struct Bound {
    /// The script that loads the binary.
    pub(crate) script: String,
    /// The binary.
    pub(crate) wasm: Vec<u8>,
    /// Scripts of libraries: path below the page, and text.
    pub(crate) snippets: Vec<(String, String)>,
    /// The entries that load on demand.
    pub(crate) entries: Vec<String>,
    /// Their chunks.
    pub(crate) chunks: Vec<Chunk>,
}

/// Generates the bindings of the main module.
pub(crate) fn bind(page: SplitPage) -> Result<Bound> {
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(&page.main)
        .typescript(false)
        .remove_name_section(std::env::var_os("SOFTCRUMB_NAMES").is_none())
        .remove_producers_section(true)
        .omit_default_module_path(true)
        // The chunks import the main module's function table.
        .keep_lld_exports(true);
    let mut output = bindgen
        .web(true)?
        .generate_output()
        .context("the bindings could not be generated")?;
    let mut snippets = Vec::new();
    for (folder, texts) in output.snippets() {
        for (number, text) in texts.iter().enumerate() {
            snippets.push((format!("snippets/{folder}/inline{number}.js"), text.clone()));
        }
    }
    for (path, text) in output.local_modules() {
        snippets.push((format!("snippets/{path}"), text.clone()));
    }
    let wasm = output.wasm_mut().emit_wasm();
    let (script, wasm) = shorten(output.js(), &wasm)?;
    Ok(Bound {
        entries: page.entries,
        chunks: page.chunks,
        script,
        wasm,
        snippets,
    })
}

/// Fails unless the binding generator and the page's library have the same version.
pub(crate) fn check_versions(lock: &str) -> Result<()> {
    let page = locked_version(lock, "wasm-bindgen").context("Cargo.lock names no wasm-bindgen")?;
    let generator = locked_version(lock, "wasm-bindgen-cli-support")
        .context("Cargo.lock names no wasm-bindgen-cli-support")?;
    if page != generator {
        bail!(
            "the page uses wasm-bindgen {page}, xtask generates bindings for {generator}. Write \"={page}\" for \
             wasm-bindgen-cli-support in xtask/Cargo.toml, or run `cargo update --package wasm-bindgen --precise {generator}`"
        );
    }
    Ok(())
}

/// The version of a package in a lock file.
fn locked_version<'a>(lock: &'a str, package: &str) -> Option<&'a str> {
    let name = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != name).skip(1);
    lines
        .next()?
        .strip_prefix("version = \"")?
        .strip_suffix('"')
}

#[cfg(test)]
mod tests {
    use super::check_versions;

    fn lock(page: &str, generator: &str) -> String {
        format!(
            "[[package]]\nname = \"wasm-bindgen\"\nversion = \"{page}\"\n\n[[package]]\nname = \"wasm-bindgen-cli-support\"\nversion = \"{generator}\"\n"
        )
    }

    #[test]
    fn two_versions_are_named_with_the_command_that_repairs_them() {
        assert!(check_versions(&lock("0.2.130", "0.2.130")).is_ok());
        let error = check_versions(&lock("0.2.131", "0.2.130"))
            .unwrap_err()
            .to_string();
        assert!(error.contains("cargo update --package wasm-bindgen --precise 0.2.130"));
    }

    #[test]
    fn this_project_s_lock_file_passes() {
        assert!(check_versions(include_str!("../../Cargo.lock")).is_ok());
    }
}
