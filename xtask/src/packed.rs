//! A file of the built page: its bytes, its packed copies, its sums.

use anyhow::{Context, Result};
use base64::Engine as _;
use sha2::{Digest, Sha256};
use std::fs;
use std::io::{Cursor, Write as _};
use std::path::Path;

/// A file as the browser gets it.
pub(crate) struct Packed {
    /// Its path below the page, with `/` between folders.
    pub(crate) path: String,
    /// Its bytes, unpacked.
    pub(crate) bytes: Vec<u8>,
    /// Its bytes over the wire, in the best packing.
    pub(crate) wire: usize,
}

impl Packed {
    /// Whether a first visit waits for it: pieces load when they are opened, another
    /// language when it is spoken, pictures when the page is put onto the device.
    pub(crate) fn is_awaited(&self) -> bool {
        let is_piece = self.path.ends_with(".wasm") && !self.path.starts_with("softcrumb.");
        !is_piece && !self.path.ends_with(".png") && !self.path.ends_with(".txt")
    }
}

/// Bytes over the wire that a first visit waits for, and those of all files.
pub(crate) fn wires(files: &[Packed]) -> (usize, usize) {
    let sum = |files: &mut dyn Iterator<Item = &Packed>| files.map(|file| file.wire).sum();
    (
        sum(&mut files.iter().filter(|file| file.is_awaited())),
        sum(&mut files.iter()),
    )
}

/// The sum by which a browser knows the bytes it was promised: `sha256-…`.
pub(crate) fn sum(bytes: &[u8]) -> String {
    format!(
        "sha256-{}",
        base64::engine::general_purpose::STANDARD.encode(Sha256::digest(bytes))
    )
}

/// A short name for the content: sixteen hexadecimal digits.
pub(crate) fn short(bytes: &[u8]) -> String {
    Sha256::digest(bytes)
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// `app.css` → `app.0123456789abcdef.css`.
pub(crate) fn hashed_name(name: &str, bytes: &[u8]) -> String {
    match name.rsplit_once('.') {
        Some((stem, end)) => format!("{stem}.{}.{end}", short(bytes)),
        None => format!("{name}.{}", short(bytes)),
    }
}

/// Whether a name carries its content, so that it may be kept for ever.
pub(crate) fn is_hashed(path: &str) -> bool {
    let mut pieces = path.rsplit('.');
    let _end = pieces.next();
    pieces.next().is_some_and(|piece| {
        piece.len() == 16 && piece.bytes().all(|byte| byte.is_ascii_hexdigit())
    })
}

/// Writes `bytes` below `folder`, with `.br` and `.gz` copies where these are shorter.
pub(crate) fn write(folder: &Path, path: &str, bytes: Vec<u8>) -> Result<Packed> {
    let file = folder.join(path);
    if let Some(above) = file.parent() {
        fs::create_dir_all(above)?;
    }
    fs::write(&file, &bytes).with_context(|| format!("{} cannot be written", file.display()))?;
    let mut wire = bytes.len();
    for (end, packed) in [("gz", gzip(&bytes)?), ("br", brotli(&bytes)?)] {
        if packed.len() < bytes.len() {
            fs::write(folder.join(format!("{path}.{end}")), &packed)?;
            wire = packed.len();
        }
    }
    Ok(Packed {
        path: path.to_owned(),
        bytes,
        wire,
    })
}

/// The strongest brotli.
pub(crate) fn brotli(bytes: &[u8]) -> Result<Vec<u8>> {
    let strongest = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        ..Default::default()
    };
    let mut packed = Vec::new();
    brotli::BrotliCompress(&mut Cursor::new(bytes), &mut packed, &strongest)?;
    Ok(packed)
}

fn gzip(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut packer = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    packer.write_all(bytes)?;
    Ok(packer.finish()?)
}

#[cfg(test)]
mod tests {
    use super::{hashed_name, is_hashed, sum};

    /// Source: NIST, FIPS 180-4 example values, SHA-256 of the one-block message "abc".
    #[test]
    fn the_sum_of_abc_is_the_published_one() {
        assert_eq!(
            sum(b"abc"),
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
        );
    }

    #[test]
    fn a_name_carries_its_content() {
        let name = hashed_name("app.css", b"a");
        assert!(is_hashed(&name) && name.starts_with("app.") && name.ends_with(".css"));
        assert_ne!(name, hashed_name("app.css", b"b"));
        assert!(!is_hashed("index.html") && !is_hashed("service_worker.js"));
    }
}
