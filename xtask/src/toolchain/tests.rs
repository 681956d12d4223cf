//! Finding a compiler, on mock machines.

use super::{Preference, TARGET, Toolchain, find};
use std::cell::{Cell, RefCell};
use std::fs;
use std::path::PathBuf;

/// A machine whose programs answer from these fields; its files lie in a folder of its own.
struct Mock {
    root: PathBuf,
    target_installed: Cell<bool>,
    debian_version: Cell<Option<&'static str>>,
    wasm_ld: Cell<bool>,
    network: bool,
    is_root: bool,
    /// The commands that install something.
    installs: RefCell<Vec<String>>,
}

const NEW: Option<&str> = Some("rustc 1.96.0 (ac68faa20 2026-05-25)");

impl Mock {
    /// A machine with a default toolchain and its linker, but no compiler for the target.
    fn new(name: &str, network: bool, is_root: bool) -> Self {
        let root = std::env::temp_dir().join(format!("softcrumb-{}-{name}", std::process::id()));
        for folder in ["target", "host/bin", "usr/lib/rustlib/src/rust/library/std"] {
            fs::create_dir_all(root.join(folder)).unwrap();
        }
        fs::write(root.join("host/bin/rust-lld"), "").unwrap();
        Self {
            root,
            target_installed: Cell::default(),
            debian_version: Cell::default(),
            wasm_ld: Cell::default(),
            network,
            is_root,
            installs: RefCell::default(),
        }
    }

    fn run(&self, program: &str, arguments: &[&str]) -> Option<String> {
        let path = |below: &str| self.root.join(below).display().to_string();
        let debian = self.debian_version.get();
        match (program, arguments) {
            ("rustc", ["--print", "target-libdir", "--target", TARGET]) => {
                let folder = if self.target_installed.get() {
                    "target"
                } else {
                    "nowhere"
                };
                Some(path(folder))
            }
            ("rustc", ["--print", "target-libdir"]) => Some(path("host/lib")),
            ("/usr/bin/rustc", ["--version"]) => debian.map(str::to_owned),
            ("/usr/bin/rustc", ["--print", "sysroot"]) => debian.map(|_| path("usr")),
            ("/usr/bin/rustc", ["-vV"]) => debian.map(|_| "LLVM version: 22.1.3".to_owned()),
            ("wasm-ld-22", ["--version"]) => self.wasm_ld.get().then(String::new),
            ("id", ["-u"]) => Some(if self.is_root { "0" } else { "1000" }.to_owned()),
            ("apt-get", ["--version"]) => Some("apt 2".to_owned()),
            ("rustup", ["target", ..]) | ("apt-get", ["install", ..]) => {
                let command = format!("{program} {}", arguments.join(" "));
                self.installs.borrow_mut().push(command);
                self.network.then(|| self.install(arguments))
            }
            _ => None,
        }
    }

    fn install(&self, names: &[&str]) -> String {
        self.target_installed
            .set(self.target_installed.get() || names.contains(&TARGET));
        self.wasm_ld
            .set(self.wasm_ld.get() || names.contains(&"lld-22"));
        if names.contains(&"rustc-web") {
            self.debian_version.set(NEW);
        }
        String::new()
    }

    fn find(&self, preference: Preference) -> Result<Toolchain, String> {
        let run = |program: &str, arguments: &[&str]| self.run(program, arguments);
        find(&run, preference).map_err(|error| error.to_string())
    }

    /// Debian's compiler with the linker of the default toolchain.
    fn debian(&self) -> Result<Toolchain, String> {
        let linker = self.root.join("host/bin/rust-lld");
        Ok(Toolchain::Debian { linker })
    }

    fn remove_linker(&self) {
        fs::remove_file(self.root.join("host/bin/rust-lld")).unwrap();
    }

    fn installed_only_by(&self, program: &str) -> bool {
        let installs = self.installs.borrow();
        !installs.is_empty() && installs.iter().all(|command| command.starts_with(program))
    }
}

impl Drop for Mock {
    fn drop(&mut self) {
        let _removed = fs::remove_dir_all(&self.root);
    }
}

#[test]
fn what_is_installed_is_used_and_nothing_is_installed() {
    let machine = Mock::new("installed", true, true);
    machine.debian_version.set(NEW);
    assert_eq!(machine.find(Preference::Any), machine.debian());
    machine.target_installed.set(true);
    assert_eq!(machine.find(Preference::Any), Ok(Toolchain::Installed));
    assert_eq!(machine.find(Preference::Debian), machine.debian());
    assert!(machine.installs.borrow().is_empty());
}

#[test]
fn the_target_is_added_before_packages_are_installed() {
    let machine = Mock::new("rustup", true, true);
    assert_eq!(machine.find(Preference::Any), Ok(Toolchain::Installed));
    let added = ["rustup target add wasm32-unknown-unknown"];
    assert_eq!(*machine.installs.borrow(), added);
}

#[test]
fn a_preference_excludes_the_other_way_with_and_without_a_network() {
    for network in [true, false] {
        let machine = Mock::new("preference", network, true);
        machine.target_installed.set(true);
        assert_eq!(machine.find(Preference::Debian).is_ok(), network);
        assert!(machine.installed_only_by("apt-get"));
        let machine = Mock::new("preference", network, true);
        machine.debian_version.set(NEW);
        assert_eq!(machine.find(Preference::Rustup).is_ok(), network);
        assert!(machine.installed_only_by("rustup"));
    }
}

#[test]
fn packages_are_installed_by_root_only_and_named_to_others() {
    let machine = Mock::new("root", true, true);
    assert_eq!(machine.find(Preference::Debian), machine.debian());
    let machine = Mock::new("root", true, false);
    let error = machine.find(Preference::Debian).unwrap_err();
    assert!(
        error.contains("apt-get install --no-install-recommends rustc-web cargo-web rust-web-src`")
    );
    assert!(machine.installs.borrow().is_empty());
    let error = Mock::new("root", false, false)
        .find(Preference::Any)
        .unwrap_err();
    assert!(error.contains("rustup target add wasm32-unknown-unknown"));
}

#[test]
fn an_old_compiler_of_debian_is_not_used() {
    let machine = Mock::new("old", false, false);
    machine.debian_version.set(Some("rustc 1.63.0"));
    assert!(machine.find(Preference::Debian).is_err());
}

#[test]
fn without_a_bundled_linker_the_one_of_the_compiler_s_llvm_is_installed() {
    let machine = Mock::new("linker", true, true);
    machine.remove_linker();
    let linker = PathBuf::from("wasm-ld-22");
    assert_eq!(
        machine.find(Preference::Debian),
        Ok(Toolchain::Debian { linker })
    );
    let machine = Mock::new("linker", false, false);
    machine.remove_linker();
    machine.debian_version.set(NEW);
    assert!(
        machine
            .find(Preference::Debian)
            .unwrap_err()
            .contains("lld-22")
    );
}

#[test]
fn a_misspelt_preference_is_named() {
    assert_eq!(Preference::read(None).unwrap(), Preference::Any);
    let error = Preference::read(Some("debain")).unwrap_err();
    assert!(error.to_string().contains("debain"));
}
