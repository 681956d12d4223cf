//! The chores of the project: serve, build, dist, words, test, check, bench.
#![allow(clippy::print_stdout, reason = "the chores speak to whoever runs them")]
#![allow(
    clippy::disallowed_methods,
    reason = "the chores are timed by the clock; no figure of the page comes from here"
)]

mod archive;
mod arguments;
mod bench;
mod bind;
mod bring;
mod browser;
mod build;
mod bundle;
mod check;
mod crumbs;
mod cut;
mod dist;
mod headers;
mod house;
mod language;
mod machine;
mod packed;
mod part;
mod peers;
mod serve;
mod server;
mod short;
mod step;
mod styles;
mod test;
mod toolchain;
mod watch;

use std::process::ExitCode;

/// What `cargo xtask --help` says.
const HELP: &str = "\
The chores of Softcrumb.

  cargo xtask serve   build the page and serve it on this machine
      --port N        the port to use (8080)
      --watch         build again whenever a file changes
      --dir DIR       serve a folder that is built already
      --under /PATH/  serve it below a folder, as some hosts do
  cargo xtask build   build the page into dist/
  cargo xtask dist    build, then pack dist/ for any static host (softcrumb.zip)
  cargo xtask words   bring the catalogues of the other languages up to the page's texts
  cargo xtask check   the quick checks: format, lints, docs, tests of the engine
  cargo xtask test    every check there is, the browser's too
  cargo xtask bench   measure the page beside the least page there can be; --cooling follows one
                      cooling only, natively, in the browser and by scipy

SOFTCRUMB_WASM=rustup or =debian pins the way to a compiler for WebAssembly.
";

fn main() -> ExitCode {
    let mut given = std::env::args().skip(1);
    let verb = given.next().unwrap_or_default();
    let rest: Vec<String> = given.collect();
    if rest.iter().any(|word| word == "--help" || word == "-h") {
        print!("{HELP}");
        return ExitCode::SUCCESS;
    }
    let done = match verb.as_str() {
        "serve" => serve::run(&rest).map(|()| true),
        "build" => build::run(&rest).map(|()| true),
        "dist" => dist::run(&rest).map(|()| true),
        "words" => language::run(&rest).map(|()| true),
        "bench" => bench::run(&rest),
        "check" => check::run(&rest),
        "test" => test::run(&rest),
        "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(true)
        }
        "" => Err(anyhow::anyhow!("say which chore:\n\n{HELP}")),
        other => Err(anyhow::anyhow!(
            "there is no chore called \"{other}\".\n\n{HELP}"
        )),
    };
    match done {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(trouble) => {
            eprintln!("\nThat did not work: {trouble:#}");
            ExitCode::FAILURE
        }
    }
}
