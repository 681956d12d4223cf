//! Where things are in this project.

use std::path::PathBuf;

/// The folder with the top `Cargo.toml`.
pub(crate) fn root() -> PathBuf {
    let xtask = std::env::var_os("CARGO_MANIFEST_DIR")
        .map_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")), PathBuf::from);
    xtask
        .parent()
        .map_or_else(|| PathBuf::from("."), PathBuf::from)
}

/// Where the built page is put.
pub(crate) fn dist() -> PathBuf {
    root().join("dist")
}

/// Where the compiler's work is put: what cargo was told, else `target/`.
pub(crate) fn target() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}
