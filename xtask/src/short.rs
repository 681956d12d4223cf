//! Short names for what the binary asks of its script: the long ones carry a sum of sixteen
//! digits each, which cannot be packed.

use anyhow::{Context, Result};
use std::collections::BTreeMap;
use wasm_encoder::{ImportSection, Module, RawSection, reencode::Reencode as _};
use wasmparser::{Parser, Payload};

/// The script and the binary with short names for the functions that the one gives the other.
pub(crate) fn short(script: &str, wasm: &[u8]) -> Result<(String, Vec<u8>)> {
    let mut names = BTreeMap::new();
    let mut module = Module::new();
    for payload in Parser::new(0).parse_all(wasm) {
        let payload = payload.context("the bound page is not a binary")?;
        if let Payload::ImportSection(imports) = payload {
            let mut section = ImportSection::new();
            for import in imports.into_imports() {
                let import = import.context("an import of the bound page cannot be read")?;
                let kind = wasm_encoder::reencode::RoundtripReencoder
                    .entity_type(import.ty)
                    .context("an import of the bound page cannot be written")?;
                let name = given(script, import.name, &mut names);
                section.import(import.module, &name, kind);
            }
            module.section(&section);
        } else if let Some((id, range)) = payload.as_section() {
            let data = wasm.get(range).context("the bound page is cut short")?;
            module.section(&RawSection { id, data });
        }
    }
    let mut script = script.to_owned();
    for (long, short) in &names {
        script = script.replace(long, short);
    }
    Ok((script, module.finish()))
}

/// The name of an import from here on. Only those that carry a sum are changed: such a name
/// stands in the script for nothing else.
fn given(script: &str, name: &str, names: &mut BTreeMap<String, String>) -> String {
    let sum = name.rsplit_once('_').map_or("", |(_, sum)| sum);
    let is_sum = sum.len() == 16 && sum.bytes().all(|byte| byte.is_ascii_hexdigit());
    if !is_sum || !script.contains(name) {
        return name.to_owned();
    }
    let next = format!("i{}", names.len());
    names.entry(name.to_owned()).or_insert(next).clone()
}

#[cfg(test)]
mod tests {
    use super::short;
    use wasm_encoder::{EntityType, ImportSection, Module, TypeSection};
    use wasmparser::{Parser, Payload};

    fn binary(names: &[&str]) -> Vec<u8> {
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

    fn imported(wasm: &[u8]) -> Vec<String> {
        let mut names = Vec::new();
        for payload in Parser::new(0).parse_all(wasm) {
            if let Payload::ImportSection(imports) = payload.unwrap() {
                names.extend(
                    imports
                        .into_imports()
                        .map(|one| one.unwrap().name.to_owned()),
                );
            }
        }
        names
    }

    #[test]
    fn script_and_binary_agree_on_the_short_names_and_no_other_name_changes() {
        let (focus, blur) = (
            "__wbg_focus_0123456789abcdef",
            "__wbg_blur_fedcba9876543210",
        );
        let script =
            format!("{{ {focus}: function() {{}}, {blur}: function() {{}}, __wbindgen_start: 1 }}");
        let (script, wasm) = short(&script, &binary(&[focus, "__wbindgen_start", blur])).unwrap();
        assert_eq!(imported(&wasm), ["i0", "__wbindgen_start", "i1"]);
        assert_eq!(
            script,
            "{ i0: function() {}, i1: function() {}, __wbindgen_start: 1 }"
        );
    }
}
