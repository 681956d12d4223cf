//! A square code: a link as dark and light squares (ISO/IEC 18004), made by `qrcodegen`.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// How much of a code may be lost before it cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// About 7 %.
    Low,
    /// About 15 %.
    Medium,
    /// About 25 %.
    Quartile,
    /// About 30 %.
    High,
}

/// A square code, ready to be drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SquareCode {
    /// Squares along each side, without the quiet margin.
    pub side: u16,
    /// The size as the standard numbers it, 1 to 40.
    pub version: u8,
    /// How much may be lost.
    pub level: Level,
    /// Row by row, dark is true.
    dark: Vec<bool>,
}

/// A text that no phone would read from a code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SquareCodeError {
    /// Longer than what is drawn.
    #[error("{bytes} bytes are more than {most}")]
    TooLong {
        /// Its length.
        bytes: usize,
        /// The most that is drawn.
        most: usize,
    },
    /// There is nothing to draw.
    #[error("no text")]
    Empty,
}

/// The largest code that is drawn at the second level: 97 squares, which a phone reads from
/// another phone's screen at arm's length. Common practice.
const READ_AT_EASE: u8 = 20;

/// The largest code that is drawn at all: 137 squares, 0.55 mm each on a card 80 mm wide.
/// Common practice.
const READ_AT_ALL: u8 = 30;

impl SquareCode {
    /// The most bytes that are drawn: version 30 at the lowest level.
    ///
    /// Source: ISO/IEC 18004, table 7.
    pub const MOST_BYTES: usize = 1732;

    /// The quiet margin on each side, in squares.
    ///
    /// Source: ISO/IEC 18004: four modules.
    pub const MARGIN: u16 = 4;

    /// Whether a square is dark; light outside.
    #[must_use]
    pub fn is_dark(&self, column: u16, row: u16) -> bool {
        let at = usize::from(row) * usize::from(self.side) + usize::from(column);
        column < self.side && self.dark.get(at).copied().unwrap_or(false)
    }
}

/// Draws a text: at the second level while the code is small, at the lowest when it must be
/// large; where there is room to spare, the level is raised without growing.
///
/// # Errors
/// [`SquareCodeError::TooLong`] above [`SquareCode::MOST_BYTES`]: a link of that length should lose
/// something first, see [`super::shorter`].
pub fn square_code(text: &str) -> Result<SquareCode, SquareCodeError> {
    if text.is_empty() {
        return Err(SquareCodeError::Empty);
    }
    let segments = [QrSegment::make_bytes(text.as_bytes())];
    let drawn = |level, most| {
        QrCode::encode_segments_advanced(
            &segments,
            level,
            Version::MIN,
            Version::new(most),
            None,
            true,
        )
        .ok()
    };
    drawn(QrCodeEcc::Medium, READ_AT_EASE)
        .or_else(|| drawn(QrCodeEcc::Low, READ_AT_ALL))
        .map(|code| laid_down(&code))
        .ok_or(SquareCodeError::TooLong {
            bytes: text.len(),
            most: SquareCode::MOST_BYTES,
        })
}

fn laid_down(code: &QrCode) -> SquareCode {
    let size = code.size();
    let rows = (0..size).flat_map(|row| (0..size).map(move |column| (column, row)));
    SquareCode {
        side: u16::try_from(size).unwrap_or_default(),
        version: code.version().value(),
        level: match code.error_correction_level() {
            QrCodeEcc::Low => Level::Low,
            QrCodeEcc::Medium => Level::Medium,
            QrCodeEcc::Quartile => Level::Quartile,
            QrCodeEcc::High => Level::High,
        },
        dark: rows
            .map(|(column, row)| code.get_module(column, row))
            .collect(),
    }
}
