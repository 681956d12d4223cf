//! A file of the built page: its bytes, compressed copies, checksum and name.

use anyhow::{Context, Result};
use base64::Engine as _;
use sha2::{Digest, Sha256};
use std::fs;
use std::io::{Cursor, Write as _};
use std::path::Path;

/// A file that the browser fetches.
pub(crate) struct Asset {
    /// The path below the page, with `/` between folders.
    pub(crate) path: String,
    /// The bytes, uncompressed.
    pub(crate) bytes: Vec<u8>,
    /// The bytes over the network: the size of the smallest compressed copy.
    pub(crate) transfer_size: usize,
}

impl Asset {
    /// Whether a first visit waits for it. Chunks load when their view opens, with their script and
    /// style sheet; a translation when its language is chosen, the icons when the page is installed,
    /// the service worker once the page works.
    pub(crate) fn is_initial(&self) -> bool {
        let is_chunk = self.path.ends_with(".wasm") && !self.path.starts_with("softcrumb.");
        let is_later = ["chunks.", "later.", "service_worker."]
            .iter()
            .any(|name| self.path.starts_with(name));
        !is_chunk && !is_later && !self.path.ends_with(".png") && !self.path.ends_with(".txt")
    }
}

/// Bytes over the network: what a first visit waits for, and all files.
pub(crate) fn transfer_sizes(assets: &[Asset]) -> (usize, usize) {
    let sum =
        |assets: &mut dyn Iterator<Item = &Asset>| assets.map(|asset| asset.transfer_size).sum();
    (
        sum(&mut assets.iter().filter(|asset| asset.is_initial())),
        sum(&mut assets.iter()),
    )
}

/// Prints each file with its bytes and its bytes over the network.
pub(crate) fn print_sizes(assets: &[Asset]) {
    println!("{:>9} {:>9}", "bytes", "transfer");
    for asset in assets {
        println!(
            "{:>9} {:>9}  {}",
            asset.bytes.len(),
            asset.transfer_size,
            asset.path
        );
    }
}

/// The checksum that the browser compares the bytes with: `sha256-…`.
pub(crate) fn integrity(bytes: &[u8]) -> String {
    format!(
        "sha256-{}",
        base64::engine::general_purpose::STANDARD.encode(Sha256::digest(bytes))
    )
}

/// A short hash of the content: sixteen hexadecimal digits.
pub(crate) fn content_hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes)
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// `app.css` → `app.0123456789abcdef.css`.
pub(crate) fn hashed_name(name: &str, bytes: &[u8]) -> String {
    match name.rsplit_once('.') {
        Some((stem, extension)) => format!("{stem}.{}.{extension}", content_hash(bytes)),
        None => format!("{name}.{}", content_hash(bytes)),
    }
}

/// Whether a name holds a content hash, so that the file may be cached for ever.
pub(crate) fn is_hashed(path: &str) -> bool {
    path.rsplit('.')
        .nth(1)
        .is_some_and(|part| part.len() == 16 && part.bytes().all(|byte| byte.is_ascii_hexdigit()))
}

/// Writes `bytes` below `folder`, with `.br` and `.gz` copies where these are shorter.
pub(crate) fn write(folder: &Path, path: &str, bytes: Vec<u8>) -> Result<Asset> {
    let file = folder.join(path);
    if let Some(above) = file.parent() {
        fs::create_dir_all(above)?;
    }
    fs::write(&file, &bytes).with_context(|| format!("{} cannot be written", file.display()))?;
    let mut transfer_size = bytes.len();
    for (extension, compressed) in [("gz", gzip(&bytes)?), ("br", brotli(&bytes)?)] {
        if compressed.len() < bytes.len() {
            fs::write(folder.join(format!("{path}.{extension}")), &compressed)?;
            transfer_size = compressed.len();
        }
    }
    Ok(Asset {
        path: path.to_owned(),
        bytes,
        transfer_size,
    })
}

/// Compresses by brotli's strongest setting.
fn brotli(bytes: &[u8]) -> Result<Vec<u8>> {
    let strongest = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        ..Default::default()
    };
    let mut compressed = Vec::new();
    brotli::BrotliCompress(&mut Cursor::new(bytes), &mut compressed, &strongest)?;
    Ok(compressed)
}

fn gzip(bytes: &[u8]) -> Result<Vec<u8>> {
    let mut encoder = flate2::write::GzEncoder::new(Vec::new(), flate2::Compression::best());
    encoder.write_all(bytes)?;
    Ok(encoder.finish()?)
}

#[cfg(test)]
mod tests {
    use super::{hashed_name, integrity, is_hashed};

    /// Source: NIST, FIPS 180-4 example values, SHA-256 of the one-block message "abc".
    #[test]
    fn the_checksum_of_abc_is_the_published_one() {
        assert_eq!(
            integrity(b"abc"),
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
        );
    }

    #[test]
    fn a_hashed_name_follows_the_content() {
        let name = hashed_name("app.css", b"a");
        assert!(is_hashed(&name) && name.starts_with("app.") && name.ends_with(".css"));
        assert_ne!(name, hashed_name("app.css", b"b"));
        assert!(!is_hashed("index.html") && !is_hashed("service_worker.js"));
    }
}
