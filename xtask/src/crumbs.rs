//! Crumbs: pieces too small for a file of their own, which lie together in one.
//!
//! A piece costs its name and its sum twice, in the script that loads it and in the service
//! worker's list, and small pieces pack badly alone: a half of their bytes is the same in each.

use std::ops::Range;

/// Bytes, unpacked, below which a piece is a crumb.
const SMALL: usize = 6000;
/// What the script that loads pieces needs to find one.
const FINDER: &str = include_str!("crumbs.js");

/// A piece: name and bytes.
pub(crate) type Piece = (String, Vec<u8>);

/// The crumbs of a page.
pub(crate) struct Crumbs {
    /// All of them, one behind the other.
    pub(crate) bytes: Vec<u8>,
    /// Where each lies, by name.
    pub(crate) places: Vec<(String, Range<usize>)>,
}

/// Sorts out the crumbs; gives the pieces that have a file of their own, and them.
pub(crate) fn sort_out(pieces: Vec<Piece>) -> (Vec<Piece>, Crumbs) {
    let (small, own): (Vec<_>, Vec<_>) = pieces
        .into_iter()
        .partition(|(_, bytes)| bytes.len() < SMALL);
    let mut crumbs = Crumbs {
        bytes: Vec::new(),
        places: Vec::new(),
    };
    for (name, bytes) in small {
        let from = crumbs.bytes.len();
        crumbs.bytes.extend(bytes);
        crumbs.places.push((name, from..crumbs.bytes.len()));
    }
    (own, crumbs)
}

/// How the script asks for the crumb at `place`.
pub(crate) fn ask(place: &Range<usize>) -> String {
    format!("crumb({}, {})", place.start, place.end)
}

/// What the script needs besides, with the file in which they lie and its sum put in.
pub(crate) fn finder(file: &str, sum: &str) -> String {
    FINDER.replace("{{file}}", file).replace("{{sum}}", sum)
}

#[cfg(test)]
mod tests {
    use super::{SMALL, ask, finder, sort_out};

    #[test]
    fn each_crumb_is_where_it_is_asked_for() {
        let piece = |name: &str, letter: u8, long: usize| (name.to_owned(), vec![letter; long]);
        let (own, crumbs) = sort_out(vec![
            piece("a", b'a', 3),
            piece("large", b'l', SMALL),
            piece("b", b'b', SMALL - 1),
        ]);
        assert_eq!(own, [piece("large", b'l', SMALL)]);
        let found: Vec<_> = crumbs
            .places
            .iter()
            .map(|(name, place)| (name.clone(), crumbs.bytes[place.clone()].to_vec()))
            .collect();
        assert_eq!(found, [piece("a", b'a', 3), piece("b", b'b', SMALL - 1)]);
        assert_eq!(ask(&crumbs.places[0].1), "crumb(0, 3)");
        assert!(!finder("x.wasm", "sha256-y").contains("{{"));
    }
}
