//! Finds a compiler for WebAssembly, and brings one when none is there.

use crate::machine::Machine;
use anyhow::{Result, bail};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

/// The platform of the page.
pub(crate) const TARGET: &str = "wasm32-unknown-unknown";
/// Debian's compiler, cargo and the source of its standard library.
const DEBIAN_PACKAGES: &str = "rustc-web cargo-web rust-web-src";
const DEBIAN_RUSTC: &str = "/usr/bin/rustc";
/// The oldest compiler the code is written for: 1.95.
const OLDEST: (u32, u32) = (1, 95);
const DOWNLOAD: Duration = Duration::from_secs(300);

/// A way to compile for WebAssembly.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Way {
    /// The toolchain in use has the standard library for it.
    Installed,
    /// Debian's compiler, with the standard library built from its source.
    Debian {
        /// The linker for WebAssembly.
        linker: PathBuf,
    },
}

impl Way {
    /// A folder of its own under `target/`: the two ways' libraries do not mix.
    pub(crate) const fn folder(&self) -> &'static str {
        match self {
            Self::Installed => "installed",
            Self::Debian { .. } => "debian",
        }
    }

    /// Sets up the inner cargo for this way.
    pub(crate) fn prepare(&self, cargo: &mut Command) {
        // The outer cargo's flags are for the host.
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

    /// The compiler's flags for the page. Leptos writes the machinery of a view once for all
    /// views rather than once for each; where the standard library is built here, it is built
    /// small and without the texts of panics, which nothing on the page would show.
    const fn flags(&self) -> &'static str {
        match self {
            Self::Installed => "--cfg erase_components",
            Self::Debian { .. } => {
                "-Zunstable-options -Cpanic=immediate-abort --cfg erase_components"
            }
        }
    }
}

/// The way that `SOFTCRUMB_WASM` pins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Pin {
    /// Whatever works.
    Free,
    /// Debian's packages only; no toolchain is downloaded.
    Debian,
    /// The toolchain manager's only.
    Rustup,
}

impl Pin {
    /// Reads the variable's text.
    pub(crate) fn read(text: Option<&str>) -> Result<Self> {
        match text {
            None | Some("") => Ok(Self::Free),
            Some("debian") => Ok(Self::Debian),
            Some("rustup") => Ok(Self::Rustup),
            Some(other) => bail!(
                "SOFTCRUMB_WASM is \"{other}\"; it may be \"debian\" or \"rustup\", or not set at all"
            ),
        }
    }
}

/// Finds a way on this machine: what is installed first, then what can be brought.
pub(crate) fn find(machine: &impl Machine, pin: Pin) -> Result<Way> {
    if pin != Pin::Debian && installed(machine) {
        return Ok(Way::Installed);
    }
    if pin != Pin::Rustup
        && let Some(way) = debian(machine)?
    {
        return Ok(way);
    }
    if pin != Pin::Debian && machine.says("rustup", &["--version"]).is_some() {
        let brought = machine.brings("rustup", &["target", "add", TARGET], DOWNLOAD);
        if brought && installed(machine) {
            return Ok(Way::Installed);
        }
    }
    if pin != Pin::Rustup
        && may_install(machine)
        && let Some(way) = install(machine)?
    {
        return Ok(way);
    }
    bail!("{}", what_to_do(pin));
}

/// The command that would mend it.
fn what_to_do(pin: Pin) -> String {
    let rustup = format!("`rustup target add {TARGET}`");
    let debian = format!(
        "as root on Debian: `apt-get update && apt-get install --no-install-recommends {DEBIAN_PACKAGES}`"
    );
    let ways = match pin {
        Pin::Free => format!("{rustup}, or {debian}"),
        Pin::Debian => format!("{debian} (SOFTCRUMB_WASM=debian rules the other ways out)"),
        Pin::Rustup => format!("{rustup} (SOFTCRUMB_WASM=rustup rules the other ways out)"),
    };
    format!("there is no compiler for {TARGET} here. Run {ways}")
}

fn installed(machine: &impl Machine) -> bool {
    machine
        .says("rustc", &["--print", "sysroot"])
        .is_some_and(|sysroot| {
            let folder = Path::new(&sysroot)
                .join("lib/rustlib")
                .join(TARGET)
                .join("lib");
            machine
                .lists(&folder)
                .iter()
                .any(|name| name.starts_with("libstd-"))
        })
}

fn debian(machine: &impl Machine) -> Result<Option<Way>> {
    let Some(sysroot) = machine.says(DEBIAN_RUSTC, &["--print", "sysroot"]) else {
        return Ok(None);
    };
    let source = Path::new(&sysroot).join("lib/rustlib/src/rust/library");
    let new_enough = machine
        .says(DEBIAN_RUSTC, &["--version"])
        .and_then(|said| version(&said))
        .is_some_and(|found| found >= OLDEST);
    if !new_enough || !machine.lists(&source).iter().any(|name| name == "std") {
        return Ok(None);
    }
    match linker(machine) {
        Some(linker) => Ok(Some(Way::Debian { linker })),
        None => bail!(
            "Debian's compiler is here, but no linker for WebAssembly. Run as root: `apt-get install lld`"
        ),
    }
}

/// `rustc 1.96.0 (…)` → (1, 96).
fn version(said: &str) -> Option<(u32, u32)> {
    let mut numbers = said.split_whitespace().nth(1)?.split('.');
    Some((numbers.next()?.parse().ok()?, numbers.next()?.parse().ok()?))
}

/// The toolchain's own linker, else Debian's.
fn linker(machine: &impl Machine) -> Option<PathBuf> {
    for rustc in ["rustc", DEBIAN_RUSTC] {
        let Some(sysroot) = machine.says(rustc, &["--print", "sysroot"]) else {
            continue;
        };
        let Some(about) = machine.says(rustc, &["-vV"]) else {
            continue;
        };
        let Some(host) = about.lines().find_map(|line| line.strip_prefix("host: ")) else {
            continue;
        };
        let folder = Path::new(&sysroot)
            .join("lib/rustlib")
            .join(host)
            .join("bin");
        if machine.lists(&folder).iter().any(|name| name == "rust-lld") {
            return Some(folder.join("rust-lld"));
        }
    }
    let mut found: Vec<String> = machine.lists(Path::new("/usr/bin"));
    found.retain(|name| name.starts_with("wasm-ld"));
    found.sort();
    found.pop().map(|name| Path::new("/usr/bin").join(name))
}

fn may_install(machine: &impl Machine) -> bool {
    machine.says("id", &["-u"]).as_deref() == Some("0")
        && machine.says("apt-get", &["--version"]).is_some()
}

fn install(machine: &impl Machine) -> Result<Option<Way>> {
    machine.brings("apt-get", &["update", "-qq"], DOWNLOAD);
    let mut words = vec!["install", "-y", "-qq", "--no-install-recommends"];
    words.extend(DEBIAN_PACKAGES.split(' '));
    machine.brings("apt-get", &words, DOWNLOAD);
    debian(machine)
}

#[cfg(test)]
mod tests;
