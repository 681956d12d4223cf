//! The seal: what makes a cut or changed link an error instead of another formula.
//!
//! version, form, length of the body (little-endian, two bytes), body, then CRC-32 over all of
//! these (ISO-HDLC, little-endian, four bytes); all spelt in base64url without padding (RFC 4648,
//! section 5). The checksum is last in every version, so damage is distinct from a newer release.
//! One flipped bit is a burst of at most 6 bits in the bytes, and CRC-32 finds every burst up to
//! 32; a cut is found by the length.

use crate::engine::numerics::saturating_u16;
use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::decompress_to_vec_with_limit;

use super::LinkError;

/// The most characters a link's text may have.
pub const LONGEST: usize = 8_000;

/// The most bytes a body may unpack to.
const WIDEST: usize = 65_536;

/// How the body is stored.
const AS_IS: u8 = 0;
const DEFLATED: u8 = 1;

const HEAD: usize = 4;
const CHECK: usize = 4;

fn checksum(bytes: &[u8]) -> [u8; CHECK] {
    Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC)
        .checksum(bytes)
        .to_le_bytes()
}

/// Seals `body`, deflated (RFC 1951) where that is shorter.
pub(super) fn close(version: u8, body: &[u8]) -> Result<String, LinkError> {
    let text = spelt(version, body);
    short_enough(&text)?;
    Ok(text)
}

/// The same, however long it is.
pub(super) fn spelt(version: u8, body: &[u8]) -> String {
    let smaller = compress_to_vec(body, 9);
    let (form, body) = if smaller.len() < body.len() {
        (DEFLATED, smaller.as_slice())
    } else {
        (AS_IS, body)
    };
    let length = saturating_u16(body.len());
    let [low, high] = length.to_le_bytes();
    let mut bytes = vec![version, form, low, high];
    bytes.extend_from_slice(body);
    bytes.extend_from_slice(&checksum(&bytes));
    URL_SAFE_NO_PAD.encode(bytes)
}

/// The text without what a message puts into or behind a link: line breaks, and the dot, bracket or
/// quote that follows it, as it is typed or as an address spells it.
fn bare(text: &str) -> String {
    let mut bare: String = text
        .chars()
        .filter(|c| !matches!(c, '\n' | '\r' | '\t'))
        .collect();
    for spelt in ["%0A", "%0D", "%09", "%20", "%0a", "%0d"] {
        bare = bare.replace(spelt, "");
    }
    while let Some(shorter) = without_last(&bare) {
        bare.truncate(shorter);
    }
    bare
}

/// The length without the last sign, where that belongs to the message.
fn without_last(text: &str) -> Option<usize> {
    let end = text.len().checked_sub(3);
    let escaped = end.filter(|end| {
        text.get(*end..).is_some_and(|last| {
            let hex = last.strip_prefix('%');
            hex.is_some_and(|hex| hex.bytes().all(|byte| byte.is_ascii_hexdigit()))
        })
    });
    let last = text.chars().next_back()?;
    let sign = last == ' ' || !last.is_ascii() || ".,;:!?)]}>'\"*".contains(last);
    escaped.or_else(|| sign.then(|| text.len().saturating_sub(last.len_utf8())))
}

/// Checks the frame and returns the version, which is at most `newest`, and the body.
pub(super) fn open(text: &str, newest: u8) -> Result<(u8, Vec<u8>), LinkError> {
    let text = &bare(text);
    if text.is_empty() {
        return Err(LinkError::Empty);
    }
    short_enough(text)?;
    let ours = |c: char| c.is_ascii_alphanumeric() || matches!(c, '-' | '_');
    if !text.chars().all(ours) {
        return Err(LinkError::NotALink);
    }
    let bytes = URL_SAFE_NO_PAD
        .decode(text)
        .map_err(|_| LinkError::Damaged)?;
    let (sealed, check) = bytes
        .split_last_chunk::<CHECK>()
        .ok_or(LinkError::Damaged)?;
    if checksum(sealed) != *check {
        return Err(LinkError::Damaged);
    }
    let (&[version, form, low, high], body) = sealed
        .split_first_chunk::<HEAD>()
        .ok_or(LinkError::Damaged)?;
    if version > newest {
        return Err(LinkError::Newer { version });
    }
    if version == 0 || usize::from(u16::from_le_bytes([low, high])) != body.len() {
        return Err(LinkError::Damaged);
    }
    let body = match form {
        AS_IS => body.to_vec(),
        DEFLATED => decompress_to_vec_with_limit(body, WIDEST).map_err(|_| LinkError::Damaged)?,
        _ => return Err(LinkError::Damaged),
    };
    Ok((version, body))
}

fn short_enough(text: &str) -> Result<(), LinkError> {
    let characters = text.len();
    if characters > LONGEST {
        return Err(LinkError::TooLong {
            characters,
            most: LONGEST,
        });
    }
    Ok(())
}
