//! The project's commands: serve, build, dist, catalogues, check, test, bench.
#![allow(
    clippy::print_stdout,
    reason = "these commands print for the person who runs them"
)]
#![allow(
    clippy::disallowed_methods,
    reason = "the commands are timed by the clock; they compute no figure of the page"
)]

mod archive;
mod arguments;
mod asset;
mod bench;
mod bind;
mod browser;
mod build;
mod bundle;
mod check;
mod check_report;
mod dist;
mod first_screen;
mod headers;
mod import_names;
mod install_deps;
mod language;
mod loader;
mod paths;
mod peers;
mod scripts;
mod serve;
mod server;
mod split;
mod step;
mod styles;
mod template;
mod test;
mod toolchain;
mod watch;

use std::process::ExitCode;

/// What `cargo xtask --help` prints.
const HELP: &str = "\
Commands of the Softcrumb project.

  cargo xtask serve       build the page and serve it on this machine
      --port N            the port (8080)
      --watch             build again whenever a file changes
      --dir DIR           serve a folder that is already built
      --under /PATH/      serve it below a path, as some hosts do
  cargo xtask build       build the page into dist/
  cargo xtask dist        build, then zip dist/ for any static host (softcrumb.zip)
  cargo xtask catalogues  update the translations to the texts in the source
  cargo xtask check       the quick checks: format, lints, docs, tests that need no browser
  cargo xtask test        all checks: also the comparison with other libraries and the browser tests
  cargo xtask bench       measure the page beside a minimal page
      --cooling           measure one cooling only: natively, in the browser and by scipy

SOFTCRUMB_WASM=rustup or =debian chooses the compiler for WebAssembly.
";

fn main() -> ExitCode {
    let mut words = std::env::args().skip(1);
    let command = words.next().unwrap_or_default();
    let arguments: Vec<String> = words.collect();
    if arguments
        .iter()
        .any(|word| word == "--help" || word == "-h")
    {
        print!("{HELP}");
        return ExitCode::SUCCESS;
    }
    let succeeded = match command.as_str() {
        "serve" => serve::run(&arguments).map(|()| true),
        "build" => build::run(&arguments).map(|()| true),
        "dist" => dist::run(&arguments).map(|()| true),
        "catalogues" => language::run(&arguments).map(|()| true),
        "bench" => bench::run(&arguments),
        "check" => check::run(&arguments),
        "test" => test::run(&arguments),
        "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(true)
        }
        "" => Err(anyhow::anyhow!("a command is missing.\n\n{HELP}")),
        other => Err(anyhow::anyhow!("unknown command \"{other}\".\n\n{HELP}")),
    };
    match succeeded {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(error) => {
            eprintln!("\nError: {error:#}");
            ExitCode::FAILURE
        }
    }
}
