//! The id of a stored formula: short, without meaning.

/// One to twenty-six letters `a`–`z` and digits `2`–`7` (the alphabet of RFC 4648, section 6).
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id(String);

const ALPHABET: &[u8; 32] = b"abcdefghijklmnopqrstuvwxyz234567";

impl Id {
    /// The most letters there may be.
    pub const LONGEST: usize = 26;

    /// Takes an id as it was written; `None` for anything else.
    #[must_use]
    pub fn from_text(text: &str) -> Option<Self> {
        let fits = (1..=Self::LONGEST).contains(&text.len());
        let ours = text.bytes().all(|byte| ALPHABET.contains(&byte));
        (fits && ours).then(|| Self(text.to_owned()))
    }

    /// Makes an id of thirteen letters from 64 random bits.
    #[must_use]
    pub fn from_random(bits: u64) -> Self {
        let letter = |place: u32| {
            let five = usize::try_from((bits >> (5 * place)) & 31).unwrap_or(0);
            ALPHABET.get(five).map_or('a', |byte| char::from(*byte))
        };
        Self((0..13).map(letter).collect())
    }

    /// The id as text.
    #[must_use]
    pub fn as_text(&self) -> &str {
        &self.0
    }
}
