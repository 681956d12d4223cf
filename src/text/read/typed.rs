//! The text as typed, in one alphabet, split into numbers and the words after them.

use super::ReadError;

/// The most bytes looked at; a longer text is no number.
const LONGEST: usize = 400;

/// A number as typed, with the word after it.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Piece {
    /// Digits with their punctuation; may be empty.
    pub(super) number: String,
    /// The word after it, in small letters, no spaces; may be empty.
    pub(super) unit: String,
}

/// A text cut up.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Typed {
    /// Whether it has a minus sign.
    pub(super) minus: bool,
    /// The numbers with their units.
    pub(super) pieces: Vec<Piece>,
}

/// Splits a text into numbers and the words after them.
///
/// # Errors
/// [`ReadError::Empty`] for blanks only, [`ReadError::NotANumber`] where there is no number.
pub(super) fn typed(text: &str) -> Result<Typed, ReadError> {
    if text.len() > LONGEST {
        return Err(ReadError::NotANumber);
    }
    let plain: String = text.chars().filter_map(plain).collect();
    let plain = plain.trim();
    if plain.is_empty() {
        return Err(ReadError::Empty);
    }
    let minus = plain.starts_with('-');
    let unsigned = plain.strip_prefix(['-', '+']).unwrap_or(plain);
    let mut pieces = pieces(unsigned.trim_start());
    unit_in_front(&mut pieces);
    if pieces.iter().any(|piece| !has_number(&piece.number)) {
        return Err(ReadError::NotANumber);
    }
    Ok(Typed { minus, pieces })
}

/// One character in the plain alphabet; `None` for marks that only steer the writing direction.
fn plain(typed: char) -> Option<char> {
    let code = u32::from(typed);
    let shifted = |from: u32, to: char| char::from_u32(code - from + u32::from(to));
    match typed {
        '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' => None,
        '\u{61C}' | '\u{FEFF}' | '\u{2060}' => None,
        '\u{FF01}'..='\u{FF5E}' => shifted(0xFF01, '!').map(dash),
        '\u{660}'..='\u{669}' => shifted(0x660, '0'),
        '\u{6F0}'..='\u{6F9}' => shifted(0x6F0, '0'),
        '\u{66A}' => Some('%'),
        '\u{60C}' => Some(','),
        '\u{2044}' | '\u{2215}' => Some('/'),
        '’' | '‘' => Some('\''),
        'º' | '˚' => Some('°'),
        blank if blank.is_whitespace() => Some(' '),
        other => Some(dash(other)),
    }
}

/// All the dashes people type for a minus.
const fn dash(typed: char) -> char {
    match typed {
        '−' | '–' | '—' | '‐' | '‑' | '‒' | '﹣' => '-',
        other => other,
    }
}

/// Alternating numbers and words.
fn pieces(text: &str) -> Vec<Piece> {
    let mut pieces = Vec::new();
    let mut piece = Piece::default();
    let mut before = ' ';
    let mut following = text.chars();
    while let Some(character) = following.next() {
        let next = following.clone().next().unwrap_or(' ');
        let in_unit = !piece.unit.is_empty();
        if character == ' ' {
            if !in_unit && before != ' ' {
                piece.number.push(' ');
            }
        } else if in_number(before, character, next, in_unit) {
            if in_unit {
                pieces.push(std::mem::take(&mut piece));
            }
            piece.number.push(character);
        } else {
            piece.unit.extend(character.to_lowercase());
        }
        before = character;
    }
    pieces.push(piece);
    for piece in &mut pieces {
        piece.number = piece.number.trim().to_owned();
        piece.unit.retain(|character| character != '.');
    }
    pieces
}

/// Whether a character continues (or begins) a number.
fn in_number(before: char, character: char, next: char, in_unit: bool) -> bool {
    match character {
        '.' | ',' => !in_unit || next.is_ascii_digit(),
        '0'..='9' => true,
        '\'' | '٫' | '٬' | '/' => !in_unit,
        'e' | 'E' => !in_unit && before.is_ascii_digit() && matches!(next, '0'..='9' | '+' | '-'),
        '+' | '-' => !in_unit && matches!(before, 'e' | 'E') && next.is_ascii_digit(),
        other => super::number::fraction_sign(other).is_some(),
    }
}

/// Whether there is anything to count in it.
fn has_number(text: &str) -> bool {
    text.chars().any(|character| {
        character.is_ascii_digit() || super::number::fraction_sign(character).is_some()
    })
}

/// A unit typed before its number ("× 2", "%65") is moved after it.
fn unit_in_front(pieces: &mut Vec<Piece>) {
    if let [front, back] = pieces.as_mut_slice()
        && front.number.is_empty()
        && back.unit.is_empty()
    {
        back.unit = std::mem::take(&mut front.unit);
        pieces.remove(0);
    }
}
