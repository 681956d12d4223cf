//! Finds a compiler for WebAssembly, and installs one where none is found.

use crate::install_deps::{Run, apt_command, apt_install};
use anyhow::{Context, Result, bail};
use std::path::{Path, PathBuf};
use std::process::Command;

/// The platform of the page.
pub(crate) const TARGET: &str = "wasm32-unknown-unknown";
/// Debian's compiler, cargo and the source of the standard library.
const DEBIAN_PACKAGES: [&str; 3] = ["rustc-web", "cargo-web", "rust-web-src"];
const DEBIAN_RUSTC: &str = "/usr/bin/rustc";
/// The oldest compiler that builds this code; `rust-version` in Cargo.toml says the same.
const OLDEST: (u32, u32) = (1, 95);

/// A compiler for WebAssembly.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Toolchain {
    /// The default toolchain, which has the standard library for the target.
    Installed,
    /// Debian's compiler; the standard library is built from its source.
    Debian {
        /// The linker for WebAssembly.
        linker: PathBuf,
    },
}

impl Toolchain {
    /// The folder under `target/`. Libraries of two compilers cannot share one.
    pub(crate) const fn folder(&self) -> &'static str {
        match self {
            Self::Installed => "installed",
            Self::Debian { .. } => "debian",
        }
    }

    /// Adds this compiler's settings to the cargo command that builds the page.
    pub(crate) fn configure(&self, cargo: &mut Command) {
        // The outer cargo passes on flags for the host.
        cargo
            .env("RUSTFLAGS", self.flags())
            .env_remove("CARGO_ENCODED_RUSTFLAGS");
        if let Self::Debian { linker } = self {
            cargo
                .env_remove("RUSTUP_TOOLCHAIN")
                .env("RUSTC", DEBIAN_RUSTC)
                .env("RUSTC_BOOTSTRAP", "1")
                .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", linker)
                .arg("-Zbuild-std=std")
                .arg("-Zbuild-std-features=optimize_for_size");
        }
    }

    /// The compiler's flags for the page; what each saves is listed in DEVELOPERS.md.
    const fn flags(&self) -> &'static str {
        match self {
            Self::Installed => "--cfg erase_components",
            Self::Debian { .. } => {
                "-Zunstable-options -Cpanic=immediate-abort --cfg erase_components"
            }
        }
    }
}

/// Which compiler the variable `SOFTCRUMB_WASM` asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Preference {
    /// The first that is found.
    Any,
    /// Debian's only; never downloads a toolchain.
    Debian,
    /// The default toolchain only; never installs packages.
    Rustup,
}

impl Preference {
    /// Reads the variable's text.
    pub(crate) fn read(text: Option<&str>) -> Result<Self> {
        match text {
            None | Some("") => Ok(Self::Any),
            Some("debian") => Ok(Self::Debian),
            Some("rustup") => Ok(Self::Rustup),
            Some(other) => bail!(
                "SOFTCRUMB_WASM is \"{other}\"; use \"debian\" or \"rustup\", or leave it unset"
            ),
        }
    }
}

/// Finds a compiler on this machine: first what is installed, then what can be installed.
pub(crate) fn find(run: Run<'_>, preference: Preference) -> Result<Toolchain> {
    let attempts: &[fn(Run<'_>) -> Option<Toolchain>] = match preference {
        Preference::Any => &[installed, debian, install_target, install_packages],
        Preference::Debian => &[debian, install_packages],
        Preference::Rustup => &[installed, install_target],
    };
    attempts
        .iter()
        .find_map(|attempt| attempt(run))
        .with_context(|| advice(run, preference))
}

/// What to run by hand where no attempt succeeded.
fn advice(run: Run<'_>, preference: Preference) -> String {
    let rustup = format!("`rustup target add {TARGET}`");
    let debian = format!("as root on Debian `{}`", apt_command(&packages(run)));
    let command = match preference {
        Preference::Any => format!("{rustup}, or {debian}"),
        Preference::Debian => format!("{debian} (SOFTCRUMB_WASM=debian excludes rustup)"),
        Preference::Rustup => format!("{rustup} (SOFTCRUMB_WASM=rustup excludes packages)"),
    };
    format!("there is no compiler for {TARGET} on this machine. Run {command}")
}

fn installed(run: Run<'_>) -> Option<Toolchain> {
    let libraries = run("rustc", &["--print", "target-libdir", "--target", TARGET])?;
    Path::new(&libraries)
        .is_dir()
        .then_some(Toolchain::Installed)
}

fn debian(run: Run<'_>) -> Option<Toolchain> {
    let version = run(DEBIAN_RUSTC, &["--version"])?;
    let sysroot = run(DEBIAN_RUSTC, &["--print", "sysroot"])?;
    let source = Path::new(&sysroot).join("lib/rustlib/src/rust/library/std");
    if number(&version)? < OLDEST || !source.is_dir() {
        return None;
    }
    let linker = linker(run)?;
    Some(Toolchain::Debian { linker })
}

/// `rustc 1.96.0 (…)` → (1, 96).
fn number(version: &str) -> Option<(u32, u32)> {
    let mut numbers = version.split_whitespace().nth(1)?.split('.');
    Some((numbers.next()?.parse().ok()?, numbers.next()?.parse().ok()?))
}

/// The linker that the default toolchain brings, else Debian's of the compiler's own LLVM.
fn linker(run: Run<'_>) -> Option<PathBuf> {
    let libraries = run("rustc", &["--print", "target-libdir"]).unwrap_or_default();
    let bundled = Path::new(&libraries).with_file_name("bin/rust-lld");
    if bundled.is_file() {
        return Some(bundled);
    }
    let packaged = format!("wasm-ld-{}", llvm_version(run)?);
    run(&packaged, &["--version"]).map(|_| packaged.into())
}

/// The major version of the LLVM that Debian's compiler uses.
fn llvm_version(run: Run<'_>) -> Option<String> {
    let about = run(DEBIAN_RUSTC, &["-vV"])?;
    let version = about
        .lines()
        .find_map(|line| line.strip_prefix("LLVM version: "))?;
    Some(version.split('.').next()?.to_owned())
}

fn install_target(run: Run<'_>) -> Option<Toolchain> {
    run("rustup", &["target", "add", TARGET])?;
    installed(run)
}

fn install_packages(run: Run<'_>) -> Option<Toolchain> {
    // The linker's package carries the compiler's LLVM version, which is known once it is there.
    for _round in 0..2 {
        if !apt_install(run, &packages(run)) {
            return None;
        }
        if let Some(found) = debian(run) {
            return Some(found);
        }
    }
    None
}

/// The packages to install, the linker's included once its version is known.
fn packages(run: Run<'_>) -> Vec<String> {
    let mut packages: Vec<String> = DEBIAN_PACKAGES
        .iter()
        .map(|&name| name.to_owned())
        .collect();
    if linker(run).is_none() {
        packages.extend(llvm_version(run).map(|version| format!("lld-{version}")));
    }
    packages
}

#[cfg(test)]
mod tests;
