//! Shortens the names by which the binary imports functions from its script. The bindings' names
//! end in a hash of sixteen digits, which does not compress.

use anyhow::{Context, Result};
use std::collections::BTreeMap;
use wasm_encoder::{ImportSection, Module, RawSection, reencode::Reencode as _};
use wasmparser::{Parser, Payload};

/// Script and binary with shortened import names.
pub(crate) fn shorten(script: &str, wasm: &[u8]) -> Result<(String, Vec<u8>)> {
    let mut names = BTreeMap::new();
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(wasm) {
        let payload = payload.context("the page is not a WebAssembly module")?;
        if let Payload::ImportSection(imports) = payload {
            let mut section = ImportSection::new();
            for import in imports.into_imports() {
                let import = import.context("an import of the page cannot be read")?;
                let kind = wasm_encoder::reencode::RoundtripReencoder
                    .entity_type(import.ty)
                    .context("an import of the page cannot be written")?;
                let name = short_name(script, import.name, &mut names);
                section.import(import.module, &name, kind);
            }
            module.section(&section);
        } else if let Some((id, range)) = payload.as_section() {
            let data = wasm.get(range).context("the page is truncated")?;
            module.section(&RawSection { id, data });
        }
    }
    let mut script = script.to_owned();
    for (long, short) in &names {
        script = script.replace(long, short);
    }
    Ok((script, module.finish()))
}

/// The short name of an import. Names without a hash stay: the script may use them for more.
fn short_name(script: &str, name: &str, names: &mut BTreeMap<String, String>) -> String {
    let hash = name.rsplit_once('_').map_or("", |(_, hash)| hash);
    let is_hash = hash.len() == 16 && hash.bytes().all(|byte| byte.is_ascii_hexdigit());
    if !is_hash || !script.contains(name) {
        return name.to_owned();
    }
    let next = format!("i{}", names.len());
    names.entry(name.to_owned()).or_insert(next).clone()
}

#[cfg(test)]
mod tests {
    use super::shorten;
    use wasm_encoder::{EntityType, ImportSection, Module, TypeSection};
    use wasmparser::{Parser, Payload};

    fn module(names: &[&str]) -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], []);
        let mut imports = ImportSection::new();
        for name in names {
            imports.import("./page.js", name, EntityType::Function(0));
        }
        let mut module = Module::new();
        module.section(&types).section(&imports);
        module.finish()
    }

    fn import_names(wasm: &[u8]) -> Vec<String> {
        let mut names = Vec::new();
        for payload in Parser::new(0).parse_all(wasm) {
            if let Payload::ImportSection(imports) = payload.unwrap() {
                names.extend(
                    imports
                        .into_imports()
                        .map(|import| import.unwrap().name.to_owned()),
                );
            }
        }
        names
    }

    #[test]
    fn script_and_binary_agree_on_short_names_and_other_names_are_unchanged() {
        let (focus, blur) = (
            "__wbg_focus_0123456789abcdef",
            "__wbg_blur_fedcba9876543210",
        );
        let script =
            format!("{{ {focus}: function() {{}}, {blur}: function() {{}}, __wbindgen_start: 1 }}");
        let (script, wasm) = shorten(&script, &module(&[focus, "__wbindgen_start", blur])).unwrap();
        assert_eq!(import_names(&wasm), ["i0", "__wbindgen_start", "i1"]);
        assert_eq!(
            script,
            "{ i0: function() {}, i1: function() {}, __wbindgen_start: 1 }"
        );
    }
}
