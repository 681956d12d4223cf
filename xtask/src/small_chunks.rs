//! Joins the smallest chunks into one file.
//!
//! Each file costs a name and a checksum in the script that loads chunks and again in the service
//! worker's list, and small files compress badly: half of their bytes are the same in each.

use std::ops::Range;

/// Chunks of fewer uncompressed bytes are joined.
const SMALL: usize = 6000;
/// The function of the loader script that fetches a joined chunk.
const FETCH: &str = include_str!("small_chunks.js");

/// A chunk: name and bytes.
pub(crate) type Chunk = (String, Vec<u8>);

/// The small chunks of a page.
pub(crate) struct SmallChunks {
    /// Their bytes, one after the other.
    pub(crate) bytes: Vec<u8>,
    /// The range of each, by name.
    pub(crate) ranges: Vec<(String, Range<usize>)>,
}

/// Separates the chunks that get a file of their own from the small ones.
pub(crate) fn join(chunks: Vec<Chunk>) -> (Vec<Chunk>, SmallChunks) {
    let (small, large): (Vec<_>, Vec<_>) = chunks
        .into_iter()
        .partition(|(_, bytes)| bytes.len() < SMALL);
    let mut joined = SmallChunks {
        bytes: Vec::new(),
        ranges: Vec::new(),
    };
    for (name, bytes) in small {
        let start = joined.bytes.len();
        joined.bytes.extend(bytes);
        joined.ranges.push((name, start..joined.bytes.len()));
    }
    (large, joined)
}

/// The expression that fetches the chunk at `range`.
pub(crate) fn fetch_call(range: &Range<usize>) -> String {
    format!("smallChunk({}, {})", range.start, range.end)
}

/// The function that the expression calls, for the joined file at `path`.
pub(crate) fn fetch_function(path: &str, integrity: &str) -> String {
    FETCH
        .replace("{{path}}", path)
        .replace("{{integrity}}", integrity)
}

#[cfg(test)]
mod tests {
    use super::{SMALL, fetch_call, fetch_function, join};

    #[test]
    fn each_small_chunk_is_where_the_script_fetches_it() {
        let chunk = |name: &str, letter: u8, length: usize| (name.to_owned(), vec![letter; length]);
        let (large, joined) = join(vec![
            chunk("a", b'a', 3),
            chunk("large", b'l', SMALL),
            chunk("b", b'b', SMALL - 1),
        ]);
        assert_eq!(large, [chunk("large", b'l', SMALL)]);
        let found: Vec<_> = joined
            .ranges
            .iter()
            .map(|(name, range)| (name.clone(), joined.bytes[range.clone()].to_vec()))
            .collect();
        assert_eq!(found, [chunk("a", b'a', 3), chunk("b", b'b', SMALL - 1)]);
        assert_eq!(fetch_call(&joined.ranges[0].1), "smallChunk(0, 3)");
        assert!(!fetch_function("x.wasm", "sha256-y").contains("{{"));
    }
}
