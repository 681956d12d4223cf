//! Finding a compiler, on mock machines.

use super::{Preference, TARGET, Toolchain, find};
use crate::paths;
use std::cell::RefCell;
use std::fs;
use std::path::PathBuf;

/// A machine: what is on it, and the commands that installed something.
struct Mock {
    has: RefCell<Vec<&'static str>>,
    installs: RefCell<Vec<String>>,
}

impl Mock {
    fn with(has: &[&'static str]) -> Self {
        for folder in ["host/bin", "usr/lib/rustlib/src/rust/library/std"] {
            fs::create_dir_all(folder_of_mocks().join(folder)).unwrap();
        }
        fs::write(folder_of_mocks().join("host/bin/rust-lld"), "").unwrap();
        Self {
            has: RefCell::new(has.to_vec()),
            installs: RefCell::default(),
        }
    }

    fn has(&self, what: &str) -> bool {
        self.has.borrow().contains(&what)
    }

    fn run(&self, program: &str, arguments: &[&str]) -> Option<String> {
        let path = |folder: &str| folder_of_mocks().join(folder).display().to_string();
        let answer = match (program, arguments) {
            ("rustc", [.., "--target", TARGET]) if self.has("target") => path("host"),
            ("rustc", ["--print", "target-libdir"]) if self.has("rust-lld") => path("host/lib"),
            ("/usr/bin/rustc", ["--version"]) if self.has("1.63") => "rustc 1.63.0".to_owned(),
            ("/usr/bin/rustc", ["--version"]) if self.has("1.96") => "rustc 1.96.0 (a)".to_owned(),
            ("/usr/bin/rustc", ["--print", "sysroot"]) => path("usr"),
            ("/usr/bin/rustc", ["-vV"]) if self.has("1.96") => "LLVM version: 22.1".to_owned(),
            ("wasm-ld-22", _) if self.has("lld-22") => String::new(),
            ("id", ["-u"]) if self.has("root") => "0".to_owned(),
            ("apt-get", ["--version"]) => String::new(),
            ("rustup", ["target", ..]) | ("apt-get", ["install", ..]) => {
                let command = format!("{program} {}", arguments.join(" "));
                self.installs.borrow_mut().push(command);
                return self.has("network").then(|| self.install(arguments));
            }
            _ => return None,
        };
        Some(answer)
    }

    fn install(&self, names: &[&str]) -> String {
        for (name, brings) in [
            (TARGET, "target"),
            ("rustc-web", "1.96"),
            ("lld-22", "lld-22"),
        ] {
            if names.contains(&name) {
                self.has.borrow_mut().push(brings);
            }
        }
        String::new()
    }

    fn find(&self, preference: Preference) -> Result<Toolchain, String> {
        let run = |program: &str, arguments: &[&str]| self.run(program, arguments);
        find(&run, preference).map_err(|error| error.to_string())
    }

    fn installs_start_with(&self, program: &str) -> bool {
        let installs = self.installs.borrow();
        !installs.is_empty() && installs.iter().all(|command| command.starts_with(program))
    }
}

fn folder_of_mocks() -> PathBuf {
    paths::target().join("mock-toolchain")
}

/// Debian's compiler with the linker of the default toolchain.
fn debian() -> Result<Toolchain, String> {
    let linker = folder_of_mocks().join("host/bin/rust-lld");
    Ok(Toolchain::Debian { linker })
}

#[test]
fn what_is_there_is_used_and_nothing_is_installed() {
    for (has, preference, expected) in [
        (vec!["1.96"], Preference::Any, debian()),
        (
            vec!["1.96", "target"],
            Preference::Any,
            Ok(Toolchain::Installed),
        ),
        (vec!["1.96", "target"], Preference::Debian, debian()),
        (
            vec!["1.96", "target"],
            Preference::Rustup,
            Ok(Toolchain::Installed),
        ),
    ] {
        let machine = Mock::with(&[&has[..], &["rust-lld", "root", "network"]].concat());
        assert_eq!(machine.find(preference), expected);
        assert!(machine.installs.borrow().is_empty());
    }
}

#[test]
fn the_target_is_added_before_packages_are_installed() {
    let machine = Mock::with(&["rust-lld", "root", "network"]);
    assert_eq!(machine.find(Preference::Any), Ok(Toolchain::Installed));
    let added = ["rustup target add wasm32-unknown-unknown"];
    assert_eq!(*machine.installs.borrow(), added);
}

#[test]
fn a_preference_excludes_the_other_way_with_and_without_a_network() {
    for network in ["network", "no network"] {
        let machine = Mock::with(&["target", "rust-lld", "root", network]);
        let found = machine.find(Preference::Debian);
        assert_eq!(found.is_ok(), network == "network");
        assert!(machine.installs_start_with("apt-get"));
        let machine = Mock::with(&["1.96", "rust-lld", "root", network]);
        let found = machine.find(Preference::Rustup);
        assert_eq!(found.is_ok(), network == "network");
        assert!(machine.installs_start_with("rustup"));
    }
}

#[test]
fn others_than_root_see_the_command_and_an_old_compiler_is_not_used() {
    let machine = Mock::with(&["1.63", "rust-lld", "network"]);
    let error = machine.find(Preference::Debian).unwrap_err();
    let command = "apt-get install --no-install-recommends rustc-web cargo-web rust-web-src`";
    assert!(error.contains(command));
    assert!(machine.installs.borrow().is_empty());
    let error = Mock::with(&[]).find(Preference::Any).unwrap_err();
    assert!(error.contains("rustup target add wasm32-unknown-unknown"));
}

#[test]
fn without_a_bundled_linker_the_one_of_the_compiler_s_llvm_is_installed() {
    let machine = Mock::with(&["root", "network"]);
    let linker = PathBuf::from("wasm-ld-22");
    let expected = Ok(Toolchain::Debian { linker });
    assert_eq!(machine.find(Preference::Debian), expected);
    let error = Mock::with(&["1.96"]).find(Preference::Debian).unwrap_err();
    assert!(error.contains("lld-22"));
}

#[test]
fn a_misspelt_preference_is_named() {
    assert_eq!(Preference::read(None).unwrap(), Preference::Any);
    let error = Preference::read(Some("debain")).unwrap_err();
    assert!(error.to_string().contains("debain"));
}
