//! The scripts that load chunks: which file holds which, and who needs it.

use crate::asset;
use crate::split::Chunk;
use crate::template::fill;
use anyhow::{Context, Result, bail};
use serde_json::{Value, json};

/// The script that loads chunks.
const CHUNKS: &str = include_str!("loader/chunks.js");
/// The part of the main script that loads that one.
const LATER: &str = include_str!("loader/later.js");
/// Chunks of fewer uncompressed bytes share a file: each file costs a name and a checksum, in the
/// script and in the service worker's list, and small files compress badly.
const SMALL: usize = 6000;
/// Entries that are needed soon after the page opens: their small chunks are apart from the others.
const SOON: [&str; 4] = ["formula", "links", "records", "visit_weights"];

/// A file of chunks.
pub(crate) struct ChunkFile {
    /// Its name, without hash and extension.
    name: String,
    /// Its bytes: the chunks one after the other.
    pub(crate) bytes: Vec<u8>,
    /// Of each chunk the entries that need it, a bit each, and its bytes.
    chunks: Vec<(u32, usize)>,
}

impl ChunkFile {
    /// Its name, without the hash.
    pub(crate) fn file_name(&self) -> String {
        format!("{}.wasm", self.name)
    }
}

/// Puts each large chunk into a file of its own, and the small ones into two.
///
/// # Errors
/// Where there are more entries than bits.
pub(crate) fn files(chunks: Vec<Chunk>, entries: &[String]) -> Result<Vec<ChunkFile>> {
    if entries.len() > 30 {
        bail!("more than thirty entries need another table");
    }
    let bits = |needed_by: &[String]| {
        let needs = |(at, entry): (u32, &String)| u32::from(needed_by.contains(entry)) << at;
        (0..).zip(entries).map(needs).sum::<u32>()
    };
    let shared = |name: &str| ChunkFile {
        name: name.to_owned(),
        bytes: Vec::new(),
        chunks: Vec::new(),
    };
    let (mut soon, mut later, mut files) =
        (shared("small_soon"), shared("small_later"), Vec::new());
    for chunk in chunks {
        let bits = bits(&chunk.needed_by);
        let is_small = chunk.bytes.len() < SMALL;
        let is_soon = chunk
            .needed_by
            .iter()
            .any(|entry| SOON.contains(&entry.as_str()));
        let mut own = shared(&chunk.name);
        let file = match (is_small, is_soon) {
            (false, _) => &mut own,
            (true, true) => &mut soon,
            (true, false) => &mut later,
        };
        file.chunks.push((bits, chunk.bytes.len()));
        file.bytes.extend(chunk.bytes);
        if !own.chunks.is_empty() {
            files.push(own);
        }
    }
    files.extend(
        [soon, later]
            .into_iter()
            .filter(|file| !file.chunks.is_empty()),
    );
    Ok(files)
}

/// The script that loads the chunks of these files.
pub(crate) fn chunks_script(files: &[ChunkFile], entries: &[String]) -> Result<String> {
    let row = |file: &ChunkFile| {
        let integrity = asset::integrity(&file.bytes);
        let checksum = integrity.trim_start_matches("sha256-").to_owned();
        let mut row = vec![json!(file.name), json!(checksum)];
        match file.chunks.as_slice() {
            [(bits, _whole)] => row.push(json!(bits)),
            several => row.extend(
                several
                    .iter()
                    .flat_map(|(bits, bytes)| [json!(bits), json!(bytes)]),
            ),
        }
        Value::Array(row)
    };
    let rows: Vec<Value> = files.iter().map(row).collect();
    fill(
        CHUNKS,
        &[
            ("entries", &json!(entries).to_string()),
            ("files", &Value::Array(rows).to_string()),
        ],
    )
}

