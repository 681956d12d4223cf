//! Letters: forms of one letter made the same, so that words can be compared.

/// A text in small letters, without accents, in half-width figures and signs, kana as katakana.
///
/// Source: the Unicode Standard, blocks Halfwidth and Fullwidth Forms (each of `！` to `～` lies
/// FEE0 above its ASCII form), Hiragana and Katakana (each small letter lies 60 above).
#[must_use]
pub fn folded(text: &str) -> String {
    let small = text.chars().flat_map(char::to_lowercase);
    small.map(half_width).map(plain).map(katakana).collect()
}

/// A figure, Latin letter or sign in its half-width form; the wide space as a plain one.
pub(super) fn half_width(letter: char) -> char {
    match letter {
        '\u{ff01}'..='\u{ff5e}' => below(letter, 0xfee0),
        '\u{3000}' | '\u{a0}' => ' ',
        '〜' | '−' => '-',
        other => other,
    }
}

/// A letter of Spanish without its accent.
const fn plain(letter: char) -> char {
    match letter {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    }
}

fn katakana(letter: char) -> char {
    match letter {
        'ぁ'..='ゖ' => u32::from(letter)
            .checked_add(0x60)
            .and_then(char::from_u32)
            .unwrap_or(letter),
        other => other,
    }
}

fn below(letter: char, by: u32) -> char {
    u32::from(letter)
        .checked_sub(by)
        .and_then(char::from_u32)
        .unwrap_or(letter)
}

/// Whether a letter is one of those Japanese is written in.
#[must_use]
pub fn is_japanese(letter: char) -> bool {
    matches!(letter, '々' | '〆' | '\u{3041}'..='\u{30ff}' | '\u{4e00}'..='\u{9fff}')
}
