//! Worksheet: all sums of Softcrumb on standard input and output, for checks in other languages.
//!
//! Each line in is one JSON document, each line out holds every result for it; the form of both
//! is described in `README.md` beside this file. `--time` measures one whole evaluation instead, `--links`
//! the links of formulas of all sizes.
#![allow(
    clippy::print_stdout,
    reason = "standard output is what a worksheet is for"
)]

mod asked;
mod asked_heat;
mod asked_vessel;
mod class;
mod cooling_case;
mod day;
mod error;
mod evaluation;
mod heat;
mod json;
mod json_text;
mod links;
mod run_timing;
mod spelling;
mod timing;

use std::io::{self, BufRead, Write};
use std::process::ExitCode;
use std::str::Utf8Error;

use asked::Asked;
use error::ErrorText;
use evaluation::Evaluation;
use serde_json::Value;

fn main() -> io::Result<ExitCode> {
    match std::env::args().nth(1).as_deref() {
        Some("--time") => {
            let timed = timing::time().map_err(io::Error::other)?;
            let run = run_timing::time();
            println!("{}", timed.lines.join("\n"));
            println!("{}", run.lines.join("\n"));
            if !(timed.within_budget && run.within_budget) {
                return Ok(ExitCode::FAILURE);
            }
        }
        Some("--links") => println!("{}", links::lines().join("\n")),
        Some("--example") => println!("{}", asked::example()),
        Some("--cooling") => println!("{}", timing::cooling_document()),
        Some(_) => {
            println!(
                "usage: worksheet [--time | --links | --cooling | --example] < documents > results"
            );
        }
        None => answer_all()?,
    }
    Ok(ExitCode::SUCCESS)
}

fn answer_all() -> io::Result<()> {
    let mut out = io::BufWriter::new(io::stdout().lock());
    for line in io::stdin().lock().split(b'\n') {
        let line = line?;
        let answer = match std::str::from_utf8(&line) {
            Ok(line) if line.trim().is_empty() => continue,
            Ok(line) => answer(line),
            Err(error) => not_utf8(error).to_json(),
        };
        writeln!(out, "{answer}")?;
        out.flush()?;
    }
    Ok(())
}

/// The results of one document, or what is wrong with it.
fn answer(line: &str) -> Value {
    match Asked::read(line) {
        Ok(asked) => json::to_json(&asked, &Evaluation::of(&asked)),
        Err(error) => error.to_json(),
    }
}

/// A line that is no text.
fn not_utf8(error: Utf8Error) -> ErrorText {
    let message = format!("not UTF-8 after byte {}", error.valid_up_to());
    ErrorText::new("", "NotUtf8", &message)
}
