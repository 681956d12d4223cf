//! `cargo xtask build`: compiles, binds and writes the page into `dist/`.

use crate::arguments::Arguments;
use crate::bundle::{self, Pieces};
use crate::packed::Packed;
use crate::step::{run as run_command, step};
use crate::toolchain::{self, Pin, TARGET, Way};
use crate::{bind, cut, house, language, machine, styles};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

/// What is compiled: `--bin softcrumb`, or an example.
#[derive(Clone, Copy)]
pub(crate) struct Unit {
    /// `--bin` or `--example`.
    pub(crate) sort: &'static str,
    /// Its name.
    pub(crate) name: &'static str,
}

/// The page itself.
pub(crate) const PAGE: Unit = Unit {
    sort: "--bin",
    name: "softcrumb",
};

/// The verb.
pub(crate) fn run(given: &[String]) -> Result<()> {
    Arguments::read(given, &[], &[])?;
    let files = build()?;
    say_sizes(&files);
    println!("The page is in {}", house::dist().display());
    Ok(())
}

/// Builds the page into `dist/`.
pub(crate) fn build() -> Result<Vec<Packed>> {
    // Before the long step: a text that is not translated fails the build.
    let languages = language::catalogues()?;
    let pieces = pieces(&compile(PAGE)?, styles::join(&house::root().join("style"))?)?;
    let pieces = Pieces {
        languages,
        ..pieces
    };
    step("Packing the page into dist/", || {
        bundle::write(pieces, &house::dist())
    })
}

/// Everything a page is made of, around a compiled binary and a style sheet.
pub(crate) fn pieces(compiled: &Path, styles: String) -> Result<Pieces> {
    bind::same_version(&read("Cargo.lock")?)?;
    let cut = step("Cutting it into pieces", || cut::cut(compiled))?;
    let bound = step("Binding it to the browser", || bind::bind(cut))?;
    let mut icons = Vec::new();
    for name in [
        "icon.svg",
        "icon-192.png",
        "icon-512.png",
        "icon-maskable-192.png",
        "icon-maskable-512.png",
    ] {
        let path = house::root().join("style/icons").join(name);
        icons.push((
            name.to_owned(),
            fs::read(&path).with_context(|| format!("{} is missing", path.display()))?,
        ));
    }
    Ok(Pieces {
        bound,
        languages: Vec::new(),
        styles,
        shell: read("index.html")?,
        boot: read("src/app/browser/boot.js")?,
        worker: read("src/app/browser/service_worker.js")?,
        manifest: read("style/app.webmanifest")?,
        icons,
    })
}

fn read(path: &str) -> Result<String> {
    fs::read_to_string(house::root().join(path)).with_context(|| format!("{path} cannot be read"))
}

/// A compilation that goes on beside other work.
pub(crate) struct Ahead(Child);

impl Ahead {
    /// Waits for its end. What it came up against is met and told again by the build that follows.
    pub(crate) fn wait(mut self) {
        drop(self.0.wait());
    }
}

/// Begins to compile the page, without a word; none where it cannot be begun.
pub(crate) fn begin() -> Option<Ahead> {
    let (mut cargo, _target, _way) = compiler(PAGE).ok()?;
    let child = cargo.stdout(Stdio::null()).stderr(Stdio::null()).spawn();
    child.ok().map(Ahead)
}

/// Compiles for WebAssembly; gives the binary's path.
pub(crate) fn compile(unit: Unit) -> Result<PathBuf> {
    let (mut cargo, target, way) = compiler(unit)?;
    let first = !target.join(TARGET).exists();
    let hint = match (&way, first) {
        (_, false) => "",
        (Way::Installed, true) => " (the first time takes a minute or two)",
        (Way::Debian { .. }, true) => " (the first time takes two or three minutes)",
    };
    step(
        &format!("Compiling {} for WebAssembly{hint}", unit.name),
        || run_command(&mut cargo),
    )?;
    let folder = target.join(TARGET).join("release");
    let folder = if unit.sort == "--example" {
        folder.join("examples")
    } else {
        folder
    };
    Ok(folder.join(format!("{}.wasm", unit.name)))
}

/// The compiler's command, the folder it works in, and the way to it.
fn compiler(unit: Unit) -> Result<(Command, PathBuf, Way)> {
    let pin = Pin::read(std::env::var("SOFTCRUMB_WASM").ok().as_deref())?;
    let way = toolchain::find(&machine::Here, pin)?;
    let target = house::target().join(way.folder());
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(house::root()).args([
        "rustc",
        "--release",
        "--target",
        TARGET,
        unit.sort,
        unit.name,
    ]);
    cargo.arg("--target-dir").arg(&target);
    way.prepare(&mut cargo);
    // Cutting the binary into pieces needs to know what refers to what.
    cargo.args(["--", "-Clink-arg=--emit-relocs"]);
    Ok((cargo, target, way))
}

/// Prints each file with its bytes, as they are and over the wire.
pub(crate) fn say_sizes(files: &[Packed]) {
    println!("{:>9} {:>9}", "bytes", "on wire");
    for file in files {
        println!("{:>9} {:>9}  {}", file.bytes.len(), file.wire, file.path);
    }
}
