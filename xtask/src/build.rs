//! `cargo xtask build`: compiles the page, generates bindings and writes it into `dist/`.

use crate::arguments::Arguments;
use crate::asset::{self, Asset};
use crate::bundle::{self, Sources};
use crate::install_deps;
use crate::scripts::without_comments;
use crate::step::{run as run_command, step};
use crate::styles::Styles;
use crate::toolchain::{self, Preference, TARGET, Toolchain};
use crate::{bind, first_screen, language, paths, split, styles};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

/// A cargo target to compile: `--bin softcrumb`, or an example.
#[derive(Clone, Copy)]
pub(crate) struct CargoTarget {
    /// `--bin` or `--example`.
    pub(crate) flag: &'static str,
    /// Its name.
    pub(crate) name: &'static str,
}

/// The page itself.
pub(crate) const PAGE: CargoTarget = CargoTarget {
    flag: "--bin",
    name: "softcrumb",
};

/// Runs the command.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    Arguments::read(arguments, &[], &[])?;
    let assets = build()?;
    asset::print_sizes(&assets);
    println!("The page is in {}", paths::dist().display());
    Ok(())
}

/// Builds the page into `dist/`.
pub(crate) fn build() -> Result<Vec<Asset>> {
    // A missing translation fails the build before the long step begins.
    let catalogues = language::catalogues()?;
    let drawing = first_screen::start()?;
    let styles = styles::join(&paths::root().join("style"))?;
    let mut sources = Sources {
        catalogues,
        ..sources(&compile(PAGE)?, styles)?
    };
    sources.first_screen = step("Drawing the first screen", || drawing.html())?;
    step("Compressing the page into dist/", || {
        bundle::write(sources, &paths::dist())
    })
}

/// The sources of a page without translations and first screen, from a compiled binary and a style sheet.
pub(crate) fn sources(compiled: &Path, styles: Styles) -> Result<Sources> {
    bind::check_versions(&read("Cargo.lock")?)?;
    let page = step("Splitting the binary", || split::split(compiled))?;
    let bound = step("Generating the bindings", || bind::bind(page))?;
    let mut icons = Vec::new();
    for name in [
        "icon.svg",
        "icon-192.png",
        "icon-512.png",
        "icon-maskable-192.png",
        "icon-maskable-512.png",
    ] {
        let path = paths::root().join("style/icons").join(name);
        let bytes = fs::read(&path).with_context(|| format!("{} is missing", path.display()))?;
        icons.push((name.to_owned(), bytes));
    }
    Ok(Sources {
        bound,
        catalogues: Vec::new(),
        styles,
        html: read("index.html")?,
        first_screen: String::new(),
        first_visit: without_comments(&read("src/app/browser/first_visit.js")?),
        boot: without_comments(&read("src/app/browser/boot.js")?),
        worker: read("src/app/browser/service_worker.js")?,
        manifest: read("style/app.webmanifest")?,
        icons,
    })
}

fn read(path: &str) -> Result<String> {
    fs::read_to_string(paths::root().join(path)).with_context(|| format!("{path} cannot be read"))
}

/// A compilation in the background.
pub(crate) struct Background(Child);

impl Background {
    /// Waits for its end. The build that follows repeats and reports its errors.
    pub(crate) fn wait(mut self) {
        drop(self.0.wait());
    }
}

/// Starts to compile the page without printing; none where there is no compiler.
pub(crate) fn start_in_background() -> Option<Background> {
    let (mut cargo, _target, _toolchain) = cargo(PAGE).ok()?;
    let child = cargo.stdout(Stdio::null()).stderr(Stdio::null()).spawn();
    child.ok().map(Background)
}

/// Compiles for WebAssembly; returns the binary's path.
pub(crate) fn compile(target: CargoTarget) -> Result<PathBuf> {
    let (mut cargo, folder, toolchain) = cargo(target)?;
    let is_first = !folder.join(TARGET).exists();
    let hint = match (&toolchain, is_first) {
        (_, false) => "",
        (Toolchain::Installed, true) => " (the first time takes one or two minutes)",
        (Toolchain::Debian { .. }, true) => " (the first time takes two to four minutes)",
    };
    step(
        &format!("Compiling {} for WebAssembly{hint}", target.name),
        || run_command(&mut cargo),
    )?;
    let folder = folder.join(TARGET).join("release");
    let folder = if target.flag == "--example" {
        folder.join("examples")
    } else {
        folder
    };
    Ok(folder.join(format!("{}.wasm", target.name)))
}

/// The cargo command, its output folder, and the compiler.
fn cargo(target: CargoTarget) -> Result<(Command, PathBuf, Toolchain)> {
    let preference = Preference::read(std::env::var("SOFTCRUMB_WASM").ok().as_deref())?;
    let toolchain = toolchain::find(&install_deps::run, preference)?;
    let folder = paths::target().join(toolchain.folder());
    let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(paths::root()).args([
        "rustc",
        "--release",
        "--target",
        TARGET,
        target.flag,
        target.name,
    ]);
    cargo.arg("--target-dir").arg(&folder);
    toolchain.configure(&mut cargo);
    // Splitting needs the relocations, which say what refers to what.
    cargo.args(["--", "-Clink-arg=--emit-relocs"]);
    Ok((cargo, folder, toolchain))
}
