//! The ways to a compiler, tried on machines that are only pretended.

use super::{Pin, Way, find};
use crate::machine::Machine;
use std::cell::RefCell;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// A machine made of answers.
#[derive(Default)]
struct Pretended {
    target_installed: RefCell<bool>,
    debian_installed: RefCell<bool>,
    debian_version: &'static str,
    has_rustup: bool,
    network: bool,
    is_root: bool,
    lld: bool,
    wasm_ld: bool,
    brought: RefCell<Vec<String>>,
}

impl Machine for Pretended {
    fn says(&self, program: &str, words: &[&str]) -> Option<String> {
        let said = match (program, words) {
            ("rustc", ["--print", "sysroot"]) => "/tools",
            ("rustc" | "/usr/bin/rustc", ["-vV"]) => "binary: rustc\nhost: here-linux",
            ("/usr/bin/rustc", ["--print", "sysroot"]) if *self.debian_installed.borrow() => "/usr",
            ("/usr/bin/rustc", ["--version"]) if *self.debian_installed.borrow() => {
                self.debian_version
            }
            ("rustup", _) if self.has_rustup => "rustup 1",
            ("id", _) => {
                if self.is_root {
                    "0"
                } else {
                    "1000"
                }
            }
            ("apt-get", ["--version"]) => "apt 2",
            _ => return None,
        };
        Some(said.to_owned())
    }

    fn lists(&self, folder: &Path) -> Vec<String> {
        let there: &[&str] = match folder.to_str().unwrap() {
            "/tools/lib/rustlib/wasm32-unknown-unknown/lib" if *self.target_installed.borrow() => {
                &["libcore-1.rlib", "libstd-1.rlib"]
            }
            "/tools/lib/rustlib/here-linux/bin" if self.lld => &["rust-lld"],
            "/usr/lib/rustlib/src/rust/library" if *self.debian_installed.borrow() => {
                &["std", "core"]
            }
            "/usr/bin" if self.wasm_ld => &["cat", "wasm-ld-16", "wasm-ld-19"],
            _ => &[],
        };
        there.iter().map(|&name| name.to_owned()).collect()
    }

    fn brings(&self, program: &str, words: &[&str], _at_most: Duration) -> bool {
        self.brought
            .borrow_mut()
            .push(format!("{program} {}", words.join(" ")));
        if self.network && program == "rustup" {
            *self.target_installed.borrow_mut() = true;
        }
        if self.network && words.first() == Some(&"install") {
            *self.debian_installed.borrow_mut() = true;
        }
        self.network
    }
}

fn bare() -> Pretended {
    Pretended {
        debian_version: "rustc 1.96.0 (ac68faa20 2026-05-25)",
        lld: true,
        ..Pretended::default()
    }
}

fn debian_way() -> Way {
    Way::Debian {
        linker: PathBuf::from("/tools/lib/rustlib/here-linux/bin/rust-lld"),
    }
}

#[test]
fn an_installed_target_is_taken_first_and_nothing_is_brought() {
    let machine = Pretended {
        target_installed: true.into(),
        debian_installed: true.into(),
        has_rustup: true,
        is_root: true,
        ..bare()
    };
    assert_eq!(find(&machine, Pin::Free).unwrap(), Way::Installed);
    assert!(machine.brought.borrow().is_empty());
}

#[test]
fn debian_s_is_taken_when_installed_and_nothing_is_brought() {
    let machine = Pretended {
        debian_installed: true.into(),
        has_rustup: true,
        network: true,
        ..bare()
    };
    assert_eq!(find(&machine, Pin::Free).unwrap(), debian_way());
    assert!(machine.brought.borrow().is_empty());
}

#[test]
fn the_toolchain_manager_is_asked_before_packages() {
    let machine = Pretended {
        has_rustup: true,
        network: true,
        is_root: true,
        ..bare()
    };
    assert_eq!(find(&machine, Pin::Free).unwrap(), Way::Installed);
    assert_eq!(
        *machine.brought.borrow(),
        ["rustup target add wasm32-unknown-unknown"]
    );
}

#[test]
fn packages_are_installed_by_root_only() {
    let machine = Pretended {
        network: true,
        is_root: true,
        ..bare()
    };
    assert_eq!(find(&machine, Pin::Free).unwrap(), debian_way());
    let machine = Pretended {
        network: true,
        is_root: false,
        ..bare()
    };
    let trouble = find(&machine, Pin::Free).unwrap_err().to_string();
    assert!(trouble.contains("rustup target add wasm32-unknown-unknown"));
    assert!(
        trouble
            .contains("apt-get install --no-install-recommends rustc-web cargo-web rust-web-src")
    );
    assert!(machine.brought.borrow().is_empty());
}

#[test]
fn a_pin_on_debian_never_downloads_a_toolchain() {
    let machine = Pretended {
        target_installed: true.into(),
        has_rustup: true,
        network: true,
        is_root: true,
        ..bare()
    };
    assert_eq!(find(&machine, Pin::Debian).unwrap(), debian_way());
    assert!(
        machine
            .brought
            .borrow()
            .iter()
            .all(|line| line.starts_with("apt-get"))
    );
    let cut_off = Pretended {
        has_rustup: true,
        is_root: true,
        ..bare()
    };
    assert!(
        find(&cut_off, Pin::Debian)
            .unwrap_err()
            .to_string()
            .contains("apt-get install")
    );
    assert!(
        cut_off
            .brought
            .borrow()
            .iter()
            .all(|line| line.starts_with("apt-get"))
    );
}

#[test]
fn a_pin_on_the_toolchain_manager_never_installs_packages() {
    let machine = Pretended {
        debian_installed: true.into(),
        has_rustup: true,
        is_root: true,
        ..bare()
    };
    let trouble = find(&machine, Pin::Rustup).unwrap_err().to_string();
    assert!(trouble.contains("rustup target add"));
    assert_eq!(
        *machine.brought.borrow(),
        ["rustup target add wasm32-unknown-unknown"]
    );
}

#[test]
fn an_old_compiler_of_debian_is_passed_over() {
    let machine = Pretended {
        debian_installed: true.into(),
        debian_version: "rustc 1.63.0",
        ..bare()
    };
    assert!(find(&machine, Pin::Free).is_err());
}

#[test]
fn the_newest_linker_of_debian_stands_in_and_its_lack_is_named() {
    let machine = Pretended {
        debian_installed: true.into(),
        lld: false,
        wasm_ld: true,
        ..bare()
    };
    assert_eq!(
        find(&machine, Pin::Debian).unwrap(),
        Way::Debian {
            linker: PathBuf::from("/usr/bin/wasm-ld-19")
        }
    );
    let machine = Pretended {
        debian_installed: true.into(),
        lld: false,
        ..bare()
    };
    assert!(
        find(&machine, Pin::Debian)
            .unwrap_err()
            .to_string()
            .contains("apt-get install lld")
    );
}

#[test]
fn a_misspelt_pin_is_answered_in_words() {
    assert_eq!(Pin::read(None).unwrap(), Pin::Free);
    assert!(
        Pin::read(Some("debain"))
            .unwrap_err()
            .to_string()
            .contains("debain")
    );
}