/// The main script, which loads the script of chunks and the style sheet that goes with it when a
/// chunk is first asked for; `module` is the name by which the binary imports entries.
///
/// # Errors
/// Where the script imports that module in another way.
pub(crate) fn with_later(
    script: &str,
    module: &str,
    entries: &[String],
    [loader, styles]: [&(String, String); 2],
) -> Result<String> {
    let import = format!(" from \"{module}\"");
    let given = format!("\"{module}\": ");
    let mut lines: Vec<&str> = script
        .lines()
        .filter(|line| !line.ends_with(&import))
        .collect();
    let first = lines
        .iter()
        .position(|line| line.trim_start().starts_with(&given))
        .context("the main script does not name the module of entries")?;
    lines.retain({
        let given = given.clone();
        move |line| !line.trim_start().starts_with(&given)
    });
    let ours = format!("{given}entries,");
    lines.insert(first, &ours);
    let names: Vec<String> = entries
        .iter()
        .map(|entry| format!("__wasm_split_load_{entry}: entry('{entry}')"))
        .collect();
    let later = fill(
        LATER,
        &[
            ("loader", &loader.0),
            ("loader_integrity", &loader.1),
            ("later_styles", &styles.0),
            ("later_styles_integrity", &styles.1),
            ("entries", &names.join(", ")),
        ],
    )?;
    Ok(format!("{}\n{later}", lines.join("\n")))
}

#[cfg(test)]
mod tests {
    use super::{Chunk, SMALL, chunks_script, files, with_later};

    fn chunk(name: &str, needed_by: &[&str], bytes: usize) -> Chunk {
        Chunk {
            name: name.to_owned(),
            bytes: name.bytes().cycle().take(bytes).collect(),
            needed_by: needed_by.iter().map(|&entry| entry.to_owned()).collect(),
        }
    }

    fn entries() -> Vec<String> {
        ["day", "heat", "links"].map(str::to_owned).to_vec()
    }

    #[test]
    fn each_chunk_is_in_one_file_with_those_who_need_it() {
        let chunks = vec![
            chunk("large", &["day", "heat"], SMALL),
            chunk("a", &["day", "links"], 3),
            chunk("b", &["heat"], 5),
            chunk("c", &["links"], 7),
        ];
        let found = files(chunks, &entries()).unwrap();
        let told: Vec<_> = found
            .iter()
            .map(|file| (file.file_name(), file.bytes.len(), file.chunks.clone()))
            .collect();
        assert_eq!(
            told,
            [
                ("large.wasm".to_owned(), SMALL, vec![(3, SMALL)]),
                ("small_soon.wasm".to_owned(), 10, vec![(5, 3), (4, 7)]),
                ("small_later.wasm".to_owned(), 5, vec![(2, 5)]),
            ]
        );
        let script = chunks_script(&found, &entries()).unwrap();
        assert!(script.contains("[\"day\",\"heat\",\"links\"]"), "{script}");
        assert!(script.contains(",5,3,4,7]"), "{script}");
        assert!(!script.contains("{{"), "{script}");
    }

    #[test]
    fn the_main_script_imports_no_chunks_and_hands_the_binary_entries() {
        let script = "import * as import1 from \"./chunks.js\"\nimport * as import2 from \"./chunks.js\"\nlet wasm;\n\
                      return {\n\"./main.js\": import0,\n\"./chunks.js\": import1,\n\"./chunks.js\": import2,\n};";
        let file = ("x.js".to_owned(), "sha256-y".to_owned());
        let found = with_later(script, "./chunks.js", &entries(), [&file, &file]).unwrap();
        assert!(
            found.starts_with(
                "let wasm;\nreturn {\n\"./main.js\": import0,\n\"./chunks.js\": entries,\n};\n"
            ),
            "{found}"
        );
        assert!(
            found.contains("__wasm_split_load_heat: entry('heat')"),
            "{found}"
        );
        assert!(with_later("let wasm;", "./chunks.js", &entries(), [&file, &file]).is_err());
    }
}
