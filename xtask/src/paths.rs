//! Paths of this project.

use std::path::PathBuf;

/// The folder with the top `Cargo.toml`.
pub(crate) fn root() -> PathBuf {
    let xtask = std::env::var_os("CARGO_MANIFEST_DIR")
        .map_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")), PathBuf::from);
    xtask
        .parent()
        .map_or_else(|| PathBuf::from("."), PathBuf::from)
}

/// The folder of the built page.
pub(crate) fn dist() -> PathBuf {
    root().join("dist")
}

/// The compiler's output folder: `CARGO_TARGET_DIR`, else `target/`.
pub(crate) fn target() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}
