//! Binds the compiled page to the browser: the script that loads it, and the trimmed binary.

use crate::cut::{Cut, LOADER};
use crate::short::short;
use anyhow::{Context, Result, bail};
use wasm_bindgen_cli_support::Bindgen;

/// What the browser is given.
pub(crate) struct Bound {
    /// The script that loads the binary.
    pub(crate) script: String,
    /// The binary.
    pub(crate) wasm: Vec<u8>,
    /// Scripts that libraries bring along: path below the page, and text.
    pub(crate) brought: Vec<(String, String)>,
    /// The script that loads pieces; none where there are none.
    pub(crate) loader: Option<String>,
    /// The pieces that load when they are opened: name and bytes.
    pub(crate) pieces: Vec<(String, Vec<u8>)>,
}

/// Binds what loads at once.
pub(crate) fn bind(cut: Cut) -> Result<Bound> {
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(&cut.main)
        .typescript(false)
        .remove_name_section(std::env::var_os("SOFTCRUMB_NAMES").is_none())
        .remove_producers_section(true)
        .omit_default_module_path(true)
        // The pieces share the table of functions.
        .keep_lld_exports(true);
    let mut output = bindgen
        .web(true)?
        .generate_output()
        .context("the compiled page could not be bound")?;
    let mut brought = Vec::new();
    for (folder, texts) in output.snippets() {
        for (number, text) in texts.iter().enumerate() {
            brought.push((format!("snippets/{folder}/inline{number}.js"), text.clone()));
        }
    }
    for (path, text) in output.local_modules() {
        brought.push((format!("snippets/{path}"), text.clone()));
    }
    let wasm = output.wasm_mut().emit_wasm();
    let (script, wasm) = short(output.js(), &wasm)?;
    Ok(Bound {
        loader: script.contains(LOADER).then_some(cut.loader),
        pieces: cut.pieces,
        script,
        wasm,
        brought,
    })
}

/// Fails unless the binding library and the page's library are of one version.
pub(crate) fn same_version(lock: &str) -> Result<()> {
    let page = locked(lock, "wasm-bindgen").context("Cargo.lock names no wasm-bindgen")?;
    let ours = locked(lock, "wasm-bindgen-cli-support")
        .context("Cargo.lock names no wasm-bindgen-cli-support")?;
    if page != ours {
        bail!(
            "the page uses wasm-bindgen {page}, xtask binds with {ours}. Write \"={page}\" for wasm-bindgen-cli-support \
             in xtask/Cargo.toml, or run `cargo update --package wasm-bindgen --precise {ours}`"
        );
    }
    Ok(())
}

/// The version of a package in a lock file.
fn locked<'a>(lock: &'a str, package: &str) -> Option<&'a str> {
    let named = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != named).skip(1);
    lines
        .next()?
        .strip_prefix("version = \"")?
        .strip_suffix('"')
}

#[cfg(test)]
mod tests {
    use super::same_version;

    fn lock(page: &str, ours: &str) -> String {
        format!(
            "[[package]]\nname = \"wasm-bindgen\"\nversion = \"{page}\"\n\n[[package]]\nname = \"wasm-bindgen-cli-support\"\nversion = \"{ours}\"\n"
        )
    }

    #[test]
    fn two_versions_are_named_with_the_command_that_mends_it() {
        assert!(same_version(&lock("0.2.130", "0.2.130")).is_ok());
        let trouble = same_version(&lock("0.2.131", "0.2.130"))
            .unwrap_err()
            .to_string();
        assert!(trouble.contains("cargo update --package wasm-bindgen --precise 0.2.130"));
    }

    #[test]
    fn this_project_s_lock_agrees() {
        assert!(same_version(include_str!("../../Cargo.lock")).is_ok());
    }
}
