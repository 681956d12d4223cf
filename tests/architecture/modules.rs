//! The modules of the source and what each names of the others, read by `syn`.

use std::collections::{BTreeMap, BTreeSet};

use syn::visit::Visit;
use syn::{Attribute, Item, UseTree};

use crate::files::{Read, below};

/// A module by its path from the crate's root: `["engine", "heat"]`.
pub(crate) type Module = Vec<String>;

/// All modules that have a file of their own.
pub(crate) struct Modules {
    files: BTreeMap<Module, Parsed>,
}

struct Parsed {
    path: String,
    syntax: syn::File,
    /// Names that the module gives on from another, with the path they come by.
    given_on: BTreeMap<String, Vec<String>>,
}

impl Modules {
    /// Reads every file below `src`.
    pub(crate) fn read() -> Self {
        Self::of(below("src", &[".rs"]))
    }

    pub(crate) fn of(files: Vec<Read>) -> Self {
        let files = files.into_iter().map(|file| {
            let syntax = syn::parse_file(&file.text).unwrap();
            let mut given_on = BTreeMap::new();
            for item in &syntax.items {
                if let Item::Use(item) = item
                    && !matches!(item.vis, syn::Visibility::Inherited)
                {
                    for path in paths(&item.tree) {
                        given_on.insert(path.last().unwrap().clone(), path);
                    }
                }
            }
            let parsed = Parsed {
                path: file.path.clone(),
                syntax,
                given_on,
            };
            (module_of(&file.path), parsed)
        });
        Self {
            files: files.collect(),
        }
    }

    /// For each file, the other files of the source that it names.
    pub(crate) fn edges(&self) -> BTreeMap<&str, BTreeSet<&str>> {
        let edges = self.files.iter().map(|(module, parsed)| {
            let mut named = Named::default();
            named.visit_file(&parsed.syntax);
            let mut others: BTreeSet<&str> = named
                .paths
                .iter()
                .filter_map(|path| self.file_of(module, path, 8))
                .collect();
            others.remove(parsed.path.as_str());
            (parsed.path.as_str(), others)
        });
        edges.collect()
    }

    /// The file in which what `path` names from within `module` is defined; none outside the crate.
    fn file_of(&self, module: &Module, path: &[String], depth: u32) -> Option<&str> {
        let (first, mut rest) = path.split_first()?;
        let mut at = match first.as_str() {
            "crate" => Module::new(),
            "self" => module.clone(),
            "super" => parent(module),
            own => {
                rest = path;
                let child = child(module, own);
                let known = self.files.get(module)?.given_on.contains_key(own);
                if !self.files.contains_key(&child) && !known {
                    return None;
                }
                module.clone()
            }
        };
        while let Some((name, after)) = rest.split_first() {
            if name == "super" {
                at = parent(&at);
            } else if self.files.contains_key(&child(&at, name)) {
                at = child(&at, name);
            } else {
                let parsed = self.files.get(&at)?;
                return match parsed.given_on.get(name) {
                    // A re-exported name belongs to the file it comes from, except in a circle.
                    Some(from) if depth > 0 => self.file_of(&at, from, depth - 1),
                    Some(_) | None => Some(&parsed.path),
                };
            }
            rest = after;
        }
        Some(&self.files.get(&at)?.path)
    }
}

/// `src/engine/heat/mod.rs` → engine, heat.
fn module_of(path: &str) -> Module {
    let path = path.trim_start_matches("src/").trim_end_matches(".rs");
    let mut module: Module = path.split('/').map(str::to_owned).collect();
    if matches!(module.last().unwrap().as_str(), "mod" | "lib" | "main") {
        module.pop();
    }
    module
}

fn parent(module: &Module) -> Module {
    module.split_last().unwrap().1.to_vec()
}

fn child(module: &Module, name: &str) -> Module {
    let mut child = module.clone();
    child.push(name.to_owned());
    child
}

/// Every path of a use declaration, by the names at their source.
fn paths(tree: &UseTree) -> Vec<Vec<String>> {
    match tree {
        UseTree::Path(path) => {
            let mut below = paths(&path.tree);
            for one in &mut below {
                one.insert(0, path.ident.to_string());
            }
            below
        }
        UseTree::Name(name) if name.ident == "self" => vec![Vec::new()],
        UseTree::Name(name) => vec![vec![name.ident.to_string()]],
        UseTree::Rename(name) => vec![vec![name.ident.to_string()]],
        UseTree::Glob(_) => vec![Vec::new()],
        UseTree::Group(group) => group.items.iter().flat_map(paths).collect(),
    }
}

/// Paths that a file names, tests left out, and what it only gives on.
#[derive(Default)]
struct Named {
    paths: Vec<Vec<String>>,
}

impl<'ast> Visit<'ast> for Named {
    fn visit_item(&mut self, item: &'ast Item) {
        if !is_test(item) {
            syn::visit::visit_item(self, item);
        }
    }

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        if matches!(item.vis, syn::Visibility::Inherited) {
            self.paths.extend(paths(&item.tree));
        }
    }

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let names: Vec<String> = path
            .segments
            .iter()
            .map(|one| one.ident.to_string())
            .collect();
        // A path of one name is the visibility `pub(super)`.
        if names.len() > 1 && matches!(names[0].as_str(), "crate" | "super") {
            self.paths.push(names);
        }
        syn::visit::visit_path(self, path);
    }
}

fn is_test(item: &Item) -> bool {
    let attributes: &[Attribute] = match item {
        Item::Mod(item) => &item.attrs,
        Item::Fn(item) => &item.attrs,
        _ => &[],
    };
    attributes.iter().any(|attribute| {
        let is_cfg = attribute.path().is_ident("cfg");
        attribute.path().is_ident("test")
            || (is_cfg
                && attribute
                    .parse_args::<syn::Ident>()
                    .is_ok_and(|name| name == "test"))
    })
}
